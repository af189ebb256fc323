import type { Act, DrillPlan, IcePoint, Lengths, LevelId, Rink, Run, SpotId } from '@icewright/engine';
import { sheetPoint } from '../ice/sheet-point.ts';
import { bodyLines } from './body-lines.ts';
import { byRank } from './by-rank.ts';
import { drawnRouteOf } from './drawn-routes.ts';
import type { DrillLine } from './drill-line.ts';
import { keptLineOf } from './kept-lines.ts';
import { type ActStep, endOf, type LeftAt, type LineWalk, STANDING } from './line-walk.ts';
import { netOf } from './net-of.ts';
import { passLine } from './pass-line.ts';
import { spotPlacesOf } from './pass-places.ts';
import { pickUpLine } from './pick-up-line.ts';
import { reactiveLines } from './reactive-lines.ts';
import type { RouteBefore } from './route.ts';
import { actTimes, movingAt, placeOnTrack, playedTicks, puckComesToM, trackOf } from './run-reading.ts';

const SHOT_SHORT_OF_GOAL_M = 0.6;

/** Every act of a drill as a line. With a run, passes and reactive acts lie where they were played. */
export const drillLinesOf = (
  plan: DrillPlan,
  rink: Rink,
  known: { readonly run?: Run; readonly level?: LevelId; readonly lengths?: Lengths } = {},
): readonly DrillLine[] => {
  const walk: LineWalk = {
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

const spotLines = (walk: LineWalk, spotId: SpotId): DrillLine[] => {
  const spot = walk.plan.spots[spotId];
  if (!spot) return [];
  const acts = byRank(spot.acts);
  const track = trackOf(walk.run, spotId);
  const lines: DrillLine[] = [];
  let at = spot.atM;
  let before: RouteBefore = STANDING;
  let backwardBefore: boolean | null = null;
  let hasPuck = Object.values(walk.plan.pucks).some(puck => puck.ownerSpot === spotId);
  acts.forEach(([actId, act], index) => {
    const times = actTimes(walk.run, spotId, actId);
    if (times && track && walk.run) {
      at = placeOnTrack(walk.run, track, times.startS);
      before = movingAt(walk.run, track, times.startS);
    }
    hasPuck ||= act.kind === 'carry' || act.kind === 'pass' || act.kind === 'shoot';
    const later = acts.slice(index + 1);
    const step = { of: { spot: spotId, act: actId }, at, before, backwardBefore, times, later, hasPuck };
    const left = linesOf(walk, step, act);
    lines.push(...left.lines);
    at = left.at;
    before = left.before;
    backwardBefore = left.backward ?? backwardBefore;
    if (act.kind === 'pickUp') hasPuck = true;
    if (act.kind === 'pass' || act.kind === 'shoot' || act.kind === 'leave') hasPuck = false;
  });
  return lines;
};

const linesOf = (walk: LineWalk, step: ActStep, act: Act): LeftAt => {
  const { of, at, before } = step;
  const stays = { at, before, backward: null };
  switch (act.kind) {
    case 'skate':
    case 'carry':
      return routeLine(walk, step, act);
    case 'pass': {
      const line = passLine(walk, step, act);
      return { ...stays, lines: line ? [line] : [] };
    }
    case 'shoot': {
      const to = sheetPoint(shortOfNet(at, netOf(walk.rink, at, act.atEnd)));
      return { ...stays, lines: [{ ...of, kind: 'shot', from: sheetPoint(at), to }] };
    }
    case 'chase':
    case 'gap':
    case 'steal':
    case 'screen':
      return { ...stays, before: STANDING, lines: reactiveLines(walk, step, act) };
    case 'pickUp':
      return pickUpLine(walk, step, act);
    case 'hold':
      return { ...stays, before: STANDING, lines: [] };
    case 'leave':
    case 'stop':
    case 'turn':
    case 'pivot':
    case 'face':
      return bodyLines(walk, step, act);
  }
};

const routeLine = (walk: LineWalk, step: ActStep, act: Extract<Act, { kind: 'skate' | 'carry' }>): LeftAt => {
  const { of, times } = step;
  const backward = act.facing === 'backward';
  // As it was played its seconds are known, and so is how she leaves it: no profile is asked for.
  const route = drawnRouteOf(step.at, act, step.before, times && walk.run ? undefined : walk.level);
  const ticks = times && walk.run ? playedTicks(walk.run, of.spot, times) : route.ticksM;
  const comesM = act.kind === 'carry' && times && walk.run ? puckComesToM(walk.run, of.spot, times) : null;
  return {
    lines: [
      keptLineOf(route, {
        ...of,
        kind: 'route',
        style: act.kind,
        backward,
        points: route.points.map(sheetPoint),
        end: act.stops ? 'stop' : endOf(step.later),
        pivot: step.backwardBefore !== null && step.backwardBefore !== backward,
        ticks: ticks.map(sheetPoint),
        words: '',
        ...(comesM && { puckComesAt: sheetPoint(comesM) }),
      }),
    ],
    at: route.points[route.points.length - 1] ?? step.at,
    before: act.stops ? STANDING : { headingRad: route.endHeadingRad, speedMps: route.endSpeedMps },
    backward,
  };
};

/** A shot is drawn to a little before the goal line. */
const shortOfNet = (from: IcePoint, net: IcePoint): IcePoint => {
  const span = Math.hypot(net.xM - from.xM, net.yM - from.yM);
  const share = span > 0 ? Math.max(0, span - SHOT_SHORT_OF_GOAL_M) / span : 1;
  return { xM: from.xM + (net.xM - from.xM) * share, yM: from.yM + (net.yM - from.yM) * share };
};
