import { type Boards, boardsDistance } from '../rink/boards.ts';
import type { IcePoint } from '../units/points.ts';

/** Square cells over the ice, row by row from −y, column by column from −x; centred on the origin. */
export interface IceGrid {
  readonly cellM: number;
  readonly columnCount: number;
  readonly rowCount: number;
  /** Middle of the first cell. */
  readonly firstM: IcePoint;
  /** 1 where the middle of the cell lies inside the boards. */
  readonly inside: Uint8Array;
}

/**
 * Cells of `cellM` metres (> 0) that cover these boards. Our own layout: whole cells about the middle of the sheet.
 */
export const iceGridOf = (boards: Boards, cellM: number): IceGrid => {
  const columnCount = Math.ceil(boards.lengthM / cellM);
  const rowCount = Math.ceil(boards.widthM / cellM);
  const firstM = { xM: (-(columnCount - 1) * cellM) / 2, yM: (-(rowCount - 1) * cellM) / 2 };
  const inside = new Uint8Array(columnCount * rowCount);
  for (let cell = 0; cell < inside.length; cell++) {
    const column = cell % columnCount;
    const row = (cell - column) / columnCount;
    const at = { xM: firstM.xM + column * cellM, yM: firstM.yM + row * cellM };
    inside[cell] = boardsDistance(boards, at) >= 0 ? 1 : 0;
  }
  return { cellM, columnCount, rowCount, firstM, inside };
};

/** Middle of a cell, metres. Any index of the grid, 0 to its count − 1. By definition. */
export const cellMiddle = (grid: IceGrid, cell: number): IcePoint => {
  const column = cell % grid.columnCount;
  const row = (cell - column) / grid.columnCount;
  return { xM: grid.firstM.xM + column * grid.cellM, yM: grid.firstM.yM + row * grid.cellM };
};
