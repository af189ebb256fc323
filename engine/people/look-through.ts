import type { ColourPicture } from '../film/colour-picture.ts';
import { iceFromFilm } from '../film/ice-from-film.ts';
import type { PinFit } from '../film/pins.ts';
import type { Rink } from '../rink/rink.ts';
import { uprightAt } from '../track/upright.ts';
import { type None, noneBecause } from '../units/none.ts';
import type { FilmPoint } from '../units/points.ts';
import { bodyWeightsOf } from './body-weights.ts';
import { takeOutFlatFigures } from './flat-figures.ts';
import { type IceColour, iceColourOf } from './ice-colour.ts';
import { iceWindowOf } from './ice-window.ts';
import { notIceOf } from './not-ice.ts';
import { FOUND_HEIGHT } from './people-rows.ts';
import { type StandingBody, type Stature, standingBodies } from './standing-bodies.ts';

/** What a picture holds that is not ice, and the bodies among it, the clearest first. */
export interface LookedThrough {
  readonly mask: Uint8Array;
  readonly weights: Float32Array;
  readonly colour: IceColour;
  readonly statureAt: (x: number, y: number) => Stature | null;
  readonly bodies: readonly StandingBody[];
}

export const lookThrough = (
  picture: ColourPicture,
  fit: PinFit,
  rink: Rink,
): LookedThrough | None<'noIce'> => {
  const { widthPx, heightPx } = picture;
  const ice = iceWindowOf(fit, rink, widthPx, heightPx);
  const colour = iceColourOf(picture, ice);
  if (!colour) return noneBecause('noIce');
  const mask = notIceOf(picture, ice, colour, rink);
  const statureAt = staturesOf(fit);
  const bodyPxAt = (x: number, y: number) => FOUND_HEIGHT.value * (statureAt(x, y)?.upPx ?? heightPx / 12);
  takeOutFlatFigures(picture, mask, bodyPxAt);
  const weights = bodyWeightsOf(picture, mask, colour, bodyPxAt);
  return { mask, weights, colour, statureAt, bodies: standingBodies(weights, mask, ice, statureAt) };
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
