import { straightOf } from '../film/lens.ts';
import type { PinFit } from '../film/pins.ts';
import { boardsDistance } from '../rink/boards.ts';
import type { Rink } from '../rink/rink.ts';
import type { FilmPoint } from '../units/points.ts';
import { hideBoards, hideNets } from './hide-standing.ts';

/** Where each pixel of a picture lies on the ice, metres; not a number where it shows no ice. */
export interface IceWindow {
  readonly width: number;
  readonly height: number;
  readonly xM: Float32Array;
  readonly yM: Float32Array;
}

/** The ice as a picture of so many pixels shows it: what the near boards hide, and the nets, are left out. */
export const iceWindowOf = (fit: PinFit, rink: Rink, width: number, height: number): IceWindow => {
  const xM = new Float32Array(width * height).fill(Number.NaN);
  const yM = new Float32Array(width * height).fill(Number.NaN);
  const m = fit.iceFromFilm;
  const straightAt = straightener(fit, width, height);
  for (let y = 0, at = 0; y < height; y++) {
    for (let x = 0; x < width; x++, at++) {
      const { xPx, yPx } = straightAt(x, y);
      const t = m[6] * xPx + m[7] * yPx + m[8];
      if (!(t > 0)) continue;
      const iceM = {
        xM: (m[0] * xPx + m[1] * yPx + m[2]) / t,
        yM: (m[3] * xPx + m[4] * yPx + m[5]) / t,
      };
      if (boardsDistance(rink.boards, iceM) < RIM_M) continue;
      xM[at] = iceM.xM;
      yM[at] = iceM.yM;
    }
  }
  const hide = (at: number) => {
    xM[at] = Number.NaN;
  };
  hideBoards({ width, height, hide }, fit, rink);
  hideNets({ width, height, hide }, fit, rink);
  return { width, height, xM, yM };
};

/** Next to the boards the kick plate shows, as far as the pins are off. */
const RIM_M = 0.08;

/** The middle of a pixel in the straight picture. A lens bends smoothly: it is asked every few pixels only. */
const straightener = (
  { lens }: PinFit,
  width: number,
  height: number,
): ((x: number, y: number) => FilmPoint) => {
  if (!lens) return (x, y) => ({ xPx: x + 0.5, yPx: y + 0.5 });
  const columns = Math.ceil(width / EVERY_PX) + 2;
  const rows = Math.ceil(height / EVERY_PX) + 2;
  const gridX = new Float64Array(columns * rows);
  const gridY = new Float64Array(columns * rows);
  for (let at = 0; at < gridX.length; at++) {
    const shown = { xPx: (at % columns) * EVERY_PX + 0.5, yPx: Math.floor(at / columns) * EVERY_PX + 0.5 };
    const straight = straightOf(lens, shown);
    gridX[at] = straight.xPx;
    gridY[at] = straight.yPx;
  }
  return (x, y) => {
    const [column, row] = [Math.floor(x / EVERY_PX), Math.floor(y / EVERY_PX)];
    const [fx, fy] = [x / EVERY_PX - column, y / EVERY_PX - row];
    const at = row * columns + column;
    const between = (grid: Float64Array) =>
      (grid[at]! * (1 - fx) + grid[at + 1]! * fx) * (1 - fy) +
      (grid[at + columns]! * (1 - fx) + grid[at + columns + 1]! * fx) * fy;
    return { xPx: between(gridX), yPx: between(gridY) };
  };
};
const EVERY_PX = 16;
