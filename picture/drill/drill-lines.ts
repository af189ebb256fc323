import type { Act, ActId, DrillPlan, IcePoint, Lengths, LevelId, Rink, Run, SpotId } from '@icewright/engine';
import type { LineEnd } from '../ice/line-marks.ts';
import { sheetPoint } from '../ice/sheet-point.ts';
import { byRank } from './by-rank.ts';
import type { DrillLine } from './drill-line.ts';
import { mirrorBounce, type SpotPlaces, spotPlacesOf, takingPlaceOf } from './pass-places.ts';
import { reactiveLines } from './reactive-lines.ts';
import { type RouteBefore, routeOf } from './route.ts';
import { actTimes, passWay, placeOnTrack, playedTicks, trackOf } from './run-reading.ts';

interface Walk {
  readonly plan: DrillPlan;
  readonly rink: Rink;
  readonly run: Run | undefined;
  readonly level: LevelId | undefined;
  readonly places: ReadonlyMap<SpotId, SpotPlaces>;
  readonly passesTo: Map<SpotId, number>;
  readonly lengths: Lengths;
}

const STANDING: RouteBefore = { speedMps: 0 };
const SHOT_SHORT_OF_GOAL_M = 0.6;

/** Every act of a drill as a line. With a run, passes and reactive acts lie where they were played. */
export const drillLinesOf = (
  plan: DrillPlan,
  rink: Rink,
  known: { readonly run?: Run; readonly level?: LevelId; readonly lengths?: Lengths } = {},
): readonly DrillLine[] => {
  const walk: Walk = {
    plan,
    rink,
    run: known.run,
    level: known.level,
    places: spotPlacesOf(plan),
    passesTo: new Map(),
    lengths: known.lengths ?? 'metres',
  };
  return byRank(plan.spots).flatMap(([spot]) => spotLines(walk, spot));
};

const spotLines = (walk: Walk, spotId: SpotId): DrillLine[] => {
  const spot = walk.plan.spots[spotId];
  if (!spot) return [];
  const acts = byRank(spot.acts);
  const lines: DrillLine[] = [];
  let at = spot.atM;
  let backwardBefore: boolean | null = null;
  let before: RouteBefore = STANDING;
  acts.forEach(([actId, act], index) => {
    const times = actTimes(walk.run, spotId, actId);
    const track = trackOf(walk.run, spotId);
    if (times && track && walk.run) at = placeOnTrack(walk.run, track, times.startS);
    const of = { spot: spotId, act: actId };
    if (act.kind === 'skate' || act.kind === 'carry') {
      const backward = act.facing === 'backward';
      const route = routeOf(at, act, before, walk.level);
      lines.push({
        ...of,
        kind: 'route',
        style: act.kind,
        backward,
        points: route.points.map(sheetPoint),
        end: endOf(act, acts.slice(index + 1)),
        pivot: backwardBefore !== null && backwardBefore !== backward,
        ticks: (times && walk.run ? playedTicks(walk.run, spotId, times) : route.ticksM).map(sheetPoint),
        words: '',
      });
      at = route.points[route.points.length - 1] ?? at;
      backwardBefore = backward;
      before = act.stops ? STANDING : { headingRad: route.endHeadingRad, speedMps: route.endSpeedMps };
    } else if (act.kind === 'pass') {
      const line = passLine(walk, of, at, act);
      if (line) lines.push(line);
    } else if (act.kind === 'shoot') {
      lines.push({
        ...of,
        kind: 'shot',
        from: sheetPoint(at),
        to: sheetPoint(netOf(walk.rink, at, act.atEnd)),
      });
    } else if (act.kind === 'chase' || act.kind === 'gap') {
      lines.push(...reactiveLines(walk, of, at, act, times));
    }
  });
  return lines;
};

const endOf = (
  act: Extract<Act, { kind: 'skate' | 'carry' }>,
  later: readonly (readonly [ActId, Act])[],
): LineEnd => {
  if (act.stops) return 'stop';
  const next = later.find(([, each]) => each.kind !== 'pass' && each.kind !== 'hold')?.[1];
  return next && (next.kind === 'skate' || next.kind === 'carry') ? 'open' : 'head';
};

const passLine = (
  walk: Walk,
  of: { readonly spot: SpotId; readonly act: ActId },
  at: IcePoint,
  act: Extract<Act, { kind: 'pass' }>,
): DrillLine | null => {
  const number = walk.passesTo.get(act.toSpot) ?? 0;
  walk.passesTo.set(act.toSpot, number + 1);
  const played = walk.run ? passWay(walk.run, of.spot, of.act) : null;
  if (played) return { ...of, kind: 'pass', legs: played.map(sheetPoint), way: act.way };
  const to = takingPlaceOf(walk.plan, walk.places, act.toSpot, number);
  if (!to) return null;
  const legs = act.way === 'bank' ? [at, mirrorBounce(at, to, walk.rink), to] : [at, to];
  return { ...of, kind: 'pass', legs: legs.map(sheetPoint), way: act.way };
};

/** The net at that end, or on small ice the one that lies farther that way; the shot ends before its goal line. */
const netOf = (rink: Rink, from: IcePoint, end: 'minusX' | 'plusX'): IcePoint => {
  const nets = [...rink.nets].sort((one, other) => one.atM.xM - other.atM.xM || one.atM.yM - other.atM.yM);
  const net = (end === 'plusX' ? nets[nets.length - 1] : nets[0])?.atM ?? from;
  const span = Math.hypot(net.xM - from.xM, net.yM - from.yM);
  const share = span > 0 ? Math.max(0, span - SHOT_SHORT_OF_GOAL_M) / span : 1;
  return { xM: from.xM + (net.xM - from.xM) * share, yM: from.yM + (net.yM - from.yM) * share };
};
