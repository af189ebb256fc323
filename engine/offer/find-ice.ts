import type { ColourPicture } from '../film/colour-picture.ts';
import { ICE_BRIGHTNESS, ICE_SATURATION, LEAST_ICE_SHARE } from './feature-rows.ts';
import { fillHull } from './fill-hull.ts';
import { joinedRegion } from './joined-region.ts';

/** Where the ice is in a picture, and its own colour. */
export interface IceInPicture {
  /** 1 inside, a byte a pixel: what the ice spans, with all that lies or stands on it. */
  readonly inside: Uint8Array;
  readonly insideCount: number;
  /** Middle red, green and blue of bare ice, 0 to 255. */
  readonly tint: readonly [number, number, number];
  /** Share of the picture that is bare ice, 0 to 1. */
  readonly bareShare: number;
}

/** The picture is looked at in squares of so many pixels. */
const CELL_PX = 4;

/**
 * The ice of a picture: the largest bright region with little colour, with those that painted lines part from it,
 * and all between, because a sheet is convex and stays so in a picture. Null when there is no such region of any size. Source: our own rule.
 */
export const findIce = (picture: ColourPicture): IceInPicture | null => {
  const acrossCount = Math.floor(picture.widthPx / CELL_PX);
  const downCount = Math.floor(picture.heightPx / CELL_PX);
  const colours = cellColours(picture, acrossCount, downCount);
  const isIce = iceCells(colours, acrossCount * downCount);
  const cells = joinedRegion(isIce, acrossCount, downCount);
  const bareShare = cells.length / Math.max(1, acrossCount * downCount);
  if (bareShare < LEAST_ICE_SHARE.value) return null;
  const inside = fillHull(cells, acrossCount, CELL_PX, picture.widthPx, picture.heightPx);
  let insideCount = 0;
  for (const one of inside) insideCount += one;
  const middle = (channel: number): number => {
    const values = cells.map(cell => colours[3 * cell + channel]!).sort((a, b) => a - b);
    return Math.max(1, values[values.length >> 1]!);
  };
  return { inside, insideCount, tint: [middle(0), middle(1), middle(2)], bareShare };
};

const cellColours = (
  { rgba, widthPx }: ColourPicture,
  acrossCount: number,
  downCount: number,
): Float32Array => {
  const colours = new Float32Array(3 * acrossCount * downCount);
  const share = 1 / CELL_PX ** 2;
  for (let y = 0; y < downCount * CELL_PX; y++) {
    for (let x = 0; x < acrossCount * CELL_PX; x++) {
      const from = 4 * (y * widthPx + x);
      const to = 3 * (((y / CELL_PX) | 0) * acrossCount + ((x / CELL_PX) | 0));
      for (let k = 0; k < 3; k++) colours[to + k] = colours[to + k]! + share * rgba[from + k]!;
    }
  }
  return colours;
};

const iceCells = (colours: Float32Array, count: number): Uint8Array => {
  const brightness = (cell: number) =>
    Math.max(colours[3 * cell]!, colours[3 * cell + 1]!, colours[3 * cell + 2]!);
  const isPale = (cell: number): boolean => {
    const most = brightness(cell);
    const least = Math.min(colours[3 * cell]!, colours[3 * cell + 1]!, colours[3 * cell + 2]!);
    return most - least < ICE_SATURATION.value * most;
  };
  const pale = Array.from({ length: count }, (_, cell) => cell).filter(isPale);
  const sorted = pale.map(brightness).sort((a, b) => a - b);
  const bright = sorted[Math.floor(0.9 * sorted.length)] ?? 255;
  // A picture without light has no ice, however evenly grey it is.
  const least = Math.max(DARKEST, ICE_BRIGHTNESS.value * bright);
  const isIce = new Uint8Array(count);
  for (const cell of pale) if (brightness(cell) >= least) isIce[cell] = 1;
  return isIce;
};

const DARKEST = 60;
