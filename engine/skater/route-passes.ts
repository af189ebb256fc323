import type { RouteCurve } from './route-curve.ts';
import { type SprintPower, sprintSpeedAt, sprintTimeTo } from './sprint.ts';

/** Above any skater's v² (m²/s²): braking from there needs no following. */
const FASTEST_SQ = 1e4;

/**
 * Fills `speedSq` with the highest v² (m²/s²) at each sample from which everything ahead can still be braked for, with
 * (a_t/stop)² + (v²κ/a_lat)² ≤ 1. Infinity where nothing limits it.
 */
export const brakePass = (
  speedSq: Float64Array,
  curve: RouteCurve,
  stopDecelMps2: number,
  lateralAccelMps2: number,
  stops: boolean,
): void => {
  const turn = curve.curvaturePerM;
  const last = speedSq.length - 1;
  const gain = 2 * curve.stepM * stopDecelMps2;
  let bend = Math.abs(turn[last]!) / lateralAccelMps2;
  let grip = 1;
  let sq = stops ? 0 : bend > 0 ? 1 / bend : Number.POSITIVE_INFINITY;
  speedSq[last] = sq;
  for (let i = last - 1; i >= 0; i--) {
    const nextBend = Math.abs(turn[i]!) / lateralAccelMps2;
    const middle = (bend + nextBend) / 2;
    bend = nextBend;
    if (sq < FASTEST_SQ) {
      // Midpoint rule: the share of grip left for braking halfway through the step, foretold by the step before.
      const half = (sq + 0.5 * gain * grip) * middle;
      grip = half < 1 ? Math.sqrt(1 - half * half) : 0;
      sq += gain * grip;
    }
    if (sq * nextBend > 1) sq = 1 / nextBend;
    speedSq[i] = sq;
  }
};

/**
 * Turns the allowed v² in `speed` (sample 0: the start's own) into driven speeds, m/s, and fills `timeS` from its sample
 * 0 on. No push on the first `glideM`. False when the skater comes to rest on the way.
 */
export const pushPass = (
  speed: Float64Array,
  timeS: Float64Array,
  curve: RouteCurve,
  power: SprintPower,
  lateralAccelMps2: number,
  glideM: number,
): boolean => {
  const turn = curve.curvaturePerM;
  const last = speed.length - 1;
  const step = curve.stepM;
  const goal = power.topSpeedMps;
  const gain = (2 * step) / power.tauS;
  const glideSteps = Math.ceil(glideM / step);
  let sq = speed[0]!;
  let now = Math.sqrt(sq);
  let grip = 1;
  let time = timeS[0]!;
  let bend = Math.abs(turn[0]!) / lateralAccelMps2;
  speed[0] = now;
  for (let i = 1; i <= last; i++) {
    const nextBend = Math.abs(turn[i]!) / lateralAccelMps2;
    const middle = (bend + nextBend) / 2;
    bend = nextBend;
    const lack = goal - now;
    let nextSq = sq;
    if (i > glideSteps || lack < 0) {
      // Easing down from above the goal needs no grip. Midpoint rule, foretold by the step before; what counts for the
      // push is the mean speed over the step's length, not over its time.
      let aheadSq = sq + gain * lack * (lack < 0 ? 1 : grip);
      if (aheadSq < 0) aheadSq = 0;
      const ahead = Math.sqrt(aheadSq);
      const mean = now + ahead > 0 ? ((sq + now * ahead + aheadSq) * 2) / (3 * (now + ahead)) : 0;
      const half = 0.5 * (sq + aheadSq) * middle;
      grip = half < 1 ? Math.sqrt(1 - half * half) : 0;
      nextSq = sq + gain * (goal - mean) * (lack < 0 ? 1 : grip);
      if (nextSq < 0) nextSq = 0;
    }
    const allowed = speed[i]!;
    let exactS = Number.NaN;
    if (i === 1 && lack > 0 && glideSteps === 0) {
      // From rest the push changes much within the first step: it is straight enough for the sprint law itself.
      const goneS = sprintTimeTo(power, step, now);
      if (typeof goneS === 'number') {
        nextSq = sprintSpeedAt(power, goneS, now) ** 2;
        if (nextSq <= allowed) exactS = goneS;
      }
    }
    sq = Math.min(nextSq, allowed);
    const next = Math.sqrt(sq);
    if (!(now + next > 0)) return false;
    time += exactS > 0 ? exactS : (2 * step) / (now + next);
    now = next;
    speed[i] = next;
    timeS[i] = time;
  }
  return true;
};
