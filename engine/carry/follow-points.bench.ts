import { loadOpenCV } from '@opencvjs/web';
import type { BenchRow } from '../../cli/bench-row.ts';
import type { Matrix3 } from '../film/pins.ts';
import { randomOf } from '../random/random.ts';
import { cornersOf } from './corners.ts';
import { pictureOfScene, someScene } from './drawn-scene.reference.ts';
import { followPatches } from './follow-patches.ts';
import { patchesOf } from './patches.ts';
import { pyramidOf } from './pyramid.ts';

const [WIDTH, HEIGHT, LEVELS, ROUNDS] = [1280, 720, 4, 21];

/** The corners of one 720p picture found in the next, pyramids and all; OpenCV does the same, alternated in one run. */
const bench = async (): Promise<BenchRow[]> => {
  const cv = await loadOpenCV();
  const random = randomOf(3);
  const scene = someScene(random, 40, 1300);
  const still: Matrix3 = [1, 0, 0, 0, 1, 0, 0, 0, 1];
  const before = pictureOfScene(scene, still, WIDTH, HEIGHT, random, 2);
  const after = pictureOfScene(scene, [1, 0, 7.4, 0, 1, -2.3, 0, 0, 1], WIDTH, HEIGHT, random, 2);
  const choice = { perCell: 2, cellPx: 100, leastStrength: 8, marginPx: 12, leftOut: [] };
  const points = cornersOf(pyramidOf(before, 1)[0]!, choice);
  const count = points.xPx.length;
  const flat = Array.from({ length: 2 * count }, (_, i) =>
    i % 2 === 0 ? points.xPx[i >> 1]! - 0.5 : points.yPx[i >> 1]! - 0.5,
  );
  const [a, b] = [before, after].map(({ grey }) =>
    cv.matFromArray(HEIGHT, WIDTH, cv.CV_8UC1, Array.from(grey)),
  );
  const from = cv.matFromArray(count, 1, cv.CV_32FC2, flat);
  const [to, status, error] = [new cv.Mat(), new cv.Mat(), new cv.Mat()];
  const window = new cv.Size(21, 21);
  const until = new cv.TermCriteria(cv.TermCriteria_EPS + cv.TermCriteria_MAX_ITER, 30, 0.01);
  const ours = () =>
    followPatches(patchesOf(pyramidOf(before, LEVELS), points, 0.1), pyramidOf(after, LEVELS), points);
  const theirs = () => cv.calcOpticalFlowPyrLK(a!, b!, from, to, status, error, window, LEVELS - 1, until);

  const found = ours();
  theirs();
  let agreeing = 0;
  for (let i = 0; i < count; i++) {
    const dx = found.xPx[i]! - 0.5 - to.data32F[2 * i]!;
    const dy = found.yPx[i]! - 0.5 - to.data32F[2 * i + 1]!;
    if (found.found[i] === 1 && Math.hypot(dx, dy) < 0.1) agreeing++;
  }
  if (!(agreeing > 0.9 * count)) throw new Error(`only ${agreeing} of ${count} points agree with OpenCV`);

  const [oursMs, ratios]: [number[], number[]] = [[], []];
  for (let round = 0; round < ROUNDS; round++) {
    const start = performance.now();
    ours();
    const between = performance.now();
    theirs();
    oursMs.push(between - start);
    ratios.push((between - start) / (performance.now() - between));
  }
  for (const mat of [a!, b!, from, to, status, error]) mat.delete();
  const sorted = (values: readonly number[]) => [...values].sort((p, q) => p - q);
  const rowOf = (values: readonly number[], unit: string) => {
    const all = sorted(values);
    const at = (share: number) => all[Math.floor(share * (all.length - 1))]!;
    return { median: at(0.5), spread: `${at(0.1).toFixed(2)} to ${at(0.9).toFixed(2)}`, unit, meets: null };
  };
  return [
    {
      name: `points followed between two 720p pictures, ${count} of them, with their pyramids`,
      bar: 'none',
      ...rowOf(oursMs, 'ms'),
    },
    { name: "the same, against OpenCV's WASM build", bar: 'none', ...rowOf(ratios, '×') },
  ];
};

export default bench;
