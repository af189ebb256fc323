import type { Act, IcePoint } from '@icewright/engine';
import { sheetPoint } from '../ice/sheet-point.ts';
import { type ActStep, type LeftAt, type LineWalk, STANDING } from './line-walk.ts';
import { routeOf } from './route.ts';
import { movingAt, playedPath, playedTicks, trackOf } from './run-reading.ts';

/** The way to a puck that lies free, and the puck at its end; what comes after begins there, with the puck. */
export const pickUpLine = (walk: LineWalk, step: ActStep, act: Extract<Act, { kind: 'pickUp' }>): LeftAt => {
  const { of, times } = step;
  const { run } = walk;
  const track = trackOf(run, of.spot);
  const line = { ...of, kind: 'route', style: 'skate', backward: false, pivot: false, words: '' } as const;
  if (run && times && track) {
    const points = playedPath(run, track, times);
    const at = points[points.length - 1] ?? step.at;
    const ticks = playedTicks(run, of.spot, times).map(sheetPoint);
    const puckAtEnd = { way: 'pickUp', at: sheetPoint(at) } as const;
    return {
      lines: [{ ...line, points: points.map(sheetPoint), end: 'open', ticks, puckAtEnd }],
      at,
      before: movingAt(run, track, times.endS),
      backward: false,
    };
  }
  const puckM = nearestFreePuck(walk, step.at);
  if (!puckM) return { lines: [], at: step.at, before: step.before, backward: null };
  const skate = { kind: 'skate', throughM: [puckM], facing: 'forward', stops: false, rank: 0 } as const;
  const route = routeOf(step.at, { ...skate, effortRatio: act.effortRatio }, step.before, walk.level);
  return {
    lines: [
      {
        ...line,
        points: route.points.map(sheetPoint),
        end: 'open',
        ticks: route.ticksM.map(sheetPoint),
        puckAtEnd: { way: 'pickUp', at: sheetPoint(puckM) },
      },
    ],
    at: puckM,
    before: walk.level ? { headingRad: route.endHeadingRad, speedMps: route.endSpeedMps } : STANDING,
    backward: false,
  };
};

const nearestFreePuck = (walk: LineWalk, from: IcePoint): IcePoint | undefined =>
  Object.values(walk.plan.pucks)
    .filter(puck => puck.ownerSpot === undefined && puck.count > 0)
    .map(({ atM }) => ({ atM, awayM: Math.hypot(atM.xM - from.xM, atM.yM - from.yM) }))
    .sort((one, other) => one.awayM - other.awayM)[0]?.atM;
