import type { ColourPicture } from '../film/colour-picture.ts';
import type { PinFit } from '../film/pins.ts';
import type { Rink } from '../rink/rink.ts';
import type { None } from '../units/none.ts';
import { type LookedThrough, lookThrough } from './look-through.ts';
import { NOT_ICE } from './not-ice.ts';
import type { StandingBody, Stature } from './standing-bodies.ts';

/**
 * Which pixels of a picture show somebody who stands on the ice, with his stick: 1 there, 0 elsewhere, row by row; what is drawn on the ice goes
 * under them. Somebody who is not found is not in it. `fit` must tie this very picture. None: `noIce` where hardly any ice is
 * seen. Source: our own method, as `findPeople`.
 */
export const bodyMaskOf = (picture: ColourPicture, fit: PinFit, rink: Rink): Uint8Array | None<'noIce'> => {
  const looked = lookThrough(picture, fit, rink);
  if ('kind' in looked) return looked;
  const { widthPx, heightPx } = picture;
  const bodies = new Uint8Array(widthPx * heightPx);
  for (const body of looked.bodies) {
    const stature = looked.statureAt(body.footX, body.footY);
    if (stature) fillBody(bodies, widthPx, heightPx, looked, body, stature);
  }
  return bodies;
};

/** All that hangs together with a body’s middle, as far as arms and stick reach. */
const fillBody = (
  bodies: Uint8Array,
  widthPx: number,
  heightPx: number,
  { mask, weights }: LookedThrough,
  { footX, lowestY }: StandingBody,
  { acrossPx, upPx }: Stature,
): void => {
  const isBody = (at: number) => mask[at] === NOT_ICE || weights[at]! > 0;
  const reach = boxOf(widthPx, heightPx, footX, lowestY, REACH_M * acrossPx, [TOP_M * upPx, -UNDER_M * upPx]);
  const core = boxOf(widthPx, heightPx, footX, lowestY, CORE_M * acrossPx, [CORE_TOP_M * upPx, 0]);
  const waiting: number[] = [];
  const add = (x: number, y: number): void => {
    const at = y * widthPx + x;
    if (bodies[at] === 1 || !isBody(at)) return;
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
};

/** Metres: a stick lies in front of a skater, a helmet is as high as he stands upright. */
const REACH_M = 1.4;
const TOP_M = 2;
const UNDER_M = 0.15;
const CORE_M = 0.24;
const CORE_TOP_M = 1.5;

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

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
