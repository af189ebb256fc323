import type { Game } from '@icewright/book';
import { type FilmPoint, filmFromIce, type PinFit } from '@icewright/engine';
import { whereIs } from '../marks/mark-places.ts';
import type { PictureTime } from '../marks/marks-at.ts';

/** Where somebody is known to stand in a picture, pixels: placed in a freeze of it, or followed through it. */
export const knownFeet = (
  { freezes, tracks }: Pick<Game, 'freezes' | 'tracks'>,
  { film, frameIndex, filmTimeS }: PictureTime,
  fit: PinFit,
): FilmPoint[] => {
  const placed = Object.values(freezes)
    .filter(one => one.film === film && one.frameIndex === frameIndex)
    .flatMap(({ skaters }) => Object.values(skaters).map(({ feet }) => feet));
  const followed = Object.values(tracks)
    .filter(one => one.film === film)
    .flatMap(track => {
      const hand = Object.values(track.hands).find(one => one.frameIndex === frameIndex);
      if (hand) return [hand.feet];
      const now = whereIs(track, filmTimeS);
      const feet = now && filmFromIce(fit, now.atM);
      return feet ? [feet] : [];
    });
  return [...placed, ...followed];
};
