/** Points a millimetre: an A4 page is 595.28 × 841.89 pt. */
const MM = 72 / 25.4;

export const mm = (millimetres: number): number => millimetres * MM;

/** A sheet of paper and the room inside its margins, points. */
export interface Page {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const pageOf = (widthMm: number, heightMm: number): Page => ({
  width: mm(widthMm),
  height: mm(heightMm),
  left: mm(11),
  right: mm(widthMm - 11),
  top: mm(10),
  bottom: mm(heightMm - 9),
});

/** A4 by ISO 216, letter by ANSI/ASME Y14.1 (8.5 × 11 in). */
export const PAPERS = { a4: pageOf(210, 297), letter: pageOf(215.9, 279.4) } as const;

export type Paper = keyof typeof PAPERS;

export const PAGE = PAPERS.a4;

export const COLUMN_GAP = mm(4);
export const CLOCK_WIDTH = mm(17.5);
export const FACTS_WIDTH = mm(30);
export const DRAWING_WIDTH = mm(82);
/** From this height on a row has room for a wider drawing. */
export const ROOMY_ROW = mm(41);
export const ROOMY_DRAWING_WIDTH = mm(108);
export const TALLEST_ROW = mm(50.5);
export const ROW_PAD = mm(1.7);
