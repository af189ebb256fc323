import type { ColourPicture } from '../film/colour-picture.ts';
import { type IceColour, iceColourAt } from './ice-colour.ts';
import { UNLIKE_ICE } from './people-rows.ts';

/**
 * Whether a pixel, by its place and row, may be white cloth or a white helmet with ice behind it: as colourless as ice, and a little brighter or darker, as its
 * folds are. So are shadows and reflections on ice: to be asked only where a body is known to stand, and above its legs.
 */
export const paleClothIn = (
  { rgba, widthPx }: ColourPicture,
  colour: IceColour,
): ((x: number, y: number) => boolean) => {
  const bare = new Float32Array(3);
  return (x, y) => {
    const at = 4 * (y * widthPx + x);
    iceColourAt(colour, x, y, bare);
    const [r, g, b] = [rgba[at]!, rgba[at + 1]!, rgba[at + 2]!];
    if (Math.hypot(r - bare[0]!, g - bare[1]!, b - bare[2]!) < LEAST_OFF * UNLIKE_ICE.value) return false;
    const share = (r + g + b) / (bare[0]! + bare[1]! + bare[2]!);
    const tint = Math.hypot(r - share * bare[0]!, g - share * bare[1]!, b - share * bare[2]!);
    return tint < MOST_TINT * UNLIKE_ICE.value;
  };
};

/** Three times the noise of bare ice in a film. */
const LEAST_OFF = 0.35;
const MOST_TINT = 0.6;
