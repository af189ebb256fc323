import { factorInto, inverseOfFactored } from '../film/matrix.ts';
import type { IceCovariance, IcePoint, IceVelocity } from '../units/points.ts';
import { type SkatePower, type SkateStep, skateStepOf, spreadUnseen } from './skate-step.ts';

/** A place at which a skater was seen, with its ±. */
export interface SeenPlace {
  readonly timeS: number;
  readonly atM: IcePoint;
  readonly covM2: IceCovariance;
}

/** A skater at one time of his smoothed way. */
export interface WayPoint {
  readonly timeS: number;
  readonly atM: IcePoint;
  readonly velocityMps: IceVelocity;
  /** 4 × 4 of x, y (m) and their velocities (m/s), row by row. */
  readonly covariance: Float64Array;
}

const SIZE = 6;

/**
 * The likeliest way of a skater who was seen at some places, at the times asked for: forward filter and backward smoother over the
 * wandering skater of `skateStepOf`. Both lists are in growing order of time; empty when nothing was seen. Between places the ± grows.
 * Source: Kalman 1960; Rauch, Tung & Striebel 1965, AIAA Journal 3(8) (from memory).
 */
export const smoothWay = (
  seen: readonly SeenPlace[],
  timesS: readonly number[],
  power: SkatePower,
): WayPoint[] => {
  if (seen.length === 0) return [];
  const stepAt = keptSteps(power);
  const nodes = nodesOf(seen, timesS);
  const filtered: { state: Float64Array; spread: Float64Array }[] = [];
  const foretold: { state: Float64Array; spread: Float64Array }[] = [];
  let state: Float64Array = new Float64Array(SIZE);
  let spread: Float64Array = unseenSpread(power);
  for (const [i, node] of nodes.entries()) {
    if (i > 0) {
      const step = stepAt(node.timeS - nodes[i - 1]!.timeS);
      state = gone(step, state);
      spread = goneSpread(step, spread);
    }
    foretold.push({ state, spread });
    for (const place of node.seen) [state, spread] = corrected(state, spread, place);
    filtered.push({ state, spread });
  }
  const smooth = [filtered[filtered.length - 1]!];
  for (let i = nodes.length - 2; i >= 0; i--) {
    const step = stepAt(nodes[i + 1]!.timeS - nodes[i]!.timeS);
    smooth.push(lookedBack(filtered[i]!, foretold[i + 1]!, smooth[smooth.length - 1]!, step));
  }
  smooth.reverse();
  const atTime = new Map(nodes.map((node, i) => [node.timeS, smooth[i]!]));
  return timesS.map(timeS => pointOf(timeS, atTime.get(timeS)!));
};

const keptSteps = (power: SkatePower): ((stepS: number) => SkateStep) => {
  const kept = new Map<number, SkateStep>();
  return stepS => {
    const key = Math.round(stepS * 1e7);
    const step = kept.get(key) ?? skateStepOf(power, stepS);
    kept.set(key, step);
    return step;
  };
};

const nodesOf = (
  seen: readonly SeenPlace[],
  timesS: readonly number[],
): { timeS: number; seen: SeenPlace[] }[] => {
  const byTime = new Map<number, SeenPlace[]>();
  for (const timeS of timesS) byTime.set(timeS, []);
  for (const place of seen) byTime.set(place.timeS, [...(byTime.get(place.timeS) ?? []), place]);
  return [...byTime].map(([timeS, places]) => ({ timeS, seen: places })).sort((a, b) => a.timeS - b.timeS);
};

/** State: x, vx, wx, y, vy, wy. Anywhere within a hundred metres, as fast as skaters are. */
const unseenSpread = (power: SkatePower): Float64Array => {
  const { velocity, wanted, both } = spreadUnseen(power);
  const spread = new Float64Array(SIZE * SIZE);
  for (const at of [0, 3]) {
    spread[at * SIZE + at] = UNSEEN_M2;
    spread[(at + 1) * SIZE + at + 1] = velocity;
    spread[(at + 2) * SIZE + at + 2] = wanted;
    spread[(at + 1) * SIZE + at + 2] = both;
    spread[(at + 2) * SIZE + at + 1] = both;
  }
  return spread;
};
const UNSEEN_M2 = 1e4;

const gone = ({ goes }: SkateStep, state: Float64Array): Float64Array =>
  Float64Array.from({ length: SIZE }, (_, i) => {
    const base = i < 3 ? 0 : 3;
    const row = 3 * (i - base);
    return goes[row]! * state[base]! + goes[row + 1]! * state[base + 1]! + goes[row + 2]! * state[base + 2]!;
  });

