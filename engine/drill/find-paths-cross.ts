import type { Level } from '../skater/level.ts';
import type { Actor } from './actor.ts';
import { PATHS_NEAR_M, PATHS_NEAR_S } from './drill-rows.ts';
import type { Finding, Track } from './run-result.ts';
import { STEP_HZ } from './step-hz.ts';

/** Samples between two looks at a pair, and between the times compared once a pair is near. */
const LOOK_EVERY = 12;
const COMPARE_EVERY = 3;
/** Looks without a flag after which the next one is another encounter. */
const APART_LOOKS = 8;
const LOOK_S = LOOK_EVERY / STEP_HZ;
/** Two velocities change by less than this, together, between two looks and within the time window, m/s; and what it adds to the way. */
const SPEED_SLACK_MPS = 6;
const SLACK_M = 0.6;

/**
 * Encounters in which two paths come within 1.2 m of each other, at times no more than 0.3 s apart, with a closing speed over
 * the level's limit. Closing speed is the size of the difference of the two velocities. One finding an encounter, at its highest closing speed. Pairs are
 * looked at every 0.1 s and compared in detail only where their speeds could bring them together, so the cost stays
 * linear in the time and small in the pairs. Metres, m/s, frame of the rink; empty when there is none. Source: most injuries are unintended contact
 * (Darling et al. 2010); distances, times and limits are estimates of `drill-rows.ts` and of the level.
 */
export const findPathsCross = (
  tracks: readonly Track[],
  actors: readonly Actor[],
  level: Level,
): readonly Finding[] => {
  const findings: Finding[] = [];
  for (let a = 0; a < tracks.length; a++) {
    for (let b = a + 1; b < tracks.length; b++) {
      const limitMps = Math.min(actors[a]!.model.pathsCrossLimitMps, actors[b]!.model.pathsCrossLimitMps);
      for (const meeting of meetingsOf(tracks[a]!, tracks[b]!, limitMps)) {
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

interface Meeting {
  timeS: number;
  atM: { xM: number; yM: number };
  closingMps: number;
}

const meetingsOf = (a: Track, b: Track, limitMps: number): readonly Meeting[] => {
  if (a.distanceM === 0 && b.distanceM === 0) return NONE;
  let meetings: Meeting[] | undefined;
  let current: Meeting | undefined;
  let looksSince = 0;
  for (let i = 0; i < a.xM.length; i += LOOK_EVERY) {
    const dx = a.xM[i]! - b.xM[i]!;
    const dy = a.yM[i]! - b.yM[i]!;
    const apart2 = dx * dx + dy * dy;
    if (apart2 > FARTHEST_M2) {
      looksSince++;
      continue;
    }
    const canM =
      PATHS_NEAR_M.value + LOOK_S * speedAt(a, i) + (LOOK_S + PATHS_NEAR_S.value) * speedAt(b, i) + SLACK_M;
    const isPossible = apart2 <= canM * canM && closingAt(a, b, i) + SPEED_SLACK_MPS > limitMps;
    const found = isPossible ? worstNear(a, b, i, limitMps) : undefined;
    if (!found) {
      looksSince++;
      continue;
    }
    if (!current || looksSince >= APART_LOOKS) {
      current = found;
      (meetings ??= []).push(current);
    } else if (found.closingMps > current.closingMps) Object.assign(current, found);
    looksSince = 0;
  }
  return meetings ?? NONE;
};

const NONE: readonly Meeting[] = [];
/** Two skaters at 12 m/s cannot meet within the window from farther away. */
const FARTHEST_M2 = (1.2 + 0.4 * 30) ** 2;

const worstNear = (a: Track, b: Track, from: number, limitMps: number): Meeting | undefined => {
  const last = a.xM.length - 1;
  const window = Math.round(PATHS_NEAR_S.value * STEP_HZ);
  const near2 = PATHS_NEAR_M.value * PATHS_NEAR_M.value;
  let worst: Meeting | undefined;
  for (let i = from; i < Math.min(from + LOOK_EVERY, last + 1); i += COMPARE_EVERY) {
    const x = a.xM[i]!;
    const y = a.yM[i]!;
    for (let k = Math.max(0, i - window); k <= Math.min(last, i + window); k += COMPARE_EVERY) {
      const dx = x - b.xM[k]!;
      const dy = y - b.yM[k]!;
      if (dx * dx + dy * dy > near2) continue;
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

const closingAt = (a: Track, b: Track, i: number): number => {
  const x = a.xMps[i]! - b.xMps[i]!;
  const y = a.yMps[i]! - b.yMps[i]!;
  return Math.sqrt(x * x + y * y);
};

const speedAt = (track: Track, i: number): number => {
  const x = track.xMps[i]!;
  const y = track.yMps[i]!;
  return Math.sqrt(x * x + y * y);
};
