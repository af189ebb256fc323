import { puckAt } from '../puck/path.ts';
import type { PuckPath } from '../puck/path-parts.ts';
import type { Actor } from './actor.ts';

/** Where an opponent's stick is first on a passing puck, seconds after the release, and the push that gets there. */
export interface CutOff {
  readonly afterS: number;
  readonly pushX: number;
  readonly pushY: number;
}

const SCAN_STEP_S = 1 / 60;
const BISECT_STEPS = 40;

/**
 * First time in [reaction, until] at which the opponent's reach disc, widened by the stick with two hands, takes in the
 * puck; undefined when it never does. The opponent coasts until the reaction, then pushes one way at full effort, so
 * playing that push puts the stick on the puck at that time (Fujimura & Sugihara 2005). The same reading as a lane's margin below zero.
 */
export const findCutOff = (opponent: Actor, path: PuckPath, untilS: number): CutOff | undefined => {
  const reactionS = opponent.model.reactionS;
  const endS = Math.min(untilS, path.endTimeS);
  if (endS < reactionS) return undefined;
  let lowS = reactionS;
  if (missM(opponent, path, lowS) > 0) {
    let highS = lowS;
    do {
      lowS = highS;
      if (lowS >= endS) return undefined;
      highS = Math.min(endS, lowS + SCAN_STEP_S);
    } while (missM(opponent, path, highS) > 0);
    for (let i = 0; i < BISECT_STEPS && highS - lowS > 1e-9; i++) {
      const middleS = (lowS + highS) / 2;
      if (missM(opponent, path, middleS) > 0) lowS = middleS;
      else highS = middleS;
    }
    lowS = highS;
  }
  const { x, y } = toPuck(opponent, path, lowS);
  const size = Math.hypot(x, y);
  return {
    afterS: lowS,
    pushX: size > 0 ? x / size : 0,
    pushY: size > 0 ? y / size : 0,
  };
};

const missM = (opponent: Actor, path: PuckPath, afterS: number): number => {
  const { x, y, drawnS } = toPuck(opponent, path, afterS);
  const { reactionS, topSpeedMps, reachM } = opponent.model;
  return Math.hypot(x, y) - topSpeedMps * (afterS - reactionS - drawnS) - reachM;
};

/** From the middle of the reach disc to the puck. */
const toPuck = (opponent: Actor, path: PuckPath, afterS: number) => {
  const { reactionS, tauS } = opponent.model;
  const drawnS = tauS * (1 - Math.exp(-(afterS - reactionS) / tauS));
  const { atM } = puckAt(path, afterS);
  return {
    x: atM.xM - opponent.xM - opponent.xMps * (reactionS + drawnS),
    y: atM.yM - opponent.yM - opponent.yMps * (reactionS + drawnS),
    drawnS,
  };
};