const goneSpread = (step: SkateStep, spread: Float64Array): Float64Array => {
  const wide = wideStep(step);
  const next = product(product(wide, spread), turned(wide));
  for (const base of [0, 3]) {
    for (let row = 0; row < 3; row++) {
      for (let column = 0; column < 3; column++) {
        const at = SIZE * (base + row) + base + column;
        next[at] = next[at]! + step.strays[3 * row + column]!;
      }
    }
  }
  return next;
};

const wideStep = ({ goes }: SkateStep): Float64Array => {
  const wide = new Float64Array(SIZE * SIZE);
  for (let row = 0; row < 3; row++) {
    for (let column = 0; column < 3; column++) {
      wide[SIZE * row + column] = goes[3 * row + column]!;
      wide[SIZE * (row + 3) + column + 3] = goes[3 * row + column]!;
    }
  }
  return wide;
};

const corrected = (
  state: Float64Array,
  spread: Float64Array,
  { atM, covM2 }: SeenPlace,
): [Float64Array, Float64Array] => {
  const xx = spread[0]! + covM2.xxM2;
  const xy = spread[3]! + covM2.xyM2;
  const yy = spread[SIZE * 3 + 3]! + covM2.yyM2;
  const determinant = xx * yy - xy * xy;
  const [missX, missY] = [atM.xM - state[0]!, atM.yM - state[3]!];
  const next = new Float64Array(SIZE);
  const left = new Float64Array(SIZE * SIZE);
  for (let i = 0; i < SIZE; i++) {
    const [ax, ay] = [spread[SIZE * i]!, spread[SIZE * i + 3]!];
    const gainX = (ax * yy - ay * xy) / determinant;
    const gainY = (ay * xx - ax * xy) / determinant;
    next[i] = state[i]! + gainX * missX + gainY * missY;
    for (let j = 0; j < SIZE; j++) {
      left[SIZE * i + j] = spread[SIZE * i + j]! - gainX * spread[j]! - gainY * spread[SIZE * 3 + j]!;
    }
  }
  return [next, evened(left)];
};

const lookedBack = (
  here: { state: Float64Array; spread: Float64Array },
  foretold: { state: Float64Array; spread: Float64Array },
  after: { state: Float64Array; spread: Float64Array },
  step: SkateStep,
): { state: Float64Array; spread: Float64Array } => {
  const factor = new Float64Array(SIZE * SIZE);
  if (!factorInto(foretold.spread, factor, SIZE)) return here;
  const gain = product(product(here.spread, turned(wideStep(step))), inverseOfFactored(factor, SIZE));
  const state = Float64Array.from({ length: SIZE }, (_, i) => {
    let sum = here.state[i]!;
    for (let j = 0; j < SIZE; j++) sum += gain[SIZE * i + j]! * (after.state[j]! - foretold.state[j]!);
    return sum;
  });
  const apart = after.spread.map((value, i) => value - foretold.spread[i]!);
  const back = product(product(gain, apart), turned(gain));
  return { state, spread: evened(here.spread.map((value, i) => value + back[i]!)) };
};

const pointOf = (
  timeS: number,
  { state, spread }: { state: Float64Array; spread: Float64Array },
): WayPoint => {
  const order = [0, 3, 1, 4];
  const covariance = Float64Array.from(
    { length: 16 },
    (_, i) => spread[SIZE * order[i >> 2]! + order[i & 3]!]!,
  );
  return {
    timeS,
    atM: { xM: state[0]!, yM: state[3]! },
    velocityMps: { xMps: state[1]!, yMps: state[4]! },
    covariance,
  };
};

const product = (a: Float64Array, b: Float64Array): Float64Array => {
  const result = new Float64Array(SIZE * SIZE);
  for (let row = 0; row < SIZE; row++) {
    for (let k = 0; k < SIZE; k++) {
      const entry = a[SIZE * row + k]!;
      if (entry === 0) continue;
      for (let column = 0; column < SIZE; column++) {
        const at = SIZE * row + column;
        result[at] = result[at]! + entry * b[SIZE * k + column]!;
      }
    }
  }
  return result;
};

const turned = (a: Float64Array): Float64Array => {
  const result = new Float64Array(SIZE * SIZE);
  for (let row = 0; row < SIZE; row++) {
    for (let column = 0; column < SIZE; column++) result[SIZE * row + column] = a[SIZE * column + row]!;
  }
  return result;
};

/** Rounding must not make a covariance crooked. */
const evened = (a: Float64Array): Float64Array => {
  for (let row = 0; row < SIZE; row++) {
    for (let column = 0; column < row; column++) {
      const mean = (a[SIZE * row + column]! + a[SIZE * column + row]!) / 2;
      a[SIZE * row + column] = mean;
      a[SIZE * column + row] = mean;
    }
  }
  return a;
};
