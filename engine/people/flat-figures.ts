import type { ColourPicture } from './colour-picture.ts';
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
      if (of[at] === id && inks.some(ink => isLike(rgba, 4 * at, ink))) mask[at] = ICE;
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
    const key = ((red >> 4) << 8) | ((green >> 4) << 4) | (blue >> 4);
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

const isLike = (rgba: ColourPicture['rgba'], at: number, [red, green, blue]: Ink): boolean =>
  Math.hypot(rgba[at]! - red, rgba[at + 1]! - green, rgba[at + 2]! - blue) < UNLIKE_ICE.value;
