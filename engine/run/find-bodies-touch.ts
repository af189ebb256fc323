import { BODIES_TOUCH_M, BODIES_TOUCH_S } from '../drill/drill-rows.ts';
import { STEP_HZ } from '../drill/step-hz.ts';
import type { Actor } from './actor.ts';
import { ROUNDING_M } from './recorded.ts';
import type { Finding, Track } from './run-result.ts';

/**
 * Each time two bodies are nearer than `BODIES_TOUCH_M`, middle to middle, for longer than `BODIES_TOUCH_S` on end. Value:
 * nearest, metres; place: midway; time: when nearest. One who has caught another is no exception: it is to stay beside. A
 * pair that stands where it was drawn counts too. Pairs are looked at only when they could meet: `mostStepsM` says how far each comes from one sample
 * to the next at most.
 * Metres, frame of the rink; empty when nobody touches. Our own rule, with estimates of `drill-rows.ts`.
 */
export const findBodiesTouch = (
  tracks: readonly Track[],
  actors: readonly Actor[],
  mostStepsM: Float64Array,
): readonly Finding[] => {
  const findings: Finding[] = [];
  for (let a = 0; a < tracks.length; a++) {
    for (let b = a + 1; b < tracks.length; b++) {
      if (actors[a]!.spot.kind !== 'skater' && actors[b]!.spot.kind !== 'skater') continue;
      findOfPair(tracks[a]!, tracks[b]!, mostStepsM[a]! + mostStepsM[b]! + ROUNDING_M, findings);
    }
  }
  return findings;
};

/** `closesM`: so much nearer they come to each other in one sample, at most. */
const findOfPair = (a: Track, b: Track, closesM: number, findings: Finding[]): void => {
  const count = a.xM.length;
  let fromAt = -1;
  let nearestAt = -1;
  let nearestM = Number.POSITIVE_INFINITY;
  for (let i = 0; i <= count; i++) {
    const apartM = i < count ? apartAt(a, b, i) : Number.POSITIVE_INFINITY;
    if (apartM < BODIES_TOUCH_M.value) {
      if (fromAt < 0) fromAt = i;
      if (apartM < nearestM) {
        nearestM = apartM;
        nearestAt = i;
      }
      continue;
    }
    if (fromAt >= 0 && i - fromAt > BODIES_TOUCH_S.value * STEP_HZ) findings.push(touchAt(a, b, nearestAt));
    fromAt = -1;
    nearestM = Number.POSITIVE_INFINITY;
    if (i < count) i += Math.max(0, Math.floor((apartM - BODIES_TOUCH_M.value) / closesM) - 1);
  }
};

const touchAt = (a: Track, b: Track, i: number): Finding => ({
  kind: 'bodiesTouch',
  weight: 'look',
  timeS: i / STEP_HZ,
  atM: { xM: (a.xM[i]! + b.xM[i]!) / 2, yM: (a.yM[i]! + b.yM[i]!) / 2 },
  spots: [a.spot, b.spot],
  value: apartAt(a, b, i),
  threshold: BODIES_TOUCH_M.value,
  unit: 'm',
  status: BODIES_TOUCH_M.status,
  source: BODIES_TOUCH_M.source,
});

const apartAt = (a: Track, b: Track, i: number): number => {
  const x = a.xM[i]! - b.xM[i]!;
  const y = a.yM[i]! - b.yM[i]!;
  return Math.sqrt(x * x + y * y);
};
