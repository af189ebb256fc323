import { LEAST_LINE_SHARE, LINE_FILL } from './feature-rows.ts';
import { lineThrough, type PictureLine } from './line-through.ts';

/** A straight painted line in a picture, between two points, pixels. */
export interface FoundLine {
  readonly line: PictureLine;
  readonly fromPx: readonly [x: number, y: number];
  readonly toPx: readonly [x: number, y: number];
  /** How much of it shows paint, pixels. */
  readonly paintedPx: number;
  /** Mean width across, pixels. */
  readonly widthPx: number;
}

/** Painted pixels of one colour: where, and how strong. */
export interface PaintedPixels {
  readonly xPx: Float64Array;
  readonly yPx: Float64Array;
  readonly strength: Float64Array;
}

const ANGLE_COUNT = 180;
const BIN_PX = 2;
/** So many pixels, evenly taken, tell the longest line as well as all of them. */
const MOST_VOTERS = 9000;

/**
 * Up to `mostCount` (> 0) straight lines through painted pixels of a picture, the longest first: the best of all
 * directions and places, then a line by least squares through the pixels near it; their pixels are set aside before
 * the next. Source: Hough's transform as in Duda & Hart 1972, Communications of the ACM 15, 11 (from memory).
 */
export const findLines = (
  pixels: PaintedPixels,
  widthPx: number,
  heightPx: number,
  mostCount: number,
): FoundLine[] => {
  const diagonalPx = Math.hypot(widthPx, heightPx);
  const found: FoundLine[] = [];
  let rest = pixels;
  for (let round = 0; round < 2 * mostCount && found.length < mostCount; round++) {
    const start = strongestOf(rest, diagonalPx);
    if (start === null) break;
    let line = start;
    let reachPx = Math.max(6, 0.008 * diagonalPx);
    for (let pass = 0; pass < 5; pass++) {
      const near = nearLine(rest, line, reachPx);
      const fitted = lineThrough(near.xPx, near.yPx, near.strength);
      if (fitted === null) break;
      line = fitted.line;
      reachPx = Math.max(2, Math.min(reachPx, 3.5 * fitted.rmsPx));
    }
    const near = nearLine(rest, line, reachPx);
    const run = longestRun(near, line, diagonalPx);
    rest = awayFrom(rest, line, Math.max(3, 1.3 * reachPx), run);
    if (run === null || run.paintedPx < LEAST_LINE_SHARE.value * diagonalPx) continue;
    found.push({ line, ...run });
  }
  return found.sort((a, b) => b.paintedPx - a.paintedPx);
};

const strongestOf = ({ xPx, yPx, strength }: PaintedPixels, diagonalPx: number): PictureLine | null => {
  const bins = Math.ceil((2 * diagonalPx) / BIN_PX) + 1;
  const votes = new Float32Array(ANGLE_COUNT * bins);
  const stride = Math.ceil(xPx.length / MOST_VOTERS);
  for (let k = 0; k < ANGLE_COUNT; k++) {
    const cos = Math.cos((k * Math.PI) / ANGLE_COUNT);
    const sin = Math.sin((k * Math.PI) / ANGLE_COUNT);
    const base = k * bins + diagonalPx / BIN_PX + 0.5;
    for (let i = 0; i < xPx.length; i += stride) {
      const at = (base + (cos * xPx[i]! + sin * yPx[i]!) / BIN_PX) | 0;
      votes[at] = votes[at]! + strength[i]!;
    }
  }
  let best = 0;
  for (let at = 1; at < votes.length; at++) if (votes[at]! > votes[best]!) best = at;
  if (!(votes[best]! > 0)) return null;
  const k = (best / bins) | 0;
  const rad = (k * Math.PI) / ANGLE_COUNT;
  const distancePx = (best - k * bins) * BIN_PX - diagonalPx;
  return { normalX: Math.cos(rad), normalY: Math.sin(rad), offsetPx: -distancePx };
};

const offLine = ({ normalX, normalY, offsetPx }: PictureLine, x: number, y: number): number =>
  normalX * x + normalY * y + offsetPx;

const picked = (pixels: PaintedPixels, keeps: (x: number, y: number) => boolean): PaintedPixels => {
  const kept: number[] = [];
  for (let i = 0; i < pixels.xPx.length; i++) if (keeps(pixels.xPx[i]!, pixels.yPx[i]!)) kept.push(i);
  const of = (values: Float64Array) => Float64Array.from(kept, i => values[i]!);
  return { xPx: of(pixels.xPx), yPx: of(pixels.yPx), strength: of(pixels.strength) };
};

const nearLine = (pixels: PaintedPixels, line: PictureLine, reachPx: number): PaintedPixels =>
  picked(pixels, (x, y) => Math.abs(offLine(line, x, y)) <= reachPx);

const awayFrom = (
  pixels: PaintedPixels,
  line: PictureLine,
  reachPx: number,
  run: Pick<FoundLine, 'widthPx'> | null,
): PaintedPixels => {
  const farPx = Math.max(reachPx, run?.widthPx ?? 0);
  return picked(pixels, (x, y) => Math.abs(offLine(line, x, y)) > farPx);
};

/** The longest stretch along the line that is painted without a gap of more than a twelfth of the picture. */
const longestRun = (
  { xPx, yPx }: PaintedPixels,
  { normalX, normalY, offsetPx }: PictureLine,
  diagonalPx: number,
): Omit<FoundLine, 'line'> | null => {
  const binCount = Math.ceil((2 * diagonalPx) / BIN_PX) + 1;
  const filled = new Uint16Array(binCount);
  for (let i = 0; i < xPx.length; i++) {
    const at = Math.floor((normalX * yPx[i]! - normalY * xPx[i]! + diagonalPx) / BIN_PX);
    filled[at] = filled[at]! + 1;
  }
  const gapCount = diagonalPx / 12 / BIN_PX;
  let best = { from: 0, to: 0, painted: 0, pixels: 0 };
  let run = { from: 0, to: Number.NEGATIVE_INFINITY, painted: 0, pixels: 0 };
  for (let at = 0; at < binCount; at++) {
    if (filled[at] === 0) continue;
    if (at - run.to > gapCount) run = { from: at, to: at, painted: 0, pixels: 0 };
    run.to = at;
    run.painted++;
    run.pixels += filled[at]!;
    if (run.painted > best.painted) best = { ...run };
  }
  if (best.painted < LINE_FILL.value * (best.to - best.from + 1)) return null;
  const pointAt = (bin: number): [number, number] => {
    const alongPx = (bin + 0.5) * BIN_PX - diagonalPx;
    return [-normalY * alongPx - normalX * offsetPx, normalX * alongPx - normalY * offsetPx];
  };
  return {
    fromPx: pointAt(best.from),
    toPx: pointAt(best.to),
    paintedPx: best.painted * BIN_PX,
    widthPx: best.pixels / best.painted / BIN_PX,
  };
};
