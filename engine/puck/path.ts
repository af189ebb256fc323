import { cornerPointOf, nearestBoardsPoint } from '../rink/along-boards.ts';
import { type Boards, boardsDistance, cornerCentreOf, insetBoards } from '../rink/boards.ts';
import { boardsHitAlong } from '../rink/boards-ray.ts';
import { isNone } from '../units/none.ts';
import type { IcePoint, IceVelocity } from '../units/points.ts';
import { boardsSpeedsAfter } from './bounce.ts';
import type { PathBounce, PathLeg, PuckPath } from './path-parts.ts';
import type { PuckModel } from './puck-model.ts';
import { PUCK_ROWS } from './puck-rows.ts';
import { rimAtTime, rimOf, rimStopTime, rimTimeAtDistance } from './rim.ts';
import {
  slideDistanceAtTime,
  slideSpeedAtTime,
  slideStopTime,
  slideTimeAtDistance,
  slowingOf,
} from './slide.ts';

export interface PathOptions {
  /** Spin at the start, rad/s, anticlockwise positive. */
  readonly spinRadps?: number;
  readonly maxTimeS?: number;
  /** The path ends in the bounce after this many. */
  readonly maxBounces?: number;
  /** False: never follow a corner as a rim, bounce on (for checking the bounce law alone). */
  readonly rims?: boolean;
}

const LONGEST_PATH_S = 30;
const MOST_BOUNCES = 60;
/**
 * Off a corner at a smaller angle than this the puck would meet it again within hundredths of a millimetre, at a place that is all rounding: it is on
 * the rim already.
 */
const ALONG_RAD = 1e-6;

/**
 * Where a puck goes: straight slides between bounces, the puck's centre turning back on the boards inset by its radius,
 * spin carried, a rim where bounces would crowd together in a corner (rows `rimIncidenceRad`, `rimBounceGapS`; the part
 * of the speed that led into the boards is lost then). `startM` metres, `launchRad` 0 along +x anticlockwise,
 * `speedMps` ≥ 0. A start nearer to the boards than the puck's radius is moved in. A puck of
 * radius 0 is the limit of a small disc: its edge speed Rω is carried, its spin has no figure. Ends when the puck stops, at
 * `maxTimeS`, or at the bounce after `maxBounces`. Source: `slide`, `bounce`, `rim` one after the other,
 * checks/data/puck.json.
 */
