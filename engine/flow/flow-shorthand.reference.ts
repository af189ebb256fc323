import type { DrillPlan, Flow } from '../drill/drill.ts';
import { planOf } from '../run/drill-shorthand.reference.ts';
import type { Run, RunEvent, Track } from '../run/run-result.ts';
import type { ActId, SpotId } from '../units/ids.ts';

const HZ = 120;

/** A spot for tests of the flow: in motion from `fromS` to `toS` at 6 m/s, done then, and back at the own place. */
export interface Busy {
  readonly fromS: number;
  readonly toS: number;
  readonly waiting?: number;
  /** How far from its place it ends, metres. */
  readonly endsOffM?: number;
}

/** A plan with these skaters, F0, F1 …, each in its own corner of the ice. */
export const planWith = (busy: readonly Busy[], flow: Partial<Flow> = {}): DrillPlan => {
  const plan = planOf(busy.map((_, i) => ({ role: `F${i}`, atM: placeOf(i) })));
  const spots = Object.fromEntries(
    Object.entries(plan.spots).map(([id, spot], i) => [
      id,
      { ...spot, waitingCount: busy[i]!.waiting ?? 0, acts: { shoot: SHOOT } },
    ]),
  );
  return { ...plan, spots, flow: { next: { on: 'end' }, ends: 'one', pauseS: 0, goesTo: {}, ...flow } };
};

/** A rep as a run would be, made up: only what the flow reads of it. */
export const runWith = (busy: readonly Busy[], durationS: number, events: readonly RunEvent[] = []): Run => {
  const sampleCount = Math.round(durationS * HZ) + 1;
  return {
    stepHz: HZ,
    sampleCount,
    durationS,
    tracks: busy.map((one, i) => trackOf(one, i, sampleCount)),
    pucks: [],
    events,
    findings: [],
  };
};

export const shotAt = (timeS: number, role = 'F0'): RunEvent => ({
  kind: 'shot',
  timeS,
  atM: { xM: 0, yM: 0 },
  spot: role as SpotId,
  act: 'shoot' as ActId,
  speedMps: 20,
  puck: 0,
});

const SHOOT = { rank: 0, kind: 'shoot', atEnd: 'plusX', speedMps: 20 } as const;

const placeOf = (i: number) => ({ xM: -20 + 8 * (i % 6), yM: i < 6 ? 8 : -8 });

const trackOf = ({ fromS, toS, endsOffM = 0 }: Busy, i: number, sampleCount: number): Track => {
  const { xM, yM } = placeOf(i);
  const moves = (sample: number): boolean =>
    sample >= Math.round(fromS * HZ) && sample <= Math.round(toS * HZ) && toS > fromS;
  const speeds = Float64Array.from({ length: sampleCount }, (_, sample) => (moves(sample) ? 6 : 0));
  return {
    spot: `F${i}` as SpotId,
    xM: new Float64Array(sampleCount).fill(xM + endsOffM),
    yM: new Float64Array(sampleCount).fill(yM),
    xMps: speeds,
    yMps: new Float64Array(sampleCount),
    facingRad: new Float64Array(sampleCount),
    actIndex: Int16Array.from(speeds, speed => (speed > 0 ? 0 : -1)),
    acts: [],
    distanceM: 6 * (toS - fromS),
  };
};
