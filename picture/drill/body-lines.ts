import { type Act, BLADE_AHEAD_M, type IcePoint, levelOf } from '@icewright/engine';
import { directionRad, sheetPoint } from '../ice/sheet-point.ts';
import type { DrillLine } from './drill-line.ts';
import { type ActStep, endOf, headingOf, type LeftAt, type LineWalk, playsPuck } from './line-walk.ts';
import { movingAt, placeOf, playedPath, playedTicks, trackOf } from './run-reading.ts';

type BodyAct = Extract<Act, { kind: 'stop' | 'turn' | 'pivot' | 'face' | 'leave' }>;

const TURN_STEP_RAD = Math.PI / 24;
/** A turn of a drill whose level nobody said is drawn as tight as the tightest of women and men; under it the line would be a dot. */
const TURN_DRAWN_M = 1.2;
/** Shorter ways than this are no line. */
const LEAST_WAY_M = 0.3;

/** What she does with her own body where she is, and what she leaves there. With a run its way is the way she went. */
export const bodyLines = (walk: LineWalk, step: ActStep, act: BodyAct): LeftAt => {
  const played = playedOf(walk, step, act);
  if (played) return played;
  const headingRad = headingOf(walk, step);
  switch (act.kind) {
    case 'stop':
      return routeOfPoints(walk, step, brakingPoints(walk, step, headingRad), { end: 'stop', speedMps: 0 });
    case 'turn': {
      const points = turnPoints(walk, step, headingRad, act.angleRad);
      return routeOfPoints(walk, step, points, {
        end: endOf(step.later),
        headingRad: headingRad + act.angleRad,
        speedMps: step.before.speedMps,
      });
    }
    default:
      return {
        lines: [signOf(walk, step, act)],
        at: step.at,
        before: step.before,
        backward: backwardAfter(step, act),
      };
  }
};

const playedOf = (walk: LineWalk, step: ActStep, act: BodyAct): LeftAt | null => {
  const { run } = walk;
  const { times, of } = step;
  const track = trackOf(run, of.spot);
  if (!run || !times || !track) return null;
  const points = playedPath(run, track, times);
  const at = points[points.length - 1] ?? step.at;
  const before = movingAt(run, track, times.endS);
  if (act.kind === 'face' || act.kind === 'leave')
    return { lines: [signOf(walk, step, act)], at, before, backward: null };
  if (act.kind === 'pivot')
    return { lines: [signOf(walk, step, act)], at, before, backward: backwardAfter(step, act) };
  const end = act.kind === 'stop' ? 'stop' : endOf(step.later);
  const left = routeOfPoints(walk, step, points, { end, ...before });
  return { ...left, at, before };
};

const routeOfPoints = (
  walk: LineWalk,
  step: ActStep,
  points: readonly IcePoint[],
  left: { readonly end: 'stop' | 'head' | 'open'; readonly headingRad?: number; readonly speedMps: number },
): LeftAt => {
  const { of } = step;
  const at = points[points.length - 1] ?? step.at;
  const { end, ...before } = left;
  const isLine = lengthOf(points) >= LEAST_WAY_M;
  const line: DrillLine = isLine
    ? {
        ...of,
        kind: 'route',
        style: playsPuck(walk, step) ? 'carry' : 'skate',
        backward: step.backwardBefore === true,
        points: points.map(sheetPoint),
        end,
        pivot: false,
        ticks: walk.run && step.times ? playedTicks(walk.run, of.spot, step.times).map(sheetPoint) : [],
        words: '',
      }
    : {
        ...of,
        kind: 'sign',
        sign: 'stop',
        at: sheetPoint(step.at),
        turnRad: -headingOf(walk, step),
        words: '',
      };
  return { lines: isLine || end === 'stop' ? [line] : [], at, before, backward: null };
};

/** The way it takes to stop from the speed she comes with, as hard as her level can. */
const brakingPoints = (walk: LineWalk, step: ActStep, headingRad: number): readonly IcePoint[] => {
  const { speedMps } = step.before;
  const wayM = walk.level ? (speedMps * speedMps) / (2 * levelOf(walk.level).model.stopDecelMps2) : 0;
  return [step.at, ahead(step.at, headingRad, wayM)];
};

/** As tight as the speed allows: v² over the sideways acceleration of her level, never under its tightest turn. */
const turnPoints = (
  walk: LineWalk,
  step: ActStep,
  headingRad: number,
  angleRad: number,
): readonly IcePoint[] => {
  const { speedMps } = step.before;
  const model = walk.level && levelOf(walk.level).model;
  const radiusM = model
    ? Math.max(model.minTurnRadiusM, (speedMps * speedMps) / model.lateralAccelMps2)
    : TURN_DRAWN_M;
  const side = Math.sign(angleRad) || 1;
  const centre = ahead(step.at, headingRad + (side * Math.PI) / 2, radiusM);
  const count = Math.max(1, Math.ceil(Math.abs(angleRad) / TURN_STEP_RAD));
  return Array.from({ length: count + 1 }, (_, index) =>
    ahead(centre, headingRad - (side * Math.PI) / 2 + (angleRad * index) / count, radiusM),
  );
};

const signOf = (walk: LineWalk, step: ActStep, act: BodyAct): DrillLine => {
  const at = sheetPoint(step.at);
  const sign = { ...step.of, kind: 'sign' as const, at, turnRad: -headingOf(walk, step), words: '' };
  if (act.kind === 'pivot') return { ...sign, sign: 'pivot' };
  if (act.kind === 'leave') {
    const left = walk.run?.events.find(
      event =>
        event.kind === 'leave' && event.spot === step.of.spot && event.timeS >= (step.times?.startS ?? 0),
    );
    const puckM = left?.atM ?? ahead(step.at, headingOf(walk, step), BLADE_AHEAD_M.value);
    return { ...sign, at: sheetPoint(puckM), sign: 'left', words: 'left' };
  }
  if (act.kind !== 'face') return { ...sign, sign: 'stop' };
  const whom = facedPlace(walk, step, act);
  return { ...sign, sign: 'face', ...(whom ? { turnRad: directionRad(at, sheetPoint(whom)) } : {}) };
};

const facedPlace = (
  walk: LineWalk,
  step: ActStep,
  act: Extract<Act, { kind: 'face' }>,
): IcePoint | undefined => {
  const timeS = step.times?.startS;
  if (walk.run && timeS !== undefined) return placeOf(walk.run, act.whom, timeS);
  const spot = act.whom ? walk.plan.spots[act.whom]?.atM : undefined;
  return spot ?? Object.values(walk.plan.pucks)[0]?.atM;
};

/** After a pivot she goes the other way round. */
const backwardAfter = (step: ActStep, act: BodyAct): boolean | null =>
  act.kind === 'pivot' ? !(step.backwardBefore ?? false) : null;

const ahead = (fromM: IcePoint, headingRad: number, byM: number): IcePoint => ({
  xM: fromM.xM + Math.cos(headingRad) * byM,
  yM: fromM.yM + Math.sin(headingRad) * byM,
});

const lengthOf = (points: readonly IcePoint[]): number =>
  points.reduce((sum, point, index) => {
    const before = points[index - 1] ?? point;
    return sum + Math.hypot(point.xM - before.xM, point.yM - before.yM);
  }, 0);
