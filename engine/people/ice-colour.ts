import type { ColourPicture } from '../film/colour-picture.ts';
import { factorInto, solveInPlace } from '../film/matrix.ts';
import type { IceWindow } from './ice-window.ts';
import { middleOf } from './middle-of.ts';

/** What colour bare ice has all over a picture, told for blocks of it. */
export interface IceColour {
  readonly columns: number;
  readonly rows: number;
  /** Red, green and blue of each block, row by row. */
  readonly rgb: Float32Array;
}

/**
 * The ice’s own colour: of each block the middle one where it goes with a smooth shading over the whole picture, else that shading. So
 * light that falls off and reflections are followed, painted figures are not. Null where hardly any ice is seen.
 */
export const iceColourOf = (picture: ColourPicture, ice: IceWindow): IceColour | null => {
  const columns = Math.ceil(picture.widthPx / BLOCK_PX);
  const rows = Math.ceil(picture.heightPx / BLOCK_PX);
  const found = new Float32Array(3 * columns * rows).fill(Number.NaN);
  const known: number[] = [];
  for (let block = 0; block < columns * rows; block++) {
    if (middleColour(picture, ice, block % columns, Math.floor(block / columns), found, 3 * block))
      known.push(block);
  }
  if (known.length < LEAST_BLOCKS) return null;
  const placeOf = (block: number) =>
    termsAt((block % columns) / columns - 0.5, Math.floor(block / columns) / rows - 0.5);
  const shades = [0, 1, 2].map(channel => shadeOf(known, found, channel, placeOf));
  const rgb = new Float32Array(3 * columns * rows);
  for (let block = 0; block < columns * rows; block++) {
    const terms = placeOf(block);
    const smooth = shades.map(shade => terms.reduce((sum, term, i) => sum + term * shade[i]!, 0));
    const offBy = Math.max(...smooth.map((value, channel) => Math.abs(found[3 * block + channel]! - value)));
    for (let channel = 0; channel < 3; channel++) {
      rgb[3 * block + channel] = offBy < SMOOTH_WITHIN ? found[3 * block + channel]! : smooth[channel]!;
    }
  }
  return { columns, rows, rgb };
};

/** Colour of bare ice at a pixel, between the blocks, into `out`. */
export const iceColourAt = (
  { columns, rows, rgb }: IceColour,
  x: number,
  y: number,
  out: Float32Array,
): void => {
  const column = Math.max(0, Math.min(columns - 1.001, x / BLOCK_PX - 0.5));
  const row = Math.max(0, Math.min(rows - 1.001, y / BLOCK_PX - 0.5));
  const [c, r] = [Math.floor(column), Math.floor(row)];
  const [fx, fy] = [column - c, row - r];
  const at = 3 * (r * columns + c);
  const below = at + 3 * columns;
  for (let k = 0; k < 3; k++) {
    const upper = rgb[at + k]! * (1 - fx) + rgb[at + 3 + k]! * fx;
    out[k] = upper * (1 - fy) + (rgb[below + k]! * (1 - fx) + rgb[below + 3 + k]! * fx) * fy;
  }
};

const BLOCK_PX = 16;
const LEAST_BLOCKS = 12;
/** Of 255: a block off by more is not bare ice. */
const SMOOTH_WITHIN = 22;

const middleColour = (
  { rgba, widthPx, heightPx }: ColourPicture,
  ice: IceWindow,
  column: number,
  row: number,
  into: Float32Array,
  at: number,
): boolean => {
  const seen: [number[], number[], number[]] = [[], [], []];
  const toX = Math.min(widthPx, (column + 1) * BLOCK_PX);
  const toY = Math.min(heightPx, (row + 1) * BLOCK_PX);
  // Every second pixel of every second row tells the middle as well.
  for (let y = row * BLOCK_PX; y < toY; y += 2) {
    for (let x = column * BLOCK_PX; x < toX; x += 2) {
      const pixel = y * widthPx + x;
      if (Number.isNaN(ice.xM[pixel]!)) continue;
      for (let k = 0; k < 3; k++) seen[k]!.push(rgba[4 * pixel + k]!);
    }
  }
  if (seen[0].length < 10) return false;
  for (let k = 0; k < 3; k++) into[at + k] = middleOf(seen[k]!);
  return true;
};

const termsAt = (x: number, y: number): readonly number[] => [1, x, y, x * x, x * y, y * y];

/** One channel’s shading, a parabola over the picture: least squares in which what is far off counts ever less (Holland & Welsch 1977, from memory). */
const shadeOf = (
  known: readonly number[],
  found: Float32Array,
  channel: number,
  placeOf: (block: number) => readonly number[],
): Float64Array => {
  const light = (block: number) => found[3 * block]! + found[3 * block + 1]! + found[3 * block + 2]!;
  const bright = BRIGHT_SHARE * middleOf(known.map(light));
  let shade: Float64Array | undefined;
  for (let round = 0; round < ROUNDS; round++) {
    const normal = new Float64Array(36);
    const right = new Float64Array(6);
    for (const block of known) {
      const terms = placeOf(block);
      const value = found[3 * block + channel]!;
      const offBy = shade ? value - terms.reduce((sum, term, i) => sum + term * shade![i]!, 0) : 0;
      const weight = shade ? 1 / (1 + (offBy / LOOSE) ** 2) ** 2 : light(block) > bright ? 1 : 1e-3;
      for (let i = 0; i < 6; i++) {
        right[i]! += weight * terms[i]! * value;
        for (let j = 0; j < 6; j++) normal[6 * i + j]! += weight * terms[i]! * terms[j]!;
      }
    }
    for (let i = 0; i < 6; i++) normal[7 * i]! += 1e-3;
    const factor = new Float64Array(36);
    if (!factorInto(normal, factor, 6)) break;
    solveInPlace(factor, right, 6);
    shade = right;
  }
  return shade ?? new Float64Array(6);
};
const ROUNDS = 6;
const LOOSE = 10;
const BRIGHT_SHARE = 0.9;
