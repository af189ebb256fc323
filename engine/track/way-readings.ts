import type { End } from '../units/ends.ts';
import type { Estimate, IcePoint } from '../units/points.ts';
import type { Look } from './followed-way.ts';

/** Something told at one time of a film. */
export interface TimedEstimate extends Estimate {
  readonly timeS: number;
}

/** A skater at a time between two looks. */
export interface Passing {
  readonly atM: IcePoint;
  readonly sdM: number;
  readonly vxMps: number;
  readonly vyMps: number;
  readonly sdMps: number;
}

/** Two looks further apart than this have a hole between them, in which nothing is told. */
const HOLE_S = 0.5;

/**
 * Where a skater is at a film time, metres, between two looks along a cubic through both places and velocities; the larger ± of both. Undefined
 * before, after, and in a hole of more than half a second. Source: Hermite's cubic.
 */
export const passingAt = (way: readonly Look[], timeS: number): Passing | undefined => {
  const i = way.findIndex(look => look.timeS >= timeS - 1e-9);
  const after = way[i];
  if (!after) return undefined;
  if (Math.abs(after.timeS - timeS) < 1e-6) return passing(after, after, 0);
  const before = way[i - 1];
  if (!before || after.timeS - before.timeS > HOLE_S) return undefined;
  return passing(before, after, (timeS - before.timeS) / (after.timeS - before.timeS));
};

const passing = (a: Look, b: Look, part: number): Passing => {
  const stepS = b.timeS - a.timeS;
  const cubic = (p: number, v: number, q: number, w: number) => {
    const [s, s2, s3] = [part, part * part, part * part * part];
    return (
      (2 * s3 - 3 * s2 + 1) * p +
      (s3 - 2 * s2 + s) * stepS * v +
      (3 * s2 - 2 * s3) * q +
      (s3 - s2) * stepS * w
    );
  };
  const mixed = (p: number, q: number) => p + part * (q - p);
  return {
    atM: { xM: cubic(a.xM, a.vxMps, b.xM, b.vxMps), yM: cubic(a.yM, a.vyMps, b.yM, b.vyMps) },
    sdM: Math.max(a.sdM, b.sdM),
    vxMps: mixed(a.vxMps, b.vxMps),
    vyMps: mixed(a.vyMps, b.vyMps),
    sdMps: Math.max(a.sdMps, b.sdMps),
  };
};

/** A skater's speed at each look, m/s with its sd. Empty without looks. Source: length of the smoothed velocity. */
export const speedOverTime = (way: readonly Look[]): TimedEstimate[] =>
  way.map(({ timeS, vxMps, vyMps, sdMps }) => ({ timeS, value: Math.hypot(vxMps, vyMps), sd: sdMps }));

/**
 * The gap between two skaters at each look of the first at which both are known, metres with its sd. Both ± are taken as independent; what they share by the
 * tie of the frame makes the true one smaller. Empty when they were never known together. Source: distance, first-order propagation.
 */
export const gapOverTime = (a: readonly Look[], b: readonly Look[]): TimedEstimate[] =>
  a.flatMap(({ timeS, xM, yM, sdM }) => {
    const other = passingAt(b, timeS);
    if (!other) return [];
    return [
      { timeS, value: Math.hypot(xM - other.atM.xM, yM - other.atM.yM), sd: Math.hypot(sdM, other.sdM) },
    ];
  });

/** A line across the sheet crossed by a skater: when, with its sd, and towards which end. */
export interface LineCrossing {
  readonly timeS: Estimate;
  readonly towards: End;
  readonly atM: IcePoint;
}

/**
 * Every crossing of the line x = `xM` (metres, any) by a skater's feet, in order; seconds of the film. The ± of the time is that of the place over the speed across the
 * line, so a slow crossing is a vague one. Empty when he stays on one side. Source: first-order propagation.
 */
export const crossingsOf = (way: readonly Look[], xM: number): LineCrossing[] => {
  const found: LineCrossing[] = [];
  for (let i = 1; i < way.length; i++) {
    const [a, b] = [way[i - 1]!, way[i]!];
    if (b.timeS - a.timeS > HOLE_S || a.xM < xM === b.xM < xM || a.xM === b.xM) continue;
    const part = (xM - a.xM) / (b.xM - a.xM);
    const at = passing(a, b, part);
    const acrossMps = Math.max(Math.abs(b.xM - a.xM) / (b.timeS - a.timeS), 1e-3);
    found.push({
      timeS: { value: a.timeS + part * (b.timeS - a.timeS), sd: at.sdM / acrossMps },
      towards: b.xM > a.xM ? 'plusX' : 'minusX',
      atM: { xM, yM: at.atM.yM },
    });
  }
  return found;
};

/** Who came over a line first, and by how much. */
export type FirstOver =
  | {
      readonly kind: 'crossed';
      /** Those who crossed, first to last. */
      readonly order: readonly { readonly id: string; readonly timeS: Estimate }[];
      /** Of the second behind the first; absent when only one crossed. */
      readonly leadS?: Estimate;
      /** How far the second still was from the line when the first crossed, metres. */
      readonly leadM?: Estimate;
      /** The lead is larger than its ± (95 %). */
      readonly isSure: boolean;
    }
  | { readonly kind: 'none'; readonly reason: 'nobodyCrossed' };

/**
 * Who crossed the line x = `xM` (metres, any) first towards an end, from `fromS` (seconds of the film, any) on: each skater's first crossing counts. With the line at one's own blue line and the own
 * end it says who is first back. `none` when nobody crossed. Source: difference of two independent estimates, 1.96 sds.
 */
export const firstOver = (
  ways: ReadonlyMap<string, readonly Look[]>,
  xM: number,
  towards: End,
  fromS: number = Number.NEGATIVE_INFINITY,
): FirstOver => {
  const order = [...ways]
    .flatMap(([id, way]) => {
      const first = crossingsOf(way, xM).find(one => one.towards === towards && one.timeS.value >= fromS);
      return first ? [{ id, timeS: first.timeS }] : [];
    })
    .sort((a, b) => a.timeS.value - b.timeS.value);
  const [first, second] = order;
  if (!first) return { kind: 'none', reason: 'nobodyCrossed' };
  if (!second) return { kind: 'crossed', order, isSure: true };
  const leadS = {
    value: second.timeS.value - first.timeS.value,
    sd: Math.hypot(first.timeS.sd, second.timeS.sd),
  };
  const there = passingAt(ways.get(second.id)!, first.timeS.value);
  const sign = towards === 'plusX' ? 1 : -1;
  const leadM = there && { value: sign * (xM - there.atM.xM), sd: there.sdM };
  return {
    kind: 'crossed',
    order,
    leadS,
    ...(leadM ? { leadM } : {}),
    isSure: leadS.value > 1.96 * leadS.sd,
  };
};

/**
 * Seconds from one seen event to another, each known to within half of its frame (> 0, seconds): the sd is that of two even spreads. Any order. Source: variance h²/3
 * of an even spread of ± h.
 */
export const timeBetween = (
  from: { readonly timeS: number; readonly halfFrameS: number },
  to: { readonly timeS: number; readonly halfFrameS: number },
): Estimate => ({
  value: to.timeS - from.timeS,
  sd: Math.sqrt((from.halfFrameS ** 2 + to.halfFrameS ** 2) / 3),
});
