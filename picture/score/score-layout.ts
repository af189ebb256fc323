import type { DrillPlan, Run, SpotId, Track } from '@icewright/engine';
import { byRank } from '../drill/by-rank.ts';
import { trackOf } from '../drill/run-reading.ts';

/** One stave: its zero line, and how high a speed stands on it. Coaches and goalies have a line alone. */
export interface Stave {
  readonly spot: SpotId;
  readonly track: Track | undefined;
  readonly zeroY: number;
  readonly isLineAlone: boolean;
  /** From the zero line of the stave above. */
  readonly pitchPx: number;
}

export interface ScoreLayout {
  readonly staves: readonly Stave[];
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly ruleY: number;
  readonly height: number;
  xOf(timeS: number): number;
}

/** Five lines, 0 to 8 m/s, 7.5 px apart. */
export const STAVE_LINES = 5;
export const STAVE_LINE_PX = 7.5;
export const STAVE_TOP_MPS = 8;
const LEFT_PX = 70;
const RIGHT_PX = 50;
const TOP_PX = 28;
const STAVE_PITCH_PX = 43;
const LINE_PITCH_PX = 28;
/** For fingers every stave is as high as one. */
const FINGER_PITCH_PX = 46;
const RULE_BELOW_PX = 14;
const FOOT_PX = 26;

export interface ScoreSize {
  /** Px. */
  readonly width: number;
  /** Seconds from the left to the right end; those of the rep when left out. */
  readonly spanS?: number;
  readonly forFingers?: boolean;
}

export const scoreLayout = (plan: DrillPlan, run: Run, size: ScoreSize): ScoreLayout => {
  const { width, spanS = run.durationS } = size;
  let y = TOP_PX;
  const staves = byRank(plan.spots).map(([spot, { kind }]): Stave => {
    const isLineAlone = kind !== 'skater';
    const pitchPx = size.forFingers ? FINGER_PITCH_PX : isLineAlone ? LINE_PITCH_PX : STAVE_PITCH_PX;
    y += pitchPx;
    return { spot, pitchPx, track: trackOf(run, spot), zeroY: y, isLineAlone };
  });
  const ruleY = y + RULE_BELOW_PX;
  const right = width - RIGHT_PX;
  return {
    staves,
    left: LEFT_PX,
    right,
    top: TOP_PX,
    ruleY,
    height: ruleY + FOOT_PX,
    xOf: timeS => LEFT_PX + (timeS / Math.max(spanS, 1e-9)) * (right - LEFT_PX),
  };
};

/** Height of the speed on a stave; a line alone has none. */
export const staveY = (stave: Stave, speedMps: number): number =>
  stave.isLineAlone
    ? stave.zeroY
    : stave.zeroY -
      (Math.min(speedMps, 1.2 * STAVE_TOP_MPS) / STAVE_TOP_MPS) * STAVE_LINE_PX * (STAVE_LINES - 1);

/** Not Math.hypot: it is many times slower, and a score asks for every sample. */
export const speedAt = (track: Track, sample: number): number => {
  const xMps = track.xMps[sample] ?? 0;
  const yMps = track.yMps[sample] ?? 0;
  return Math.sqrt(xMps * xMps + yMps * yMps);
};
