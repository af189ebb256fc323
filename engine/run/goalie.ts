import type { PuckPath } from '../puck/path-parts.ts';
import { slideTimeAtDistance } from '../puck/slide.ts';
import type { Net } from '../rink/rink.ts';
import type { IcePoint } from '../units/points.ts';
import type { Actor } from './actor.ts';
import {
  GOALIE_BODY_M,
  GOALIE_FAR_S,
  GOALIE_NEAR_S,
  GOALIE_REACTS_S,
  GOALIE_RESET_S,
  SHOT_AIM_RATIO,
  SHOT_DIRECTION_SD_RAD,
} from './goalie-rows.ts';
import type { RunState } from './run-state.ts';

/** A goalie stands no further before the net than this to be its goalie, metres: out at the top of the crease and a little more. */
const BEFORE_NET_M = 3.5;

/** The goalie of a net, if one stands before it. */
export const findGoalie = (run: RunState, net: Net): Actor | null =>
  run.actors.find(
    ({ spot, xM, yM }) =>
      spot.kind === 'goalie' && Math.hypot(xM - net.atM.xM, yM - net.atM.yM) <= BEFORE_NET_M,
  ) ?? null;

/**
 * Which way a shot leaves, radians: at the middle of the net; with chance at a place inside `SHOT_AIM_RATIO` of the mouth, evenly, and off it by
 * `SHOT_DIRECTION_SD_RAD`, normal.
 */
export const shotRad = (run: RunState, shooter: Actor, fromM: IcePoint, net: Net): number => {
  const { chance } = run;
  const nth = shooter.shots++;
  const aside = chance
    ? (chance.uniform(shooter.index, 'shot', nth) - 0.5) * SHOT_AIM_RATIO.value * net.openingM
    : 0;
  const targetXM = net.atM.xM - aside * Math.sin(net.facingRad);
  const targetYM = net.atM.yM + aside * Math.cos(net.facingRad);
  const meantRad = Math.atan2(targetYM - fromM.yM, targetXM - fromM.xM);
  return chance
    ? meantRad + SHOT_DIRECTION_SD_RAD.value * chance.normal(shooter.index, 'shot', nth)
    : meantRad;
};

/**
 * When this goalie stops a shot, seconds after its release; null when it is not stopped: it is wide, or there before the goalie is. The goalie is
 * square to the puck, on the line from it to the middle of the net, as far out as the spot stands. What passes within the body
 * is stopped after the reaction and a short move; what passes further off needs a move that grows evenly to that of the post
 * (physics of four goalies, see the rows). Who has been shot at less than `GOALIE_RESET_S` ago is not set, and stops only what hits the body.
 * Heights are not known. Our reading of the goalie's times.
 */
export const saveAfterS = (run: RunState, goalie: Actor, path: PuckPath, net: Net): number | null => {
  const leg = path.legs[0];
  if (leg?.kind !== 'slide') return null;
  const aheadX = Math.cos(net.facingRad);
  const aheadY = Math.sin(net.facingRad);
  const into = -(leg.direction.xM * aheadX + leg.direction.yM * aheadY);
  const x = leg.startM.xM - net.atM.xM;
  const y = leg.startM.yM - net.atM.yM;
  const outM = x * aheadX + y * aheadY;
  const goalieOutM = Math.max(0, (goalie.xM - net.atM.xM) * aheadX + (goalie.yM - net.atM.yM) * aheadY);
  if (into <= 0 || outM <= goalieOutM) return null;
  const wayM = (outM - goalieOutM) / into;
  const afterS = slideTimeAtDistance(leg.slowing, leg.startMps, wayM);
  if (!(afterS <= leg.durationS)) return null;
  const startAside = y * aheadX - x * aheadY;
  const aside = startAside + wayM * (leg.direction.yM * aheadX - leg.direction.xM * aheadY);
  const squareAside = startAside * (goalieOutM / outM);
  const offM = Math.abs(aside - squareAside);
  const postOffM = (net.openingM / 2) * (1 - goalieOutM / outM);
  const isSet = run.nowS - goalie.shotAtS >= GOALIE_RESET_S.value;
  const isAtBody = offM <= GOALIE_BODY_M.value;
  if (!isAtBody && (!isSet || offM > postOffM)) return null;
  const share = isAtBody ? 0 : (offM - GOALIE_BODY_M.value) / Math.max(1e-6, postOffM - GOALIE_BODY_M.value);
  const moveS = GOALIE_NEAR_S.value + share * (GOALIE_FAR_S.value - GOALIE_NEAR_S.value);
  return afterS >= GOALIE_REACTS_S.value + moveS ? afterS : null;
};
