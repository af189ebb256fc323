import { loadOpenCV } from '@opencvjs/web';
import type { BenchRow } from '../../cli/bench-row.ts';
import { randomOf } from '../random/random.ts';
import { fitPins } from './fit-pins.ts';
import { iceFromFilm } from './ice-from-film.ts';
import { somePinnedView, theFit } from './pinned-view.reference.ts';

const VIEWS = 200;
const ROUNDS = 41;

/** Matrix, covariance and test for a wrong pin from 12 pins, and OpenCV's matrix alone, alternated in one run. */
const bench = async (): Promise<BenchRow[]> => {
  const cv = await loadOpenCV();
  const random = randomOf(41);
  const views = Array.from({ length: VIEWS }, () => somePinnedView(random, 12, 1).pins).map(pins => ({
    pins,
    ice: cv.matFromArray(
      12,
      2,
      cv.CV_32F,
      pins.flatMap(({ iceM }) => [iceM.xM, iceM.yM]),
    ),
    film: cv.matFromArray(
      12,
      2,
      cv.CV_32F,
      pins.flatMap(({ filmPx }) => [filmPx.xPx, filmPx.yPx]),
    ),
  }));
  const middlePx = { xPx: 640, yPx: 500 };
  let farthestM = 0;
  for (const { pins, ice, film } of views) {
    const placed = iceFromFilm(theFit(fitPins(pins, 1)), middlePx, { footSdPx: 0 });
    const found = cv.findHomography(ice, film);
    const inverse = found.inv(cv.DECOMP_LU);
    const m = inverse.data64F;
    const t = m[6]! * middlePx.xPx + m[7]! * middlePx.yPx + m[8]!;
    const xM = (m[0]! * middlePx.xPx + m[1]! * middlePx.yPx + m[2]!) / t;
    if (placed.kind === 'placed') farthestM = Math.max(farthestM, Math.abs(placed.atM.xM - xM));
    found.delete();
    inverse.delete();
  }
  // OpenCV reads 32-bit floats here, which alone moves a place by some 1e-5 m.
  if (!(farthestM < 1e-3)) throw new Error(`the two disagree by ${farthestM} m, so their times say nothing`);

  let kept = 0;
  const oursMs: number[] = [];
  const theirsMs: number[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    const start = performance.now();
    for (const { pins } of views) kept += theFit(fitPins(pins, 1)).rmsPx;
    const between = performance.now();
    for (const { ice, film } of views) {
      const found = cv.findHomography(ice, film);
      kept += found.data64F[0]!;
      found.delete();
    }
    oursMs.push((between - start) / VIEWS);
    theirsMs.push((performance.now() - between) / VIEWS);
  }
  if (!Number.isFinite(kept)) throw new Error('a fit came out as no number');
  for (const { ice, film } of views) {
    ice.delete();
    film.delete();
  }
  const ours = sorted(oursMs);
  const ratios = sorted(oursMs.map((ms, i) => ms / theirsMs[i]!));
  return [
    {
      name: 'pins to ice: matrix and covariance from 12 pins',
      bar: '≤ 0.3 ms',
      median: middle(ours),
      spread: spreadOf(ours),
      unit: 'ms',
      meets: middle(ours) <= 0.3,
    },
    {
      name: "the same, against OpenCV's WASM build (matrix alone)",
      bar: '< 1 ×',
      median: middle(ratios),
      spread: spreadOf(ratios),
      unit: '×',
      meets: middle(ratios) < 1,
      note: `OpenCV ${middle(sorted(theirsMs)).toPrecision(3)} ms; it starts from 32-bit floats`,
    },
  ];
};

export default bench;

const sorted = (values: readonly number[]): number[] => [...values].sort((a, b) => a - b);
const middle = (values: readonly number[]): number => values[Math.floor(values.length / 2)]!;
const spreadOf = (values: readonly number[]): string =>
  `${values[Math.floor(values.length / 10)]!.toPrecision(2)} to ${values[Math.floor(0.9 * values.length)]!.toPrecision(2)}`;
