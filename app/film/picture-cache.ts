import { BYTES_A_PIXEL, type FilmPicture } from './own-picture.ts';

/**
 * Decoded pictures by frame number, within a fixed number of bytes. The picture farthest from the one being looked at goes
 * first, so that stepping either way stays quick; whatever leaves is closed at once.
 */
export class PictureCache {
  private readonly pictures = new Map<number, FilmPicture>();

  constructor(private readonly mostPictures: number) {}

  get(frameIndex: number): FilmPicture | undefined {
    return this.pictures.get(frameIndex);
  }

  has(frameIndex: number): boolean {
    return this.pictures.has(frameIndex);
  }

  put(frameIndex: number, picture: FilmPicture, lookedAt: number): void {
    this.pictures.get(frameIndex)?.close();
    this.pictures.set(frameIndex, picture);
    while (this.pictures.size > this.mostPictures) this.dropFarthest(lookedAt);
  }

  /** Puts a copy in the place of the picture it was made from; when that has left meanwhile, the copy is closed. */
  replace(frameIndex: number, old: FilmPicture, copy: FilmPicture): void {
    if (this.pictures.get(frameIndex) === old) this.pictures.set(frameIndex, copy);
    else copy.close();
  }

  /** How many frames stand without a gap before this one. */
  countBefore(frameIndex: number): number {
    let count = 0;
    while (this.pictures.has(frameIndex - 1 - count)) count++;
    return count;
  }

  clear(): void {
    for (const picture of this.pictures.values()) picture.close();
    this.pictures.clear();
  }

  private dropFarthest(lookedAt: number): void {
    let farthest = lookedAt;
    let distance = -1;
    for (const frameIndex of this.pictures.keys()) {
      const away = Math.abs(frameIndex - lookedAt);
      if (away > distance) {
        farthest = frameIndex;
        distance = away;
      }
    }
    this.pictures.get(farthest)?.close();
    this.pictures.delete(farthest);
  }
}

/** How many pictures of this size fit. */
export const pictureCountFor = (widthPx: number, heightPx: number): number =>
  Math.max(8, Math.floor(CACHE_BYTES / (BYTES_A_PIXEL * widthPx * heightPx)));
const CACHE_BYTES = 160 * 1024 * 1024;
