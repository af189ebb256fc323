import { iceFromFilm, type Placement } from '../film/ice-from-film.ts';
import type { PinFit } from '../film/pins.ts';
import type { Rink } from '../rink/rink.ts';
import { uprightAt } from '../track/upright.ts';
import { type None, noneBecause } from '../units/none.ts';
import type { FilmPoint } from '../units/points.ts';
import { bodyWeightsOf } from './body-weights.ts';
import type { ColourPicture } from './colour-picture.ts';
import { dressGroupsOf } from './dress-groups.ts';
import { dressOf, type Worn } from './dress-of.ts';
import { takeOutFlatFigures } from './flat-figures.ts';
import { iceColourOf } from './ice-colour.ts';
import { iceWindowOf } from './ice-window.ts';
import { notIceOf } from './not-ice.ts';
import { FOUND_FOOT_SD, FOUND_HEIGHT } from './people-rows.ts';
import { type Stature, standingBodies } from './standing-bodies.ts';

/** Somebody found in a picture: a suggestion, with nothing said of who it is. */
export interface FoundPerson {
  /** The middle between the skates, as shown. */
  readonly feetPx: FilmPoint;
  /** How well the middle between the skates was found, each way, pixels (standard deviation); `placement` counts it. */
  readonly footSdPx: number;
  readonly placement: Extract<Placement, { kind: 'placed' }>;
  /** How much more body than not its outline holds, 0 to 1. */
  readonly clearness: number;
  /** Who wears the same has the same number, 0 the most frequent; which team that is, only a person can say. */
  readonly group: number;
  /** Red, green and blue of what he wears where it is dark, 0 to 1. */
  readonly rgb: Worn['rgb'];
}

/**
 * People standing on the ice of one picture, the clearest first, by what is not ice there: with the middle between
 * their skates (pixels of the picture, metres with covariance on the ice) and grouped by what they wear. `fit` must tie this very picture
 * (widthPx × heightPx, as shown). Finds nobody whose feet are hidden. None: `noIce` where the fit says hardly any ice is seen.
 * Source: our own method; what it is worth is measured by `film-truth --people` on films whose every position is known.
 */
export const findPeople = (
  picture: ColourPicture,
  fit: PinFit,
  rink: Rink,
): readonly FoundPerson[] | None<'noIce'> => {
  const { widthPx, heightPx } = picture;
  const ice = iceWindowOf(fit, rink, widthPx, heightPx);
  const colour = iceColourOf(picture, ice);
  if (!colour) return noneBecause('noIce');
  const mask = notIceOf(picture, ice, colour, rink);
  const statureAt = staturesOf(fit);
  const bodyPxAt = (x: number, y: number) => FOUND_HEIGHT.value * (statureAt(x, y)?.upPx ?? heightPx / 12);
  takeOutFlatFigures(picture, mask, bodyPxAt);
  const weights = bodyWeightsOf(picture, mask, colour, bodyPxAt);
  const people = standingBodies(weights, mask, ice, statureAt).flatMap(body => {
    const feetPx = { xPx: body.footX, yPx: body.footY };
    const stature = statureAt(body.footX, body.footY);
    if (!stature) return [];
    const footSdPx = FOUND_FOOT_SD.value * Math.sqrt(stature.acrossPx * stature.awayPx);
    const placement = iceFromFilm(fit, feetPx, { footSdPx });
    if (placement.kind === 'none') return [];
    const { rgb, dress } = dressOf(picture, mask, weights, body, stature);
    return [{ feetPx, footSdPx, placement, clearness: body.clearness, rgb, dress }];
  });
  const groups = dressGroupsOf(people.map(({ dress }) => dress));
  return people.map(({ dress: _, ...person }, i) => ({ ...person, group: groups[i]! }));
};

/** How bodies are drawn at a pixel; asked for a whole picture, so it is worked out once for each small block of it. */
const staturesOf = (fit: PinFit): ((x: number, y: number) => Stature | null) => {
  const known = new Map<number, Stature | null>();
  return (x, y) => {
    const [column, row] = [Math.floor(x / ACROSS_PX), Math.floor(y / DOWN_PX)];
    const key = row * 8192 + column;
    const kept = known.get(key);
    if (kept !== undefined) return kept;
    const middle = { xPx: (column + 0.5) * ACROSS_PX, yPx: (row + 0.5) * DOWN_PX };
    const stature = statureOf(fit, middle);
    known.set(key, stature);
    return stature;
  };
};
const ACROSS_PX = 8;
const DOWN_PX = 4;

const statureOf = (fit: PinFit, at: FilmPoint): Stature | null => {
  const place = iceFromFilm(fit, at, { footSdPx: 0 });
  const upright = place.kind === 'placed' ? uprightAt(fit, place.atM) : null;
  if (!upright) return null;
  const acrossPx = Math.hypot(...upright.acrossPx);
  const upPx = Math.hypot(...upright.upPx);
  // Up and away are drawn as sides of one right angle.
  return { acrossPx, upPx, awayPx: Math.sqrt(Math.max(0, acrossPx ** 2 - upPx ** 2)) };
};
