import type { ActId, IcePoint, Run, RunEvent, SpotId, Track } from '@icewright/engine';

export const trackOf = (run: Run | undefined, spot: SpotId): Track | undefined =>
  run?.tracks.find(track => track.spot === spot);

export const placeOnTrack = (run: Run, track: Track, timeS: number): IcePoint => {
  const index = Math.max(0, Math.min(run.sampleCount - 1, Math.round(timeS * run.stepHz)));
  return { xM: track.xM[index] ?? 0, yM: track.yM[index] ?? 0 };
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

/** The puck's way of one pass: from the stick over the boards to the stick that stops it. Null when it was not played. */
export const passWay = (run: Run, spot: SpotId, act: ActId): readonly IcePoint[] | null => {
  const index = run.events.findIndex(
    event => event.kind === 'pass' && event.spot === spot && event.act === act,
  );
  const pass = run.events[index];
  if (!pass) return null;
  const way: IcePoint[] = [pass.atM];
  for (const event of run.events.slice(index + 1)) {
    if (event.kind === 'bounce') way.push(event.atM);
    if (endsPass(event)) {
      way.push(event.atM);
      return way;
    }
  }
  return way.length > 1 ? way : null;
};

const endsPass = (event: RunEvent): boolean => event.kind === 'receive' || event.kind === 'intercept';
