import type { ColourPicture } from '../film/colour-picture.ts';
import type { Dress } from './dress-groups.ts';
import { ICE, NOT_ICE } from './not-ice.ts';
import type { StandingBody, Stature } from './standing-bodies.ts';

/** The colour somebody wears, red, green and blue 0 to 1, and the same as dresses are compared; null where nothing of it is seen. */
export interface Worn {
  readonly rgb: readonly [red: number, green: number, blue: number];
  readonly dress: Dress | null;
}

/**
 * What a body wears between knees and neck: the mean colour of the darker half of the pixels that are no ice or shut in by such,
 * because a white jersey is lost in the ice and its number, its trim and the trousers are not; and how light all of it is.
 */
export const dressOf = (
  { rgba, widthPx }: ColourPicture,
  mask: Uint8Array,
  weights: Float32Array,
  { footX, footY }: StandingBody,
  { acrossPx, upPx }: Stature,
): Worn => {
  const worn: { readonly at: number; readonly light: number }[] = [];
  const from = Math.max(0, Math.round(footX - HALF_WIDTH_M * acrossPx));
  const to = Math.min(widthPx, Math.round(footX + HALF_WIDTH_M * acrossPx));
  for (let row = Math.max(0, Math.round(footY - NECK_M * upPx)); row < footY - KNEES_M * upPx; row++) {
    for (let at = row * widthPx + from; at < row * widthPx + to; at++) {
      if (mask[at] !== NOT_ICE && !(mask[at] === ICE && weights[at]! > 0)) continue;
      worn.push({ at, light: (rgba[4 * at]! + rgba[4 * at + 1]! + rgba[4 * at + 2]!) / 765 });
    }
  }
  if (worn.length === 0) return { rgb: [0, 0, 0], dress: null };
  worn.sort((a, b) => a.light - b.light);
  const darker = worn.slice(0, Math.ceil(worn.length / 2));
  const mean = (k: number) =>
    darker.reduce((sum, { at }) => sum + rgba[4 * at + k]! / 255, 0) / darker.length;
  const light = worn.reduce((sum, one) => sum + one.light, 0) / worn.length;
  const rgb = [mean(0), mean(1), mean(2)] as const;
  const sum = rgb[0] + rgb[1] + rgb[2] + NEARLY_BLACK;
  return { rgb, dress: [rgb[0] / sum, rgb[1] / sum, rgb[2] / sum, LIGHT_COUNTS * light] };
};
const HALF_WIDTH_M = 0.25;
const KNEES_M = 0.4;
const NECK_M = 1.25;
/** So little light has no hue to speak of. */
const NEARLY_BLACK = 0.1;
const LIGHT_COUNTS = 0.3;
