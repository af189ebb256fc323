import { type None, noneBecause } from '../units/none.ts';
import { addNormals, type Normals, type Parameters, solve3, startNormals } from './fit-normals.ts';
import { sprintTimeTo } from './sprint.ts';

/** A skater's own sprint from gate times. */
export interface SprintFit {
  readonly topSpeedMps: number;
  readonly tauS: number;
  /** Gate time = model time + offset; negative: already moving when the clock started. */
  readonly offsetS: number;
  readonly residualSumSquaresS2: number;
  /** Standard deviation of one time, from the residuals; null with exactly three times. */
  readonly residualSdS: number | null;
  /** Of top speed (m/s), τ (s), offset (s); null with exactly three times. */
  readonly standardErrors: readonly [number, number, number] | null;
  /** Between top speed and τ, top speed and offset, τ and offset. */
  readonly correlation: readonly [number, number, number];
}

export type NoSprintFit = None<'tooFewSplits' | 'timesFitNoSprint'>;

/**
 * Top speed, time constant and start offset by least squares over all gate times (seconds at metres; repeated goes may be
 * put together). None: fewer than three different distances, or times that no sprint curve fits (τ leaves 0.05–20 s, as
 * when they grow evenly). Source: time shift for the start instant, Stenroth, Vartiainen & Karjalainen 2020, Sports
 * Biomechanics; Levenberg–Marquardt with exact derivatives, from several starts. Throws when distances and times are not
 * equally many.
 */
export const fitSprint = (
  distancesM: readonly number[],
  timesS: readonly number[],
): SprintFit | NoSprintFit => {
  if (distancesM.length !== timesS.length) {
    throw new RangeError(`${distancesM.length} distances but ${timesS.length} times`);
  }
  if (new Set(distancesM).size < 3) return noneBecause('tooFewSplits');
  let best: Fitted | undefined;
  for (const tauS of START_TAUS_S) {
    const fitted = descend(distancesM, timesS, startAt(distancesM, timesS, tauS));
    if (fitted && (!best || fitted.normals.rss < best.normals.rss)) best = fitted;
  }
  return best ? fitOf(best, distancesM.length) : noneBecause('timesFitNoSprint');
};

interface Fitted {
  readonly at: Parameters;
  readonly normals: Normals;
}

const START_TAUS_S = [0.6, 1.2, 2.2];
const TAU_RANGE_S = [0.05, 20] as const;
const TOP_SPEED_RANGE_MPS = [0.5, 40] as const;
const MOST_STEPS = 200;

const startAt = (distancesM: readonly number[], timesS: readonly number[], tauS: number): Parameters => {
  let near = 0;
  let far = 0;
  distancesM.forEach((distanceM, i) => {
    if (distanceM < distancesM[near]!) near = i;
    if (distanceM > distancesM[far]!) far = i;
  });
  const spanS = timesS[far]! - timesS[near]!;
  const mean = spanS > 0 ? (distancesM[far]! - distancesM[near]!) / spanS : 7;
  const topSpeedMps = clamp(mean * 1.15, TOP_SPEED_RANGE_MPS);
  return { topSpeedMps, tauS, offsetS: timesS[far]! - modelTime(topSpeedMps, tauS, distancesM[far]!) };
};

const clamp = (value: number, [low, high]: readonly [number, number]): number =>
  Math.min(high, Math.max(low, value));

const isInside = ({ topSpeedMps, tauS }: Parameters): boolean =>
  tauS >= TAU_RANGE_S[0] &&
  tauS <= TAU_RANGE_S[1] &&
  topSpeedMps >= TOP_SPEED_RANGE_MPS[0] &&
  topSpeedMps <= TOP_SPEED_RANGE_MPS[1];

const modelTime = (topSpeedMps: number, tauS: number, distanceM: number): number => {
  const time = sprintTimeTo({ topSpeedMps, tauS }, distanceM);
  if (typeof time !== 'number') throw new Error(`no time to ${distanceM} m at ${topSpeedMps} m/s`);
  return time;
};

const normalsAt = (at: Parameters, distancesM: readonly number[], timesS: readonly number[]): Normals => {
  const normals = startNormals();
  distancesM.forEach((distanceM, i) => {
    const time = modelTime(at.topSpeedMps, at.tauS, distanceM);
    const decay = Math.exp(-time / at.tauS);
    const gone = 1 - decay;
    // From x(T; V, τ) = d: dT/dV = −(d/V)/v and dT/dτ = (1 − e^(−T/τ)(1 + T/τ))/(1 − e^(−T/τ)).
    const byV = gone > 0 ? -distanceM / (at.topSpeedMps ** 2 * gone) : 0;
    const byTau = gone > 0 ? (gone - (time / at.tauS) * decay) / gone : 0;
    addNormals(normals, timesS[i]! - time - at.offsetS, byV, byTau);
  });
  return normals;
};

/** Levenberg–Marquardt; undefined when it ends at the edge of what a skater can be. */
const descend = (
  distancesM: readonly number[],
  timesS: readonly number[],
  start: Parameters,
): Fitted | undefined => {
  let at = start;
  let normals = normalsAt(at, distancesM, timesS);
  let damping = 1e-3;
  for (let step = 0; step < MOST_STEPS; step++) {
    const move = solve3(normals, damping);
    if (!move) return undefined;
    const next = {
      topSpeedMps: at.topSpeedMps + move[0],
      tauS: at.tauS + move[1],
      offsetS: at.offsetS + move[2],
    };
    const after = isInside(next) ? normalsAt(next, distancesM, timesS) : undefined;
    if (after && after.rss <= normals.rss) {
      at = next;
      normals = after;
      damping = Math.max(damping / 10, 1e-15);
      if (Math.max(Math.abs(move[0]), Math.abs(move[1]), Math.abs(move[2])) < 1e-12) break;
    } else {
      damping *= 10;
      if (damping > 1e12) break;
    }
  }
  return isAtEdge(at) ? undefined : { at, normals };
};

const isAtEdge = ({ topSpeedMps, tauS }: Parameters): boolean =>
  tauS < TAU_RANGE_S[0] * 1.01 ||
  tauS > TAU_RANGE_S[1] * 0.99 ||
  topSpeedMps < TOP_SPEED_RANGE_MPS[0] * 1.01 ||
  topSpeedMps > TOP_SPEED_RANGE_MPS[1] * 0.99;

const fitOf = ({ at, normals }: Fitted, count: number): SprintFit | NoSprintFit => {
  const columns = [0, 1, 2].map(k => solve3({ ...normals, g: [+(k === 0), +(k === 1), +(k === 2)] }, 0));
  const [v, tau, offset] = columns;
  if (!v || !tau || !offset) return noneBecause('timesFitNoSprint');
  const variance = count > 3 ? normals.rss / (count - 3) : null;
  const roots = [Math.sqrt(v[0]), Math.sqrt(tau[1]), Math.sqrt(offset[2])] as const;
  const sd = variance === null ? null : Math.sqrt(variance);
  return {
    ...at,
    residualSumSquaresS2: normals.rss,
    residualSdS: sd,
    standardErrors: sd === null ? null : [sd * roots[0], sd * roots[1], sd * roots[2]],
    correlation: [v[1] / (roots[0] * roots[1]), v[2] / (roots[0] * roots[2]), tau[2] / (roots[1] * roots[2])],
  };
};
