import type { ColourPicture } from '../film/colour-picture.ts';
import type { IceInPicture } from './find-ice.ts';

/** How much paint each pixel on the ice shows: 0 for bare ice, about 0.6 for a painted line. 0 off the ice. */
export interface PaintMaps {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly red: Float32Array;
  readonly blue: Float32Array;
}

/**
 * Red and blue of each pixel against the ice's own colour: how much red stands above both others, and blue above
 * both others, so that yellow, orange and teal are neither. Shade takes all three alike, so it makes no paint. Source: our own rule.
 */
export const paintMapsOf = ({ rgba, widthPx, heightPx }: ColourPicture, ice: IceInPicture): PaintMaps => {
  const red = new Float32Array(widthPx * heightPx);
  const blue = new Float32Array(widthPx * heightPx);
  const [tintR, tintG, tintB] = ice.tint;
  for (let at = 0; at < red.length; at++) {
    if (ice.inside[at] === 0) continue;
    const r = rgba[4 * at]! / tintR;
    const g = rgba[4 * at + 1]! / tintG;
    const b = rgba[4 * at + 2]! / tintB;
    red[at] = Math.max(0, r - Math.max(g, b));
    blue[at] = Math.max(0, b - Math.max(r, g));
  }
  return { widthPx, heightPx, red, blue };
};
