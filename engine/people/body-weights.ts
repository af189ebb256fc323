import type { ColourPicture } from '../film/colour-picture.ts';
import { type IceColour, iceColourAt } from './ice-colour.ts';
import { maskPartsOf } from './mask-parts.ts';
import { ICE, NOT_ICE } from './not-ice.ts';
import { UNLIKE_ICE } from './people-rows.ts';

/**
 * How much each pixel speaks for a body, 0 to 1: what is much darker than ice most, brighter things little, as a reflection is bright too. What looks like ice
 * but is shut in by other colours is a body as well: a white jersey. `bodyPxAt`: how high a body is drawn at a pixel.
 */
export const bodyWeightsOf = (
  { rgba, widthPx, heightPx }: ColourPicture,
  mask: Uint8Array,
  colour: IceColour,
  bodyPxAt: (x: number, y: number) => number,
): Float32Array => {
  const weights = new Float32Array(mask.length);
  const bare = new Float32Array(3);
  const { of, parts } = maskPartsOf(mask, widthPx, heightPx, ICE);
  const shutIn = parts.map(
    ({ count, middleX, middleY }) => count < SHUT_IN * bodyPxAt(middleX, middleY) ** 2,
  );
  for (let y = 0, at = 0; y < heightPx; y++) {
    for (let x = 0; x < widthPx; x++, at++) {
      if (mask[at] === ICE && shutIn[of[at]!]) weights[at] = WHITE;
      if (mask[at] !== NOT_ICE) continue;
      iceColourAt(colour, x, y, bare);
      const [dr, dg, db] = [0, 1, 2].map(k => rgba[4 * at + k]! - bare[k]!) as [number, number, number];
      const darker = (Math.hypot(dr, dg, db) - UNLIKE_ICE.value) / FULL;
      weights[at] = Math.sqrt(dr + dg + db > 0 ? BRIGHTER : Math.min(1, Math.max(FAINT, darker)));
    }
  }
  return weights;
};
/** Squares of a body’s height. */
const SHUT_IN = 0.12;
const WHITE = 0.67;
const BRIGHTER = 0.3;
const FAINT = 0.2;
const FULL = 100;
