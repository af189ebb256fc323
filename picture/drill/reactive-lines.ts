import {
  type Act,
  type ActId,
  type DrillPlan,
  feetOf,
  type IcePoint,
  type Lengths,
  type Run,
  type SpotId,
} from '@icewright/engine';
import { type SheetPoint, sheetPoint } from '../ice/sheet-point.ts';
import type { DrillLine } from './drill-line.ts';
import type { SpotPlaces } from './pass-places.ts';
import { type ActTimes, placeOnTrack, playedTicks, trackOf } from './run-reading.ts';

interface ReactiveKnown {
  readonly plan: DrillPlan;
  readonly run: Run | undefined;
  readonly places: ReadonlyMap<SpotId, SpotPlaces>;
  readonly lengths: Lengths;
}

const gapWords = (gapM: number, lengths: Lengths): string =>
  lengths === 'feet' ? `gap ${feetOf(gapM).toFixed(0)} ft` : `gap ${gapM.toFixed(1)} m`;

const TRACK_EVERY_S = 0.1;

/**
 * A chase or a gap: as it was played when there is a run; before that a sign of whom it goes to.
 */
export const reactiveLines = (
  walk: ReactiveKnown,
  of: { readonly spot: SpotId; readonly act: ActId },
  at: IcePoint,
  act: Extract<Act, { kind: 'chase' | 'gap' }>,
  times: ActTimes | null,
): readonly DrillLine[] => {
  const whom = walk.plan.spots[act.whom];
  if (!whom) return [];
  const words =
    act.kind === 'chase' ? `chases ${whom.role}` : `${gapWords(act.distanceM, walk.lengths)} to ${whom.role}`;
  const track = trackOf(walk.run, of.spot);
  if (walk.run && track && times && times.endS > times.startS) {
    const run = walk.run;
    const points: SheetPoint[] = [];
    for (let timeS = times.startS; timeS < times.endS; timeS += TRACK_EVERY_S) {
      points.push(sheetPoint(placeOnTrack(run, track, timeS)));
    }
    points.push(sheetPoint(placeOnTrack(run, track, times.endS)));
    const middle = Math.round(((times.startS + times.endS) / 2) * run.stepHz);
    const going = (track.xMps[middle] ?? 0) * Math.cos(track.facingRad[middle] ?? 0);
    const across = (track.yMps[middle] ?? 0) * Math.sin(track.facingRad[middle] ?? 0);
    return [
      {
        ...of,
        kind: 'route',
        style: 'chase',
        backward: going + across < 0,
        points,
        end: 'head',
        pivot: false,
        ticks: playedTicks(run, of.spot, times).map(sheetPoint),
        words,
      },
    ];
  }
  const from = sheetPoint(at);
  if (act.kind === 'gap') {
    const held = gapWords(act.distanceM, walk.lengths);
    return [{ ...of, kind: 'gap', from, to: sheetPoint(whom.atM), words: held }];
  }
  const target = walk.places.get(act.whom);
  const to = sheetPoint(target ? target.endM : whom.atM);
  return [{ ...of, kind: 'chaseSign', from, to, words, side: whom.side }];
};
