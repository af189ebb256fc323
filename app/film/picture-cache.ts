/**
 * Decoded pictures by frame number, within a fixed number of bytes. The picture farthest from the one being looked at goes
 * first, so that stepping either way stays quick; whatever leaves is closed at once.
 */
export class PictureCache {
  private readonly pictures = new Map<number, ImageBitmap>();

  constructor(private readonly mostPictures: number) {}

  get(frameIndex: number): ImageBitmap | undefined {
    return this.pictures.get(frameIndex);
  }

  has(frameIndex: number): boolean {
    return this.pictures.has(frameIndex);
  }

  put(frameIndex: number, picture: ImageBitmap, lookedAt: number): void {
    this.pictures.get(frameIndex)?.close();
    this.pictures.set(frameIndex, picture);
    while (this.pictures.size > this.mostPictures) this.dropFarthest(lookedAt);
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

/** How many pictures of this size fit: four bytes a pixel. */
export const pictureCountFor = (widthPx: number, heightPx: number): number =>
  Math.max(8, Math.floor(CACHE_BYTES / (4 * widthPx * heightPx)));
const CACHE_BYTES = 160 * 1024 * 1024;
