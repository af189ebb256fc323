import type { Game, Mark } from '@icewright/book';
import {
  type FilmPoint,
  filmFromIce,
  type IcePoint,
  type Id,
  iceFromFilm,
  type PinFit,
} from '@icewright/engine';
import { type FilmMarkKind, placesWanted } from '@icewright/picture';
import type { FrameTimes } from '../frame-index.ts';
import { timeOfFrame } from '../frame-index.ts';
import type { FilmTie } from './film-tie.ts';
import { type MarkPlace, whereIs } from './mark-places.ts';
import type { PictureTime } from './marks-at.ts';

/** Somebody who stands in the picture and on whom a mark can hang. */
export interface Standing {
  readonly atM: IcePoint;
  readonly on: Pick<MarkPlace, 'track' | 'placed'>;
}

/** Who is known in a picture: skaters that are followed, and those of its freeze who are not. */
export const standingAt = (
  game: Pick<Game, 'tracks' | 'freezes'>,
  { film, frameIndex, filmTimeS }: PictureTime,
  tie: FilmTie,
): Standing[] => {
  const followed = Object.entries(game.tracks).flatMap(([id, track]): Standing[] => {
    const at = track.film === film ? whereIs(track, filmTimeS) : undefined;
    return at ? [{ atM: at.atM, on: { track: id as Id<'track'> } }] : [];
  });
  const placed = Object.entries(game.freezes)
    .filter(([, one]) => one.film === film && one.frameIndex === frameIndex)
    .flatMap(([freeze, one]) =>
      Object.entries(one.skaters).flatMap(([id, { feet }]): Standing[] => {
        const fit = tie.fitOf(freeze);
        const at = fit && iceFromFilm(fit, feet);
        const on = { placed: { freeze: freeze as Id<'freeze'>, placed: id as Id<'placed'> } };
        return at?.kind === 'placed' ? [{ atM: at.atM, on }] : [];
      }),
    );
  const isFollowed = (at: IcePoint) => followed.some(one => apart(one.atM, at) < SAME_SKATER_M);
  return [...followed, ...placed.filter(({ atM }) => !isFollowed(atM))];
};
/** A followed skater and one of a freeze nearer than this are one. */
const SAME_SKATER_M = 0.8;

/** The place a press means: with the skater whose feet it falls on, else on the ice. Undefined above the ice. */
export const placeAt = (
  fit: PinFit,
  at: FilmPoint,
  standing: readonly Standing[],
  reachPx: number,
): MarkPlace | undefined => {
  const pressed = iceFromFilm(fit, at);
  if (pressed.kind === 'none' || !isOnSheet(pressed.atM)) return undefined;
  const near = standing
    .flatMap(one => {
      const px = filmFromIce(fit, one.atM);
      const awayPx = px ? Math.hypot(px.xPx - at.xPx, px.yPx - at.yPx) : Number.POSITIVE_INFINITY;
      return awayPx <= reachPx || apart(one.atM, pressed.atM) <= NEAR_M ? [{ one, awayPx }] : [];
    })
    .sort((a, b) => a.awayPx - b.awayPx)[0]?.one;
  return near ? { atM: rounded(near.atM), ...near.on } : { atM: rounded(pressed.atM) };
};
/** A press so near to somebody's feet means him, in pixels of the drawing's measure. */
export const REACH_PX = 16;
const NEAR_M = 0.7;
/** Documents hold places within a hundred metres; no sheet is longer. */
const isOnSheet = ({ xM, yM }: IcePoint) => Math.abs(xM) < 40 && Math.abs(yM) < 25;

/** Centimetres are finer than any picture. */
export const rounded = ({ xM, yM }: IcePoint): IcePoint => ({
  xM: Math.round(xM * 100) / 100,
  yM: Math.round(yM * 100) / 100,
});

export const isWhole = (kind: FilmMarkKind, placeCount: number): boolean =>
  placeCount >= placesWanted(kind).least;

/**
 * When a new mark is seen. On a skater of a freeze: while that freeze stands, since nobody knows where he goes. Else from this
 * picture on for three seconds, as far as the pictures are tied and its skaters are followed; where only this one is, while its freeze stands.
 */
export const whenSeen = (
  places: readonly MarkPlace[],
  game: Pick<Game, 'tracks' | 'freezes'>,
  { film, frameIndex, filmTimeS }: PictureTime,
  index: FrameTimes,
  tie: FilmTie,
): Pick<Mark, 'fromS' | 'toS' | 'freeze'> => {
  const freeze = Object.entries(game.freezes).find(
    ([, one]) => one.film === film && one.frameIndex === frameIndex,
  )?.[0] as Id<'freeze'> | undefined;
  const still = { fromS: filmTimeS, toS: filmTimeS, ...(freeze ? { freeze } : {}) };
  if (places.some(one => one.placed)) return still;
  let last = frameIndex;
  const isKnown = (at: number) =>
    tie.fitAt(at) !== undefined &&
    places.every(({ track }) => !track || whereIs(game.tracks[track] ?? {}, timeOfFrame(index, at)));
  while (
    last + 1 < index.frameCount &&
    timeOfFrame(index, last + 1) <= filmTimeS + SEEN_FOR_S &&
    isKnown(last + 1)
  )
    last++;
  return last === frameIndex && freeze ? still : { fromS: filmTimeS, toS: timeOfFrame(index, last) };
};
export const SEEN_FOR_S = 3;

const apart = (a: IcePoint, b: IcePoint): number => Math.hypot(a.xM - b.xM, a.yM - b.yM);
