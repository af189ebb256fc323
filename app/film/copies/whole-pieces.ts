import { frameBeginningAt } from '../frame-index.ts';
import { keyBefore } from '../key-before.ts';
import type { OpenFilm } from '../open-film.ts';
import type { Stretch } from './copy-window.ts';

/**
 * The whole film in pieces of about so many frames. Each begins at a key picture of the film, so that nothing is decoded twice when
 * they are made one by one.
 */
export const wholePiecesOf = async (film: OpenFilm, aboutFrames: number): Promise<Stretch[]> => {
  const { frameCount } = film.index;
  const starts = [0];
  for (let at = aboutFrames; at < frameCount; at += aboutFrames) {
    const key = await keyFrameBefore(film, at);
    if (key > starts[starts.length - 1]!) starts.push(key);
  }
  return starts.map((fromFrame, i) => ({
    fromFrame,
    toFrame: (starts[i + 1] ?? frameCount) - 1,
    isSmall: true,
  }));
};

/**
 * How many frames lie between one key picture and the next, typically: the median over a few places of the film. 0 where there is none
 * to be found.
 */
export const keyDistanceOf = async (film: OpenFilm): Promise<number> => {
  const { index, packets } = film;
  const found: number[] = [];
  for (const share of PLACES) {
    const here = await keyBefore(film, Math.floor(share * (index.frameCount - 1)));
    const next = here && (await packets.getNextKeyPacket(here, { metadataOnly: true }));
    const to = next ? frameBeginningAt(index, next.timestamp) : index.frameCount;
    if (here) found.push(to - frameBeginningAt(index, here.timestamp));
  }
  return found.sort((a, b) => a - b)[found.length >> 1] ?? 0;
};

const keyFrameBefore = async (film: OpenFilm, frameIndex: number): Promise<number> => {
  const key = await keyBefore(film, frameIndex);
  return key ? frameBeginningAt(film.index, key.timestamp) : 0;
};

const PLACES = [0.1, 0.3, 0.5, 0.7, 0.9];
