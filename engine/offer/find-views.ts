import type { Rink } from '../rink/rink.ts';
import { guessByCircles } from './circle-guesses.ts';
import type { FoundLine } from './find-lines.ts';
import { agreesWith, type GivenPin } from './given-pins.ts';
import type { PictureFeatures } from './picture-features.ts';
import { type Evidence, refineOnce, type Support } from './refine-view.ts';
import { isSameView } from './same-view.ts';
import { samplesOf } from './stroke-samples.ts';
import { discsOf, strokesOf } from './strokes.ts';
import { unexplainedOf } from './unexplained.ts';
import { guessViews, type SeenLine, type SeenSpot } from './view-guesses.ts';
import { UNEXPLAINED_ODDS } from './view-rows.ts';

/** A way the picture may see the sheet, moved onto the paint, and how it goes with the picture. */
export interface FoundView {
  /** Ice in metres to a picture whose middle is (0, 0) and whose half diagonal is 1, row by row. */
  readonly map: Float64Array;
  readonly support: Support;
  /** Paint that is there and should not be, in the measure of `support.missing`. */
  readonly unexplained: number;
  readonly score: number;
}

/**
 * The few best different ways in which a picture may see a sheet, the best first; none where nothing goes together. The camera is taken to
 * stand towards −y: the half turn of each is as good. Source: our own rule; its steps name theirs.
 */
export const findViews = (
  rink: Rink,
  features: PictureFeatures,
  /** Pins that are taken as right: only views are found that agree with them, as they stand or with the sheet turned by half. */
  given: readonly GivenPin[] = [],
): FoundView[] => {
  const { paint, ice, spots, circles } = features;
  const { widthPx, heightPx } = paint;
  const halfDiagonal = Math.hypot(widthPx, heightPx) / 2;
  const strokes = strokesOf(rink);
  const discs = discsOf(rink);
  const coarse = samplesOf(strokes, COARSE_M);
  const fine = samplesOf(strokes, FINE_M);
  const evidence: Evidence = { paint, inside: ice.inside, spots };

  const seenOf = ({ xPx, yPx }: { readonly xPx: number; readonly yPx: number }): SeenSpot => ({
    u: (xPx - widthPx / 2) / halfDiagonal,
    v: (yPx - heightPx / 2) / halfDiagonal,
  });
  const lines = seenLinesOf(rink, features, widthPx, heightPx, halfDiagonal);
  const seen = spots.slice(0, MOST_SPOTS).map(seenOf);
  const sheet = { widthPx, heightPx };
  const guesses: { map: Float64Array; score: number }[] = [];
  const take = (map: Float64Array): void => {
    const moved = map.slice();
    const { score } = refineOnce(moved, coarse, discs, evidence, 12, true);
    guesses.push({ map: moved, score });
  };
  if (given.length === 0) guessViews(rink, seen, lines, take);
  const seenCircles = circles.map(({ spot, conic }) => ({
    spot: seen[spots.indexOf(spot)] ?? seenOf(spot),
    conic,
  }));
  if (given.length === 0) guessByCircles(rink, seenCircles, seen, lines, take);
  for (const sign of given.length === 0 ? [] : ([1, -1] as const)) {
    const pinned = given.slice(0, MOST_GIVEN).map(({ iceM: { xM, yM }, filmPx }) => ({
      ...seenOf(filmPx),
      canBe: [{ xM: sign * xM, yM: sign * yM }],
    }));
    const others = seen.filter(one =>
      pinned.every(pin => Math.hypot(pin.u - one.u, pin.v - one.v) > SAME_SPOT),
    );
    guessViews(rink, [...pinned, ...others], lines, take, pinned.length);
    guessByCircles(rink, seenCircles, pinned, [], take);
  }

  guesses.sort((a, b) => b.score - a.score);
  const views: FoundView[] = [];
  for (const { map } of guesses.slice(0, MOST_REFINED)) {
    for (const reachPx of [10, 7, 5]) refineOnce(map, coarse, discs, evidence, reachPx, true);
    if (views.some(other => isSameView(other.map, map, paint, ice.inside))) continue;
    for (const reachPx of [4, 3]) refineOnce(map, fine, discs, evidence, reachPx, true);
    const support = refineOnce(map, fine, discs, evidence, 2, false);
    const unexplained = unexplainedOf(map, features, strokes, rink);
    views.push({ map, support, unexplained, score: support.score + UNEXPLAINED_ODDS.value * unexplained });
  }
  views.sort((a, b) => b.score - a.score);
  // Two that were apart may have been moved onto the same paint.
  const isFirst = (view: FoundView, index: number): boolean =>
    !views.slice(0, index).some(other => isSameView(other.map, view.map, paint, ice.inside));
  return views
    .filter(isFirst)
    .filter(({ map }) => given.length === 0 || agreesWith(map, given, sheet))
    .slice(0, MOST_VIEWS);
};

const seenLinesOf = (
  { lines }: Rink,
  { blueLines, redLines }: PictureFeatures,
  widthPx: number,
  heightPx: number,
  halfDiagonal: number,
): SeenLine[] => {
  const seenOf = (
    { line: { normalX, normalY, offsetPx } }: FoundLine,
    canBeXM: readonly number[],
  ): SeenLine => ({
    pqr: [
      normalX * halfDiagonal,
      normalY * halfDiagonal,
      offsetPx + (normalX * widthPx) / 2 + (normalY * heightPx) / 2,
    ],
    canBeXM,
  });
  const blue = [lines.blueLineMinusX.centreXM, lines.blueLinePlusX.centreXM];
  const red = [lines.centreLine.centreXM, lines.goalLineMinusX.centreXM, lines.goalLinePlusX.centreXM];
  return [...blueLines.map(line => seenOf(line, blue)), ...redLines.map(line => seenOf(line, red))];
};

/** A found spot so near to a given pin, half diagonals, is the pin's own. */
const SAME_SPOT = 0.015;
const MOST_GIVEN = 3;
const COARSE_M = 1;
const FINE_M = 0.4;
const MOST_SPOTS = 8;
const MOST_REFINED = 40;
const MOST_VIEWS = 4;
