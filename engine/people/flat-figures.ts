import type { ColourPicture } from '../film/colour-picture.ts';
import { maskPartsOf } from './mask-parts.ts';
import { ICE, NOT_ICE } from './not-ice.ts';
import { UNLIKE_ICE } from './people-rows.ts';

/**
 * Takes large figures painted on the ice out of a mask, in place: a part much larger than a body is a figure, and the colours that much of it
 * has are its paint; whoever skates over it has others. `bodyPxAt`: how high a body is drawn at a pixel.
 */
export const takeOutFlatFigures = (
  { rgba, widthPx, heightPx }: ColourPicture,
  mask: Uint8Array,
  bodyPxAt: (x: number, y: number) => number,
): void => {
  const { of, parts } = maskPartsOf(mask, widthPx, heightPx, NOT_ICE);
  parts.forEach(({ count, middleX, middleY }, id) => {
    if (count <= LARGE * bodyPxAt(middleX, middleY) ** 2) return;
    const inks = commonColours(rgba, of, id, LEAST_SHARE * count);
    for (let at = 0; at < of.length; at++) {
      if (of[at] === id && isLike(rgba, 4 * at, inks)) mask[at] = ICE;
    }
  });
};
/** Pixels of a figure, in squares of a body’s height: four bodies abreast have fewer. */
const LARGE = 2.2;
const LEAST_SHARE = 0.05;

type Ink = readonly [red: number, green: number, blue: number];

const commonColours = (rgba: ColourPicture['rgba'], of: Int32Array, id: number, least: number): Ink[] => {
  const sums = new Map<number, [count: number, red: number, green: number, blue: number]>();
  for (let at = 0; at < of.length; at++) {
    if (of[at] !== id) continue;
    const [red, green, blue] = [rgba[4 * at]!, rgba[4 * at + 1]!, rgba[4 * at + 2]!];
    const key = ((red >> 5) << 6) | ((green >> 5) << 3) | (blue >> 5);
    const sum = sums.get(key);
    if (!sum) sums.set(key, [1, red, green, blue]);
    else {
      sum[0]++;
      sum[1] += red;
      sum[2] += green;
      sum[3] += blue;
    }
  }
  return [...sums.values()]
    .filter(([count]) => count > least)
    .map(([count, red, green, blue]): Ink => [red / count, green / count, blue / count]);
};

/** Whether a colour lies near one of a figure’s, or between two of them, as where they meet. */
const isLike = (rgba: ColourPicture['rgba'], at: number, inks: readonly Ink[]): boolean =>
  inks.some((from, i) => inks.some((to, j) => j >= i && isBetween(rgba, at, from, to)));

const isBetween = (rgba: ColourPicture['rgba'], at: number, from: Ink, to: Ink): boolean => {
  const [wayR, wayG, wayB] = [to[0] - from[0], to[1] - from[1], to[2] - from[2]];
  const [r, g, b] = [rgba[at]! - from[0], rgba[at + 1]! - from[1], rgba[at + 2]! - from[2]];
  const lengthSq = wayR * wayR + wayG * wayG + wayB * wayB;
  const share = lengthSq === 0 ? 0 : Math.max(0, Math.min(1, (r * wayR + g * wayG + b * wayB) / lengthSq));
  return Math.hypot(r - share * wayR, g - share * wayG, b - share * wayB) < UNLIKE_ICE.value;
};
