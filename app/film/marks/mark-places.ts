import type { Game, Mark, Track } from '@icewright/book';
import { type IcePoint, iceFromFilm } from '@icewright/engine';
import type { FilmTie } from './film-tie.ts';

export type MarkPlace = Mark['at'][number];

/** A place of a mark at one time: where it is, and how well a followed skater is known there. */
export interface PlaceNow {
  readonly atM: IcePoint;
  readonly sdM?: number;
}

/**
 * Where a place of a mark is at a time of the film: with the skater it hangs on, or where it was put. Undefined while that skater is
 * not known: a ring on the ice where somebody was would say he is still there.
 */
export const placeNow = (
  place: MarkPlace,
  game: Pick<Game, 'tracks' | 'freezes'>,
  filmTimeS: number,
  tie: FilmTie,
): PlaceNow | undefined => {
  if (place.track) {
    const track = game.tracks[place.track];
    const at = track && whereIs(track, filmTimeS);
    if (at || !place.placed) return at;
    // Not found yet, or no longer followed: in the picture of his freeze he still stands where he was placed.
    const standsS = game.freezes[place.placed.freeze]?.filmTimeS ?? Number.NaN;
    if (!(Math.abs(standsS - filmTimeS) <= SLACK_S)) return undefined;
  }
  if (place.placed) {
    const { freeze, placed } = place.placed;
    const { feet, feetSdPx } = game.freezes[freeze]?.skaters[placed] ?? {};
    const fit = tie.fitOf(freeze);
    const sd = feetSdPx === undefined ? {} : { footSdPx: feetSdPx };
    const at = feet && fit && iceFromFilm(fit, feet, sd);
    if (at?.kind !== 'placed') return undefined;
    if (feetSdPx === undefined) return { atM: at.atM };
    return { atM: at.atM, sdM: Math.sqrt((at.covM2.xxM2 + at.covM2.yyM2) / 2) };
  }
  return { atM: place.atM };
};

/** Between two looks of a followed stretch he goes straight; before the first and after the last nobody knows. */
export const whereIs = ({ followed }: Pick<Track, 'followed'>, filmTimeS: number): PlaceNow | undefined => {
  if (!followed) return undefined;
  const { filmTimeS: times, xM, yM, sdM } = followed;
  const last = times.length - 1;
  if (last < 0 || filmTimeS < times[0]! - SLACK_S || filmTimeS > times[last]! + SLACK_S) return undefined;
  let low = 0;
  let high = last;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (times[middle]! <= filmTimeS) low = middle;
    else high = middle;
  }
  const span = times[high]! - times[low]!;
  const share = span > 0 ? Math.max(0, Math.min(1, (filmTimeS - times[low]!) / span)) : 0;
  const mixed = (of: readonly number[]) => of[low]! + share * (of[high]! - of[low]!);
  return { atM: { xM: mixed(xM), yM: mixed(yM) }, sdM: Math.max(sdM[low]!, sdM[high]!) };
};

/** Less than any frame lasts; times are rounded on their way through a document. */
export const SLACK_S = 1e-3;
