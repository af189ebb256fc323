import type { LineId } from '../rink/lines.ts';
import type { PuckTrack, Run, RunEvent, Track } from '../run/run-result.ts';
import { xMInSample } from '../run/track-columns.ts';
import type { IcePoint } from '../units/points.ts';

/** When the puck first crosses a line in a rep: the sample after it, that puck, and the way it goes along x. */
export interface PuckOver {
  readonly event: RunEvent;
  readonly sample: number;
  readonly puck: PuckTrack;
  readonly way: 1 | -1;
}

/** The first crossing of the line by a puck; undefined when none crosses. */
export const findPuckOver = (run: Run, line: LineId): PuckOver | undefined => {
  const event = run.events.find(one => one.kind === 'puckCrosses' && one.line === line);
  if (!event) return undefined;
  const sample = Math.min(run.sampleCount - 1, Math.ceil(event.timeS * run.stepHz));
  const puck = nearestPuck(run, event.atM, sample);
  if (!puck) return undefined;
  return { event, sample, puck, way: puck.xM[sample]! >= puck.xM[Math.max(0, sample - 1)]! ? 1 : -1 };
};

/** The one that has just crossed there. */
const nearestPuck = (run: Run, atM: IcePoint, sample: number): PuckTrack | undefined => {
  let nearest: PuckTrack | undefined;
  let nearestSqM2 = Number.POSITIVE_INFINITY;
  for (const puck of run.pucks) {
    const x = puck.xM[sample]! - atM.xM;
    const y = puck.yM[sample]! - atM.yM;
    if (x * x + y * y >= nearestSqM2) continue;
    nearest = puck;
    nearestSqM2 = x * x + y * y;
  }
  return nearest;
};

/**
 * Whether the skater is level with the puck in that sample: as far along the way the puck goes, or further, or behind by no
 * more than `withinM` metres. One word for both sides of the puck: who comes back must not be further from the net it goes to, and
 * who joins the rush must not hang behind it.
 */
export const isLevel = (track: Track, over: PuckOver, sample: number, withinM: number): boolean =>
  (xMInSample(track, sample) - over.puck.xM[sample]!) * over.way >= -withinM;
