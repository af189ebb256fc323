import { PATHS_NEAR_M, PATHS_NEAR_S } from '../drill/drill-rows.ts';
import { STEP_HZ } from '../drill/step-hz.ts';
import type { Level } from '../skater/level.ts';
import type { Actor } from './actor.ts';
import { ROUNDING_M } from './recorded.ts';
import type { Finding, Track } from './run-result.ts';
import {
  leastApart2,
  mostClosing2,
  rangeNumbers,
  rangesOf,
  type TrackRanges,
  widened,
} from './track-ranges.ts';

/** Samples between two looks at a pair, and between the times compared once a pair is near. */
const LOOK_EVERY = 12;
const COMPARE_EVERY = 3;
/** Looks without a flag after which the next one is another encounter. */
const APART_LOOKS = 8;
/** Samples between the times of the two that are compared at most, and that in looks. */
const WINDOW = Math.round(PATHS_NEAR_S.value * STEP_HZ);
const WINDOW_LOOKS = Math.ceil(WINDOW / LOOK_EVERY);
const NEAR_M2 = PATHS_NEAR_M.value * PATHS_NEAR_M.value;

/**
 * Encounters in which two paths come within 1.2 m of each other, at times no more than 0.3 s apart, with a closing speed over
 * the level's limit. Closing speed is the size of the difference of the two velocities. One finding an encounter, at its highest closing speed. Pairs are
 * looked at every 0.1 s and compared in detail only where the ranges of their places and velocities then leave it possible, so the
 * cost stays linear in the time and small in the pairs; `mostStepsM` says how far each comes from one sample to the next at most. Metres, m/s, frame of the rink; empty when there is none. Source: most injuries
 * are unintended contact (Darling et al. 2010); distances, times and limits are estimates of `drill-rows.ts` and of the level.
 */
export const findPathsCross = (
  tracks: readonly Track[],
  actors: readonly Actor[],
  level: Level,
  mostStepsM: Float64Array,
): readonly Finding[] => {
  const findings: Finding[] = [];
  const length = rangeNumbers(tracks[0]?.xM.length ?? 0, LOOK_EVERY);
  if (scratch.length < 3 * tracks.length * length) scratch = new Float64Array(3 * tracks.length * length);
  const part = (i: number) => scratch.subarray(i * length, (i + 1) * length);
  const now = tracks.map((track, i) => rangesOf(track, LOOK_EVERY, COMPARE_EVERY, part(3 * i)));
  const around = now.map((ranges, i) => widened(ranges, WINDOW_LOOKS, part(3 * i + 1), part(3 * i + 2)));
  for (let a = 0; a < tracks.length; a++) {
    for (let b = a + 1; b < tracks.length; b++) {
      const limitMps = Math.min(actors[a]!.model.pathsCrossLimitMps, actors[b]!.model.pathsCrossLimitMps);
      // From one look to the next they come nearer by no more than this, along both axes at most.
      const closesM = Math.SQRT2 * LOOK_EVERY * (mostStepsM[a]! + mostStepsM[b]!) + ROUNDING_M;
      const looks = looksOf(now[a]!, around[b]!, limitMps, closesM);
      if (looks.length === 0) continue;
      for (const meeting of meetingsOf(tracks[a]!, tracks[b]!, looks, limitMps)) {
        findings.push({
          kind: 'pathsCrossTooFast',
          weight: 'look',
          timeS: meeting.timeS,
          atM: meeting.atM,
          spots: [tracks[a]!.spot, tracks[b]!.spot],
          value: meeting.closingMps,
          threshold: limitMps,
          unit: 'm/s',
          status: level.rows.pathsCrossLimitMps.status,
          source: level.rows.pathsCrossLimitMps.source,
        });
      }
    }
  }
  return findings;
};

/** Room for the ranges, written over at every use: made anew for every run of a drag they would be most of its garbage. */
let scratch = new Float64Array(0);

interface Meeting {
  timeS: number;
  atM: { xM: number; yM: number };
  closingMps: number;
}

/** The looks at which the two can be near each other and too quick: samples, ascending. Looks before they could be near are left out. */
const looksOf = (
  now: TrackRanges,
  around: TrackRanges,
  limitMps: number,
  closesM: number,
): readonly number[] => {
  const limit2 = limitMps * limitMps;
  let looks: number[] | undefined;
  for (let look = 0; look < now.blockCount; look++) {
    const apart2 = leastApart2(now, around, look);
    if (apart2 > NEAR_M2) look += Math.floor((Math.sqrt(apart2) - PATHS_NEAR_M.value) / closesM);
    else if (mostClosing2(now, around, look) > limit2) (looks ??= []).push(look * LOOK_EVERY);
  }
  return looks ?? NONE;
};

const NONE: readonly never[] = [];

const meetingsOf = (a: Track, b: Track, looks: readonly number[], limitMps: number): readonly Meeting[] => {
  if (a.distanceM === 0 && b.distanceM === 0) return NONE;
  const meetings: Meeting[] = [];
  let current: Meeting | undefined;
  let lastAt = 0;
  for (const at of looks) {
    const found = worstNear(a, b, at, limitMps);
    if (!found) continue;
    if (!current || at - lastAt > APART_LOOKS * LOOK_EVERY) {
      current = found;
      meetings.push(current);
    } else if (found.closingMps > current.closingMps) Object.assign(current, found);
    lastAt = at;
  }
  return meetings;
};

const worstNear = (a: Track, b: Track, from: number, limitMps: number): Meeting | undefined => {
  const last = a.xM.length - 1;
  let worst: Meeting | undefined;
  for (let i = from; i < Math.min(from + LOOK_EVERY, last + 1); i += COMPARE_EVERY) {
    const x = a.xM[i]!;
    const y = a.yM[i]!;
    for (let k = Math.max(0, i - WINDOW); k <= Math.min(last, i + WINDOW); k += COMPARE_EVERY) {
      const dx = x - b.xM[k]!;
      const dy = y - b.yM[k]!;
      if (dx * dx + dy * dy > NEAR_M2) continue;
      const vx = a.xMps[i]! - b.xMps[k]!;
      const vy = a.yMps[i]! - b.yMps[k]!;
      const closingMps = Math.sqrt(vx * vx + vy * vy);
      if (closingMps <= (worst ? worst.closingMps : limitMps)) continue;
      worst = {
        timeS: Math.max(i, k) / STEP_HZ,
        atM: { xM: (x + b.xM[k]!) / 2, yM: (y + b.yM[k]!) / 2 },
        closingMps,
      };
    }
  }
  return worst;
};
