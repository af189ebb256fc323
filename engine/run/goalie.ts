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
import { isBeforeNet } from './guard-net.ts';
import type { RunState } from './run-state.ts';

/** The goalie of a net, if one stands before it. */
export const findGoalie = (run: RunState, net: Net): Actor | null =>
  run.actors.find(({ spot, xM, yM }) => spot.kind === 'goalie' && isBeforeNet(net, xM, yM)) ?? null;

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
 * where it has come to when the puck is shot, on its angle or still on the way there (`steerGuard`). What passes within the body
 * is stopped after the reaction and a short move; what passes further off needs a move that grows evenly to that from the middle to the post
 * (physics of four goalies, see the rows), and what is further off than that is not reached. Who has been shot at less than `GOALIE_RESET_S` ago is
 * not set, and stops only what hits the body. Heights are not known. Our reading of the goalie's times.
 */
export const saveAfterS = (run: RunState, goalie: Actor, path: PuckPath, net: Net): number | null => {
  const leg = path.legs[0];
  if (leg?.kind !== 'slide') return null;
  const aheadX = Math.cos(net.facingRad);
  const aheadY = Math.sin(net.facingRad);
  const asideOf = (xM: number, yM: number): number => (yM - net.atM.yM) * aheadX - (xM - net.atM.xM) * aheadY;
  const outOf = (xM: number, yM: number): number => (xM - net.atM.xM) * aheadX + (yM - net.atM.yM) * aheadY;
  const into = -(leg.direction.xM * aheadX + leg.direction.yM * aheadY);
  const outM = outOf(leg.startM.xM, leg.startM.yM);
  const goalieOutM = Math.max(0, outOf(goalie.xM, goalie.yM));
  if (into <= 0 || outM <= goalieOutM) return null;
  const wayM = (outM - goalieOutM) / into;
  const afterS = slideTimeAtDistance(leg.slowing, leg.startMps, wayM);
  if (!(afterS <= leg.durationS)) return null;
  const startAside = asideOf(leg.startM.xM, leg.startM.yM);
  const perM = leg.direction.yM * aheadX - leg.direction.xM * aheadY;
  const isOnNet = Math.abs(startAside + (outM / into) * perM) < net.openingM / 2;
  const offM = Math.abs(startAside + wayM * perM - asideOf(goalie.xM, goalie.yM));
  const postOffM = (net.openingM / 2) * (1 - goalieOutM / outM);
  const isSet = run.nowS - goalie.shotAtS >= GOALIE_RESET_S.value;
  const isAtBody = offM <= GOALIE_BODY_M.value;
  if (!isOnNet || (!isAtBody && (!isSet || offM > postOffM))) return null;
  const share = isAtBody ? 0 : (offM - GOALIE_BODY_M.value) / Math.max(1e-6, postOffM - GOALIE_BODY_M.value);
  const moveS = GOALIE_NEAR_S.value + share * (GOALIE_FAR_S.value - GOALIE_NEAR_S.value);
  return afterS >= GOALIE_REACTS_S.value + moveS ? afterS : null;
};
