import type { ActId, IcePoint, Run, RunEvent, SpotId, Track } from '@icewright/engine';
import type { RouteBefore } from './route.ts';

export const trackOf = (run: Run | undefined, spot: SpotId): Track | undefined =>
  run?.tracks.find(track => track.spot === spot);

export const placeOnTrack = (
  run: Run,
  track: { xM: Float64Array; yM: Float64Array },
  timeS: number,
): IcePoint => {
  const index = sampleAt(run, timeS);
  return { xM: track.xM[index] ?? 0, yM: track.yM[index] ?? 0 };
};

/** Where a skater is at that time; the puck when nobody is named. */
export const placeOf = (run: Run, spot: SpotId | undefined, timeS: number): IcePoint | undefined => {
  const track = spot === undefined ? run.pucks[0] : trackOf(run, spot);
  return track && placeOnTrack(run, track, timeS);
};

/** Slower than one step a second she leaves in any direction, and no line has to go on along her way. */
const MOVES_FROM_MPS = 0.5;

/** Direction and speed at that time, for a line that goes on from there. */
export const movingAt = (run: Run, track: Track, timeS: number): RouteBefore => {
  const index = sampleAt(run, timeS);
  const xMps = track.xMps[index] ?? 0;
  const yMps = track.yMps[index] ?? 0;
  const speedMps = Math.hypot(xMps, yMps);
  return speedMps > MOVES_FROM_MPS ? { speedMps, headingRad: Math.atan2(yMps, xMps) } : { speedMps: 0 };
};

export interface ActTimes {
  readonly startS: number;
  readonly endS: number;
}

/** When an act starts and ends in the run; it ends with the run when nothing else ends it, and may never start. */
export const actTimes = (run: Run | undefined, spot: SpotId, act: ActId): ActTimes | null => {
  if (!run) return null;
  const of = (kind: 'actStarts' | 'actEnds') =>
    run.events.find(event => event.kind === kind && event.spot === spot && event.act === act);
  const starts = of('actStarts');
  if (!starts) return null;
  return { startS: starts.timeS, endS: of('actEnds')?.timeS ?? run.durationS };
};

const PATH_EVERY_S = 0.1;

/** The way she went during an act, a point every tenth of a second. */
export const playedPath = (run: Run, track: Track, times: ActTimes): readonly IcePoint[] => {
  const points: IcePoint[] = [];
  for (let timeS = times.startS; timeS < times.endS; timeS += PATH_EVERY_S) {
    points.push(placeOnTrack(run, track, timeS));
  }
  points.push(placeOnTrack(run, track, times.endS));
  return points;
};

/** Where the skater is after each whole second of the act. */
export const playedTicks = (run: Run, spot: SpotId, times: ActTimes): readonly IcePoint[] => {
  const track = trackOf(run, spot);
  if (!track) return [];
  const ticks: IcePoint[] = [];
  for (let timeS = times.startS + 1; timeS < times.endS - 0.05; timeS += 1) {
    ticks.push(placeOnTrack(run, track, timeS));
  }
  return ticks;
};

/** Whether she has a puck half way through these times. */
export const hadPuckAt = (run: Run, spot: SpotId, times: ActTimes): boolean => {
  const index = sampleAt(run, (times.startS + times.endS) / 2);
  const own = run.tracks.findIndex(track => track.spot === spot);
  return run.pucks.some(puck => puck.owner[index] === own);
};

/** She has hardly left: a puck that comes before that is with her from the start of the line, as it is drawn. */
const LEFT_M = 1;

/** Where a puck first comes to her on her way in these times; null when she starts with it, or none comes. */
export const puckComesToM = (run: Run, spot: SpotId, times: ActTimes): IcePoint | null => {
  const own = run.tracks.findIndex(track => track.spot === spot);
  const track = run.tracks[own];
  const start = sampleAt(run, times.startS);
  let sample = start;
  const end = sampleAt(run, times.endS);
  while (sample <= end && !run.pucks.some(puck => puck.owner[sample] === own)) sample++;
  if (!track || sample > end) return null;
  const placeAt = (at: number): IcePoint => ({ xM: track.xM[at] ?? 0, yM: track.yM[at] ?? 0 });
  const from = placeAt(start);
  const comes = placeAt(sample);
  return Math.hypot(comes.xM - from.xM, comes.yM - from.yM) < LEFT_M ? null : comes;
};

/** One pass as it was played: the event, the puck that was passed, when it was taken, and its way over the boards. */
export interface PlayedPass {
  readonly event: Extract<RunEvent, { kind: 'pass' }>;
  readonly takenS: number;
  readonly wayM: readonly IcePoint[];
  /** Somebody whom it was not for took it on its way. */
  readonly isCut: boolean;
}

/** Null when it was not played, or nobody took it and it never touched the boards. */
export const playedPass = (run: Run, spot: SpotId, act: ActId): PlayedPass | null => {
  const index = run.events.findIndex(
    event => event.kind === 'pass' && event.spot === spot && event.act === act,
  );
  const event = run.events[index];
  if (event?.kind !== 'pass') return null;
  const wayM: IcePoint[] = [event.atM];
  const puck = run.pucks[event.puck];
  for (const later of run.events.slice(index + 1)) {
    if (later.kind === 'bounce' && puck && isAt(placeOnTrack(run, puck, later.timeS), later.atM)) {
      wayM.push(later.atM);
    }
    if (endsPass(later, event)) {
      const isCut = later.kind === 'intercept';
      return { event, takenS: later.timeS, wayM: [...wayM, later.atM], isCut };
    }
  }
  return wayM.length > 1 ? { event, takenS: run.durationS, wayM, isCut: false } : null;
};

/** A bounce does not say whose puck it is: its place does. Between two samples a hard pass goes this far. */
const SAME_PLACE_M = 0.5;

const isAt = (one: IcePoint, other: IcePoint): boolean =>
  Math.hypot(one.xM - other.xM, one.yM - other.yM) < SAME_PLACE_M;

/** Where the puck that she passed went until it was taken: a rim follows the boards and not straight legs. */
export const puckWay = (run: Run, pass: PlayedPass): readonly IcePoint[] => {
  const puck = run.pucks[pass.event.puck];
  const from = sampleAt(run, pass.event.timeS);
  const to = sampleAt(run, pass.takenS);
  if (!puck) return pass.wayM;
  const step = Math.max(1, Math.round(PATH_EVERY_S * run.stepHz));
  const points: IcePoint[] = [];
  for (let sample = from; sample < to; sample += step) {
    points.push({ xM: puck.xM[sample] ?? 0, yM: puck.yM[sample] ?? 0 });
  }
  points.push({ xM: puck.xM[to] ?? 0, yM: puck.yM[to] ?? 0 });
  return points;
};

/** Taken, cut off, or off the blade of whom it was for. */
export const endsPass = (later: RunEvent, pass: Extract<RunEvent, { kind: 'pass' }>): boolean => {
  if (later.kind === 'receive' || later.kind === 'intercept') return later.from === pass.spot;
  return later.kind === 'loose' && later.spot === pass.to;
};

const sampleAt = (run: Run, timeS: number): number =>
  Math.max(0, Math.min(run.sampleCount - 1, Math.round(timeS * run.stepHz)));
