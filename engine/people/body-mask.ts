import type { ColourPicture } from '../film/colour-picture.ts';
import type { PinFit } from '../film/pins.ts';
import type { Rink } from '../rink/rink.ts';
import type { None } from '../units/none.ts';
import type { FilmPoint } from '../units/points.ts';
import { type Box, fillHoles } from './fill-holes.ts';
import { type LookedThrough, lookThrough } from './look-through.ts';
import { ICE, NOT_ICE } from './not-ice.ts';
import { paleClothIn } from './pale-cloth.ts';
import {
  FOUND_HALF_WIDTH,
  HALF_STANCE,
  MASK_CORE_TOP,
  MASK_FOLD,
  MASK_LEGS,
  MASK_REACH,
  MASK_STICK,
  MASK_TOP,
  MASK_TRUNK,
  MASK_UNDER,
} from './people-rows.ts';
import type { StandingBody, Stature } from './standing-bodies.ts';

/**
 * Which pixels of a picture show somebody who stands on the ice, with his stick: 1 there, 0 elsewhere, row by row; what is drawn on the ice goes
 * under them. Somebody who is neither found nor known is not in it. `fit` must tie this very picture. `known`: middles between skates of
 * who is known to stand there, pixels; also such as lie outside the picture. None: `noIce` where hardly any ice is
 * seen. Source: our own method, as `findPeople`.
 */
export const bodyMaskOf = (
  picture: ColourPicture,
  fit: PinFit,
  rink: Rink,
  known: readonly FilmPoint[] = [],
): Uint8Array | None<'noIce'> => {
  const looked = lookThrough(picture, fit, rink);
  if ('kind' in looked) return looked;
  const { widthPx, heightPx } = picture;
  const bodies = new Uint8Array(widthPx * heightPx);
  const isPale = paleClothIn(picture, looked.colour);
  const fill = ({ xPx, yPx }: FilmPoint, lowestY?: number): void => {
    const stature = looked.statureAt(xPx, yPx);
    if (!stature) return;
    const standsAt = { footX: xPx, lowestY: lowestY ?? yPx + HALF_STANCE.value * stature.awayPx };
    fillBody(bodies, widthPx, heightPx, looked, isPale, standsAt, stature);
  };
  for (const { footX, footY, lowestY } of looked.bodies) fill({ xPx: footX, yPx: footY }, lowestY);
  for (const feetPx of known) fill(feetPx);
  return bodies;
};

/** All that hangs together with a body’s middle, as far as arms and stick reach; above its legs with what is white before the ice, and what that shuts in. */
const fillBody = (
  bodies: Uint8Array,
  widthPx: number,
  heightPx: number,
  { mask, weights }: LookedThrough,
  isPale: (x: number, y: number) => boolean,
  { footX, lowestY }: Pick<StandingBody, 'footX' | 'lowestY'>,
  { acrossPx, upPx, awayPx }: Stature,
): void => {
  const box = (asideM: number, abovePx: number, belowPx: number): Box =>
    boxOf(widthPx, heightPx, footX, lowestY, asideM * acrossPx, [abovePx, belowPx]);
  const reach = box(
    MASK_REACH.value,
    MASK_TOP.value * upPx,
    -MASK_UNDER.value * upPx - MASK_STICK.value * awayPx,
  );
  const core = box(FOUND_HALF_WIDTH.value, MASK_CORE_TOP.value * upPx, 0);
  const trunk = box(MASK_TRUNK.value, MASK_TOP.value * upPx, MASK_LEGS.value * upPx);
  const isSure = (x: number, y: number): boolean => {
    const at = y * widthPx + x;
    return mask[at] === NOT_ICE || weights[at]! > 0;
  };
  const foldPx = Math.ceil(MASK_FOLD.value * upPx);
  const isNearSure = (x: number, y: number): boolean => {
    const near = boxOf(widthPx, heightPx, x, y, foldPx, [foldPx, -foldPx]);
    for (let v = near.top; v < near.bottom; v++)
      for (let u = near.left; u < near.right; u++) if (isSure(u, v)) return true;
    return false;
  };
  const isInTrunk = (x: number, y: number): boolean =>
    x >= trunk.left && x < trunk.right && y >= trunk.top && y < trunk.bottom;
  const isBody = (x: number, y: number): boolean =>
    isSure(x, y) || (mask[y * widthPx + x] === ICE && isInTrunk(x, y) && isPale(x, y) && isNearSure(x, y));
  const waiting: number[] = [];
  const add = (x: number, y: number): void => {
    const at = y * widthPx + x;
    if (bodies[at] === 1 || !isBody(x, y)) return;
    bodies[at] = 1;
    waiting.push(at);
  };
  for (let y = core.top; y < core.bottom; y++) for (let x = core.left; x < core.right; x++) add(x, y);
  for (let at = waiting.pop(); at !== undefined; at = waiting.pop()) {
    const x = at % widthPx;
    const y = (at - x) / widthPx;
    if (x > reach.left) add(x - 1, y);
    if (x < reach.right - 1) add(x + 1, y);
    if (y > reach.top) add(x, y - 1);
    if (y < reach.bottom - 1) add(x, y + 1);
  }
  fillHoles(bodies, widthPx, trunk);
};

const boxOf = (
  widthPx: number,
  heightPx: number,
  x: number,
  y: number,
  asidePx: number,
  [abovePx, belowPx]: readonly [above: number, below: number],
): Box => ({
  left: Math.max(0, Math.round(x - asidePx)),
  right: Math.min(widthPx, Math.round(x + asidePx)),
  top: Math.max(0, Math.round(y - abovePx)),
  bottom: Math.min(heightPx, Math.round(y - belowPx)),
});
