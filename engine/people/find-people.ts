import type { ColourPicture } from '../film/colour-picture.ts';
import { iceFromFilm, type Placement } from '../film/ice-from-film.ts';
import type { PinFit } from '../film/pins.ts';
import type { Rink } from '../rink/rink.ts';
import type { None } from '../units/none.ts';
import type { FilmPoint } from '../units/points.ts';
import { type Dress, dressGroupsOf } from './dress-groups.ts';
import { dressOf, type Worn } from './dress-of.ts';
import { lookThrough } from './look-through.ts';
import { FOUND_FOOT_SD } from './people-rows.ts';

/** Somebody found in a picture: a suggestion, with nothing said of who it is. */
export interface FoundPerson {
  /** The middle between the skates, as shown. */
  readonly feetPx: FilmPoint;
  /** How well the middle between the skates was found, each way, pixels (standard deviation); `placement` counts it. */
  readonly footSdPx: number;
  readonly placement: Extract<Placement, { kind: 'placed' }>;
  /** How much more body than not its outline holds, 0 to 1. */
  readonly clearness: number;
  /** Who wears the same has the same number, 0 the darkest; which team that is, only a person can say. Null where the dress does not tell. */
  readonly group: number | null;
  readonly dress: Dress | null;
  /** Red, green and blue of what he wears where it is dark, 0 to 1. */
  readonly rgb: Worn['rgb'];
}

/**
 * People standing on the ice of one picture, the clearest first, by what is not ice there: with the middle between
 * their skates (pixels of the picture, metres with covariance on the ice) and grouped by what they wear. `fit` must tie this very picture
 * (widthPx × heightPx, as shown); `known` are dresses seen earlier in the film, by number of group. Finds nobody whose feet are hidden. None: `noIce` where the fit says hardly any ice is seen.
 * Source: our own method; what it is worth is measured by `film-truth --people` on films whose every position is known.
 */
export const findPeople = (
  picture: ColourPicture,
  fit: PinFit,
  rink: Rink,
  known: readonly (Dress | undefined)[] = [],
): readonly FoundPerson[] | None<'noIce'> => {
  const looked = lookThrough(picture, fit, rink);
  if ('kind' in looked) return looked;
  const { mask, weights, statureAt } = looked;
  const people = looked.bodies.flatMap(body => {
    const feetPx = { xPx: body.footX, yPx: body.footY };
    const stature = statureAt(body.footX, body.footY);
    if (!stature || !body.areFeetSeen) return [];
    const footSdPx = FOUND_FOOT_SD.value * Math.sqrt(stature.acrossPx * stature.awayPx);
    const placement = iceFromFilm(fit, feetPx, { footSdPx });
    if (placement.kind === 'none') return [];
    const { rgb, dress } = dressOf(picture, mask, weights, body, stature);
    return [{ feetPx, footSdPx, placement, clearness: body.clearness, rgb, dress }];
  });
  const groups = dressGroupsOf(
    people.map(({ dress }) => dress),
    known,
  );
  return people.map((person, i) => ({ ...person, group: groups[i]! }));
};
