import type { BenchRow } from '../../cli/bench-row.ts';
import { randomOf } from '../random/random.ts';
import { levelOf } from './level.ts';
import { type RouteCurve, routeCurveOf } from './route-curve.ts';
import { routeTimeReference } from './route-profile.reference.ts';
import { profileRoute, type RouteRun } from './route-profile.ts';

const POINTS = [
  { xM: -20, yM: 0 },
  { xM: -10, yM: 5 },
  { xM: 0, yM: 0 },
  { xM: 9, yM: -3 },
];
const SAMPLES = 200;
const ROUNDS = 61;
const CALLS = 400;
const BAR_RATIO = 3;
const RUN: RouteRun = {
  startSpeedMps: 0,
  facing: 'forward',
  withPuck: false,
  effortRatio: 1,
  stops: true,
};
const { model } = levelOf('collegeWomen');

/** The profile of 200 samples against the barest two passes with constant push and brake, alternated in one run. */
const bench = async (): Promise<BenchRow[]> => {
  const length = routeCurveOf(POINTS).lengthM;
  const curve = routeCurveOf(POINTS, { stepM: length / (SAMPLES - 1) });
  const profile = profileRoute(curve, model, RUN);
  const referenceS = routeTimeReference(POINTS, model, 0, true);
  if ('kind' in profile || Math.abs(profile.durationS / referenceS - 1) > 0.005) {
    throw new Error(`the profile is wrong: ${JSON.stringify(profile)} against ${referenceS} s`);
  }
  const ratios: number[] = [];
  let consumed = 0;
  for (let round = 0; round < ROUNDS; round++) {
    const bareMs = timed(() => {
      for (let i = 0; i < CALLS; i++) consumed += bareDuration(curve);
    });
    const profileMs = timed(() => {
      for (let i = 0; i < CALLS; i++) {
        const found = profileRoute(curve, model, RUN);
        if (!('kind' in found)) consumed += found.durationS;
      }
    });
    // The first rounds warm the compiler up.
    if (round >= ROUNDS / 3) ratios.push(profileMs / bareMs);
  }
  if (!(consumed > 0)) throw new Error('nothing was computed');
  return [
    rowOf(
      `route profile, ${curve.xM.length} samples / bare forward-backward pass`,
      ratios,
      '≤ 3 ×',
      BAR_RATIO,
      '×',
    ),
    solvedRow(),
  ];
};

export default bench;

const bareDuration = ({ curvaturePerM, stepM }: RouteCurve): number => {
  const count = curvaturePerM.length;
  const speedSq = new Float64Array(count);
  const timeS = new Float64Array(count);
  const push = (2 * stepM * model.topSpeedMps) / model.tauS;
  const brake = 2 * stepM * model.stopDecelMps2;
  for (let i = 0; i < count; i++) {
    const bend = Math.abs(curvaturePerM[i]!);
    speedSq[i] = bend > 1e-4 ? model.lateralAccelMps2 / bend : 1e4;
  }
  speedSq[0] = 0;
  for (let i = 1; i < count; i++) speedSq[i] = Math.min(speedSq[i]!, speedSq[i - 1]! + push);
  speedSq[count - 1] = 0;
  for (let i = count - 2; i >= 0; i--) speedSq[i] = Math.min(speedSq[i]!, speedSq[i + 1]! + brake);
  let from = 0;
  for (let i = 1; i < count; i++) {
    const to = Math.sqrt(speedSq[i]!);
    timeS[i] = timeS[i - 1]! + (2 * stepM) / (from + to);
    from = to;
  }
  return timeS[count - 1]!;
};

/** How many of 10,000 random routes have a finite answer, and how long one takes with its curve. */
const solvedRow = (): BenchRow => {
  const random = randomOf(17);
  let solved = 0;
  const routes = Array.from({ length: 10_000 }, () =>
    Array.from({ length: 2 + random.below(6) }, () => ({
      xM: (random.uniform() - 0.5) * 56,
      yM: (random.uniform() - 0.5) * 24,
    })),
  );
  const tookMs = timed(() => {
    for (const points of routes) {
      const found = profileRoute(routeCurveOf(points), model, RUN);
      if (!('kind' in found) && Number.isFinite(found.durationS)) solved++;
    }
  });
  return {
    name: 'random routes solved, of 10,000',
    bar: '10,000',
    median: solved,
    spread: `${((1000 * tookMs) / 10_000).toFixed(0)} µs each, curve and all`,
    unit: '',
    meets: solved === 10_000,
  };
};

const rowOf = (
  name: string,
  values: readonly number[],
  bar: string,
  most: number,
  unit: string,
): BenchRow => {
  const sorted = [...values].sort((a, b) => a - b);
  const at = (share: number): number => sorted[Math.floor(share * (sorted.length - 1))]!;
  return {
    name,
    bar,
    median: at(0.5),
    spread: `${at(0.1).toFixed(2)} to ${at(0.9).toFixed(2)}`,
    unit,
    meets: at(0.5) <= most,
  };
};

const timed = (work: () => void): number => {
  const from = performance.now();
  work();
  return performance.now() - from;
};
