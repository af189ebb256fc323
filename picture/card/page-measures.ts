/** Points a millimetre: an A4 page is 595.28 × 841.89 pt. */
const MM = 72 / 25.4;

export const mm = (millimetres: number): number => millimetres * MM;

export const PAGE = {
  width: mm(210),
  height: mm(297),
  left: mm(11),
  right: mm(210 - 11),
  top: mm(10),
  bottom: mm(297 - 9),
} as const;

export const COLUMN_GAP = mm(4);
export const CLOCK_WIDTH = mm(17.5);
export const FACTS_WIDTH = mm(30);
export const DRAWING_WIDTH = mm(82);
/** From this height on a row has room for a wider drawing. */
export const ROOMY_ROW = mm(41);
export const ROOMY_DRAWING_WIDTH = mm(108);
export const TALLEST_ROW = mm(50.5);
export const ROW_PAD = mm(1.7);