export const puckPath = (
  boards: Boards,
  model: PuckModel,
  startM: IcePoint,
  launchRad: number,
  speedMps: number,
  options: PathOptions = {},
): PuckPath => {
  const centreBoards = insetBoards(boards, model.puckRadiusM);
  const slowing = slowingOf(model);
  const maxTimeS = options.maxTimeS ?? LONGEST_PATH_S;
  const maxBounces = options.maxBounces ?? MOST_BOUNCES;
  const legs: PathLeg[] = [];
  const bounces: PathBounce[] = [];
  let timeS = 0;
  let at = insideOf(centreBoards, startM);
  let direction: IcePoint = { xM: Math.cos(launchRad), yM: Math.sin(launchRad) };
  let speed = speedMps;
  let edge = model.puckRadiusM * (options.spinRadps ?? 0);
  let lastCornerBounceS = Number.NEGATIVE_INFINITY;

  /** Adds a leg that would end after `lengthS`; false when the path ends on it. */
  const add = (leg: PathLeg, lengthS: number, stopS: number): boolean => {
    const leftS = maxTimeS - timeS;
    const goesOn = lengthS <= leftS && lengthS < stopS;
    const durationS = goesOn ? lengthS : Math.min(leftS, stopS);
    legs.push({ ...leg, durationS });
    timeS += durationS;
    return goesOn;
  };
  const slide = (lengthM: number): boolean => {
    const leg: PathLeg = {
      kind: 'slide',
      startS: timeS,
      durationS: 0,
      startM: at,
      direction,
      startMps: speed,
      slowing,
      edgeMps: edge,
    };
    const lengthS = slideTimeAtDistance(slowing, speed, lengthM);
    const goesOn = add(leg, Number.isNaN(lengthS) ? Infinity : lengthS, slideStopTime(slowing, speed));
    if (goesOn) speed = slideSpeedAtTime(slowing, speed, lengthS);
    return goesOn;
  };
  const done = (): PuckPath => ({
    legs,
    bounces,
    endTimeS: timeS,
    ending: bounces.length > maxBounces ? 'bouncesUp' : timeS >= maxTimeS ? 'timeUp' : 'stopped',
    puckRadiusM: model.puckRadiusM,
  });

  while (timeS < maxTimeS && speed > 0) {
    const met = boardsHitAlong(centreBoards, at, direction);
    const hit = isNone(met) ? { ...nearestBoardsPoint(centreBoards, at), distanceM: 0 } : met;
    if (!slide(hit.distanceM)) return done();
    at = hit.pointM;
    const normal = hit.normal;
    const into = Math.max(0, -speed * (direction.xM * normal.xM + direction.yM * normal.yM));
    const along = speed * (direction.xM * normal.yM - direction.yM * normal.xM);
    const isCorner = hit.part.startsWith('corner') && centreBoards.cornerRadiusM > 0;
    const incidenceRad = Math.atan2(into, Math.abs(along));
    const crowds =
      incidenceRad < PUCK_ROWS.rimIncidenceRad.value ||
      timeS - lastCornerBounceS < PUCK_ROWS.rimBounceGapS.value;
    const before = { normalMps: into, alongMps: along, edgeMps: edge };
    const bounced = boardsSpeedsAfter(before, model);
    const staysAlong = bounced.normalMps < ALONG_RAD * Math.abs(bounced.alongMps);
    const becomesRim = (options.rims ?? true) && isCorner && (crowds || staysAlong);
    const after = becomesRim ? boardsSpeedsAfter(before, { ...model, restitutionRatio: 0 }) : bounced;
    const speedAfterMps = Math.hypot(after.normalMps, after.alongMps);
    edge = after.edgeMps;
    bounces.push({
      timeS,
      centreM: at,
      boardsPointM: {
        xM: at.xM - model.puckRadiusM * normal.xM,
        yM: at.yM - model.puckRadiusM * normal.yM,
      },
      part: hit.part,
      incidenceRad,
      angleOutRad: Math.atan2(after.normalMps, Math.abs(after.alongMps)),
      speedBeforeMps: speed,
      speedAfterMps,
      spinAfterRadps: model.puckRadiusM > 0 ? edge / model.puckRadiusM : (options.spinRadps ?? 0),
      becomesRim,
    });
    if (bounces.length > maxBounces) return done();
    if (isCorner) lastCornerBounceS = timeS;
    speed = speedAfterMps;
    if (!(speed > 0)) return done();
    direction = {
      xM: (after.normalMps * normal.xM + after.alongMps * normal.yM) / speed,
      yM: (after.normalMps * normal.yM - after.alongMps * normal.xM) / speed,
    };
    if (!becomesRim) continue;

    let outward: IcePoint = { xM: -normal.xM, yM: -normal.yM };
    const turn = after.alongMps > 0 ? 1 : -1;
    const centre = cornerCentreOf(centreBoards);
    for (;;) {
      const signX = Math.abs(outward.xM) < 1e-12 ? Math.sign(at.xM) : Math.sign(outward.xM);
      const signY = Math.abs(outward.yM) < 1e-12 ? Math.sign(at.yM) : Math.sign(outward.yM);
      const centreM = { xM: signX * centre.xM, yM: signY * centre.yM };
      const motion = rimOf(slowing, model.boardFrictionRatio, centreBoards.cornerRadiusM, {
        speedMps: speed,
        edgeMps: turn * edge,
      });
      const endsAlongX = signX * signY * turn < 0;
      const out: IcePoint = endsAlongX ? { xM: signX, yM: 0 } : { xM: 0, yM: signY };
      const leftRad = Math.acos(Math.min(1, Math.max(-1, outward.xM * out.xM + outward.yM * out.yM)));
      const lengthS = rimTimeAtDistance(motion, centreBoards.cornerRadiusM * leftRad);
      const leg: PathLeg = {
        kind: 'rim',
        startS: timeS,
        durationS: 0,
        centreM,
        radiusM: centreBoards.cornerRadiusM,
        fromRad: Math.atan2(outward.yM, outward.xM),
        turn,
        motion,
      };
      if (!add(leg, Number.isNaN(lengthS) ? Infinity : lengthS, rimStopTime(motion))) return done();
      const end = rimAtTime(motion, lengthS);
      speed = end.speedMps;
      edge = turn * end.edgeMps;
      direction = { xM: -turn * out.yM, yM: turn * out.xM };
      at = cornerPointOf(centreBoards, signX, signY, Math.abs(out.xM), Math.abs(out.yM)).pointM;
      const sideM = 2 * (out.xM === 0 ? centre.xM : centre.yM);
      if (!slide(sideM)) return done();
      at = { xM: at.xM + sideM * direction.xM, yM: at.yM + sideM * direction.yM };
      outward = out;
    }
  }
  return done();
};

/** The same point when it is inside, else a point moved in along the normal. */
const insideOf = (centreBoards: Boards, pointM: IcePoint): IcePoint =>
  boardsDistance(centreBoards, pointM) >= 0 ? pointM : nearestBoardsPoint(centreBoards, pointM).pointM;

/**
 * Where the puck is, how it moves and spins at `timeS` (clamped to the path). Metres, m/s, rad/s. Throws on a path
 * without legs. Source: as `puckPath`.
 */
export const puckAt = (
  path: PuckPath,
  timeS: number,
): { readonly atM: IcePoint; readonly velocity: IceVelocity; readonly spinRadps: number } => {
  const legs = path.legs;
  let index = legs.length - 1;
  while (index > 0 && legs[index]!.startS > timeS) index--;
  const leg = legs[index];
  if (!leg) throw new RangeError('a puck path without legs');
  const into = Math.min(Math.max(0, timeS - leg.startS), leg.durationS);
  const spinOf = (edge: number) => (path.puckRadiusM > 0 ? edge / path.puckRadiusM : 0);
  if (leg.kind === 'slide') {
    const distanceM = slideDistanceAtTime(leg.slowing, leg.startMps, into);
    const speed = slideSpeedAtTime(leg.slowing, leg.startMps, into);
    return {
      atM: {
        xM: leg.startM.xM + distanceM * leg.direction.xM,
        yM: leg.startM.yM + distanceM * leg.direction.yM,
      },
      velocity: { xMps: speed * leg.direction.xM, yMps: speed * leg.direction.yM },
      spinRadps: spinOf(leg.edgeMps),
    };
  }
  const { distanceM, speedMps, edgeMps } = rimAtTime(leg.motion, into);
  const atRad = leg.fromRad + (leg.turn * distanceM) / leg.radiusM;
  const cos = Math.cos(atRad);
  const sin = Math.sin(atRad);
  return {
    atM: { xM: leg.centreM.xM + leg.radiusM * cos, yM: leg.centreM.yM + leg.radiusM * sin },
    velocity: { xMps: -leg.turn * speedMps * sin, yMps: leg.turn * speedMps * cos },
    spinRadps: spinOf(leg.turn * edgeMps),
  };
};
