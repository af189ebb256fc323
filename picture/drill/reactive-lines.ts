import {
  type Act,
  type ActId,
  type DrillPlan,
  feetOf,
  type IcePoint,
  type Lengths,
  type Run,
  type SpotId,
  type Track,
} from '@icewright/engine';
import { distanceOf, type SheetPoint, sheetPoint } from '../ice/sheet-point.ts';
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
const JOINS_AFTER_M = 3;
const JOINS_WITHIN_M = 1.1;

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
    const joined = act.kind === 'gap' ? joiningPoint(points, trackOf(run, act.whom)) : points.length;
    return [
      {
        ...of,
        kind: 'route',
        style: 'chase',
        backward: going + across < 0,
        points: points.slice(0, joined),
        end: joined < points.length ? 'open' : 'head',
        pivot: false,
        ticks: joined < points.length ? [] : playedTicks(run, of.spot, times).map(sheetPoint),
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

/**
 * A gap is held on the way of the one it is held to: from where the two ways join, the word says what one line on top of
 * another would hide.
 */
const joiningPoint = (points: readonly SheetPoint[], whom: Track | undefined): number => {
  if (!whom) return points.length;
  let length = 0;
  for (let index = 1; index < points.length; index++) {
    const point = points[index]!;
    length += distanceOf(points[index - 1]!, point);
    if (length < JOINS_AFTER_M) continue;
    for (let sample = 0; sample < whom.xM.length; sample += 6) {
      if (distanceOf(point, { x: whom.xM[sample]!, y: -whom.yM[sample]! }) < JOINS_WITHIN_M) return index + 1;
    }
  }
  return points.length;
};
