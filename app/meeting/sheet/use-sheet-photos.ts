import type { Photo } from '@icewright/picture';
import { useEffect, useMemo, useState } from 'react';
import { useFilms } from '../use-films.ts';

/** By item: its picture, or that it is still being read. An item whose film is not here is not in it. */
export type SheetPhotos = ReadonlyMap<string, Photo | 'comes'>;

interface Wanted {
  readonly id: string;
  readonly hash: string;
  readonly frameIndex: number;
}

const NONE: readonly Wanted[] = [];

/** Pictures of films as they are printed: grey, and read only while they are wanted. */
export function useSheetPhotos(frames: readonly Wanted[], isWanted: boolean): SheetPhotos {
  const wanted = isWanted ? frames : NONE;
  const { films } = useFilms(useMemo(() => wanted.map(({ hash }) => hash), [wanted]));
  const [read, setRead] = useState<ReadonlyMap<string, Photo | null>>(new Map());
  useEffect(() => {
    let isOver = false;
    for (const one of wanted) {
      const film = films.get(one.hash);
      if (film?.kind !== 'open' || read.has(keyOf(one))) continue;
      void film.stills.at(one.frameIndex).then(picture => {
        if (!isOver) setRead(now => new Map(now).set(keyOf(one), picture ? greyPhotoOf(picture) : null));
      });
    }
    return () => {
      isOver = true;
    };
  }, [wanted, films, read]);
  return useMemo(
    () =>
      new Map(
        wanted.flatMap((one): [string, Photo | 'comes'][] => {
          const film = films.get(one.hash);
          if (film && film.kind !== 'open' && film.kind !== 'looking') return [];
          const photo = read.get(keyOf(one));
          return photo === null ? [] : [[one.id, photo ?? 'comes']];
        }),
      ),
    [wanted, films, read],
  );
}

const keyOf = ({ hash, frameIndex }: Wanted): string => `${frameIndex} ${hash}`;

/** The paper is black only: colours would come out of a printer by its own lights. Weights of BT.709. */
function greyPhotoOf(picture: HTMLCanvasElement): Photo {
  const grey = document.createElement('canvas');
  grey.width = picture.width;
  grey.height = picture.height;
  const pen = grey.getContext('2d')!;
  pen.drawImage(picture, 0, 0);
  const pixels = pen.getImageData(0, 0, grey.width, grey.height);
  const { data } = pixels;
  for (let at = 0; at < data.length; at += 4) {
    const light = 0.2126 * data[at]! + 0.7152 * data[at + 1]! + 0.0722 * data[at + 2]!;
    data[at] = light;
    data[at + 1] = light;
    data[at + 2] = light;
  }
  pen.putImageData(pixels, 0, 0);
  return { dataUrl: grey.toDataURL('image/jpeg', 0.85), widthPx: grey.width, heightPx: grey.height };
}
