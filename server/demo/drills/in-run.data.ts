import type { IcePoint, LineId, Run, RunEvent } from '@icewright/engine';

type EventOf<Kind extends RunEvent['kind']> = RunEvent & { readonly kind: Kind };

export const eventsOf = <Kind extends RunEvent['kind']>(run: Run, kind: Kind): readonly EventOf<Kind>[] =>
  run.events.filter((event): event is EventOf<Kind> => event.kind === kind);

/** When the puck was first over the line; fails the test when it never was. */
export const puckOverS = (run: Run, line: LineId): number => {
  const over = eventsOf(run, 'puckCrosses').find(event => event.line === line);
  if (!over) throw new Error(`the puck is never over ${line}`);
  return over.timeS;
};

export const placeAt = (run: Run, role: string, timeS: number): IcePoint => {
  const track = run.tracks.find(each => each.spot === `spot-${role.toLowerCase()}`);
  if (!track) throw new Error(`nobody is ${role}`);
  const sample = Math.min(run.sampleCount - 1, Math.round(timeS * run.stepHz));
  return { xM: track.xM[sample]!, yM: track.yM[sample]! };
};

export const speedAt = (run: Run, role: string, timeS: number): number => {
  const [before, after] = [placeAt(run, role, timeS - 0.05), placeAt(run, role, timeS)];
  return apartM(before, after) / 0.05;
};

export const puckAt = (run: Run, timeS: number, puck = 0): IcePoint => {
  const sample = Math.min(run.sampleCount - 1, Math.round(timeS * run.stepHz));
  return { xM: run.pucks[puck]!.xM[sample]!, yM: run.pucks[puck]!.yM[sample]! };
};

export const apartM = (a: IcePoint, b: IcePoint): number => Math.hypot(a.xM - b.xM, a.yM - b.yM);

/** Won from X1's stick by that skater, or caught: the first time, seconds; Infinity when it never came. */
export const wonByS = (run: Run, role: string): number => {
  const spot = `spot-${role.toLowerCase()}`;
  const times = [
    ...eventsOf(run, 'steal').filter(event => event.spot === spot),
    ...eventsOf(run, 'loose').filter(event => event.by === spot),
  ].map(event => event.timeS);
  return Math.min(...times, Number.POSITIVE_INFINITY);
};
