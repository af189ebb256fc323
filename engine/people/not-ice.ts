import type { ColourPicture } from '../film/colour-picture.ts';
import type { Rink } from '../rink/rink.ts';
import { type IceColour, iceColourAt } from './ice-colour.ts';
import type { IceWindow } from './ice-window.ts';
import { middleOf } from './middle-of.ts';
import { PAINTS, paintAt } from './paint-at.ts';
import { DARKEST_SHADOW, PAINT_REACH, UNLIKE_ICE } from './people-rows.ts';

/** What a pixel of a mask shows: bare or painted ice, something else, or no part of the ice. */
export const ICE = 0;
export const NOT_ICE = 1;
export const NO_PART = 2;

/** One of the three above for each pixel. Shadowed ice is ice; paint is ice where the rink has it and in the colour it has there. */
export const notIceOf = (
  picture: ColourPicture,
  ice: IceWindow,
  colour: IceColour,
  rink: Rink,
): Uint8Array => {
  const { widthPx, heightPx, rgba } = picture;
  const mask = new Uint8Array(widthPx * heightPx).fill(NO_PART);
  const paints = new Uint8Array(widthPx * heightPx);
  const nearAt = paintAt(rink, PAINT_REACH.value);
  const paintedAt = paintAt(rink, 0);
  const seen: number[][][] = PAINTS.map(() => [[], [], []]);
  const bare = new Float32Array(3);
  for (let y = 0, at = 0; y < heightPx; y++) {
    for (let x = 0; x < widthPx; x++, at++) {
      const xM = ice.xM[at]!;
      if (Number.isNaN(xM)) continue;
      iceColourAt(colour, x, y, bare);
      mask[at] = isBare(rgba, 4 * at, bare) ? ICE : NOT_ICE;
      if (mask[at] === ICE) continue;
      const paint = nearAt(xM, ice.yM[at]!);
      paints[at] = paint;
      if (paint === 0 || paintedAt(xM, ice.yM[at]!) !== paint) continue;
      for (let k = 0; k < 3; k++) seen[paint]![k]!.push(rgba[4 * at + k]! / bare[k]!);
    }
  }
  const inks = seen.map(shares => (shares[0]!.length < LEAST_PAINT ? null : shares.map(middleOf)));
  for (let y = 0, at = 0; y < heightPx; y++) {
    for (let x = 0; x < widthPx; x++, at++) {
      const ink = inks[paints[at]!];
      if (paints[at] === 0 || !ink) continue;
      iceColourAt(colour, x, y, bare);
      if (isPaint(rgba, 4 * at, bare, ink)) mask[at] = ICE;
    }
  }
  return mask;
};

const LEAST_PAINT = 30;

const isBare = (rgba: ColourPicture['rgba'], at: number, bare: Float32Array): boolean => {
  const [r, g, b] = [rgba[at]!, rgba[at + 1]!, rgba[at + 2]!];
  const off = Math.hypot(r - bare[0]!, g - bare[1]!, b - bare[2]!);
  if (off < UNLIKE_ICE.value) return true;
  // In a shadow all colours go down by one share.
  const share = (r + g + b) / (bare[0]! + bare[1]! + bare[2]!);
  if (share > 1 || share < DARKEST_SHADOW.value) return false;
  const tint = Math.hypot(r - share * bare[0]!, g - share * bare[1]!, b - share * bare[2]!);
  return tint < SHADOW_TINT * UNLIKE_ICE.value;
};
const SHADOW_TINT = 0.4;

/** Whether a colour lies on the way from ice to paint, or a little beyond. */
const isPaint = (
  rgba: ColourPicture['rgba'],
  at: number,
  bare: Float32Array,
  ink: readonly number[],
): boolean => {
  let [along, lengthSq] = [0, 0];
  for (let k = 0; k < 3; k++) {
    const way = bare[k]! * (ink[k]! - 1);
    along += way * (rgba[at + k]! - bare[k]!);
    lengthSq += way * way;
  }
  const share = Math.max(0, Math.min(BEYOND_PAINT, along / lengthSq));
  let offSq = 0;
  for (let k = 0; k < 3; k++) offSq += (rgba[at + k]! - bare[k]! * (1 + share * (ink[k]! - 1))) ** 2;
  return offSq < (LIKE_PAINT * UNLIKE_ICE.value) ** 2;
};
const BEYOND_PAINT = 1.2;
const LIKE_PAINT = 1.5;
