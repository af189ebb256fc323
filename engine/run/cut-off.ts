import type { PuckPath } from '../puck/path-parts.ts';
import { type Place, placeOnPath } from '../puck/place-on-path.ts';
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
 * First time in [reaction, until], not before `fromS` (a saucer in the air is out of reach), at which the opponent's reach disc, widened by the stick with two hands, takes in the
 * puck; undefined when it never does. The opponent coasts until the reaction, then pushes one way at full effort, so
 * playing that push puts the stick on the puck at that time (Fujimura & Sugihara 2005). The same reading as a lane's margin below zero.
 */
export const findCutOff = (
  opponent: Actor,
  path: PuckPath,
  untilS: number,
  fromS = 0,
): CutOff | undefined => {
  const { reactionS, topSpeedMps } = opponent.model;
  const endS = Math.min(untilS, path.endTimeS);
  const firstS = Math.max(reactionS, fromS);
  if (endS < firstS) return undefined;
  const lack: Place = { xM: 0, yM: 0 };
  let lowS = firstS;
  let miss = missM(opponent, path, lowS, lack);
  if (miss > 0) {
    const closingMps = topSpeedMps + Math.hypot(opponent.xMps, opponent.yMps) + fastestMps(path);
    let highS = lowS;
    do {
      // The miss cannot close quicker than that: looks at which it must still be open are left out.
      const opens = Math.max(1, Math.floor(miss / (closingMps * SCAN_STEP_S)));
      lowS = highS + (opens - 1) * SCAN_STEP_S;
      if (lowS >= endS) return undefined;
      highS = Math.min(endS, lowS + SCAN_STEP_S);
      miss = missM(opponent, path, highS, lack);
    } while (miss > 0);
    for (let i = 0; i < BISECT_STEPS && highS - lowS > 1e-9; i++) {
      const middleS = (lowS + highS) / 2;
      if (missM(opponent, path, middleS, lack) > 0) lowS = middleS;
      else highS = middleS;
    }
    lowS = highS;
  }
  missM(opponent, path, lowS, lack);
  const size = Math.hypot(lack.xM, lack.yM);
  // Whoever is there before the puck comes down pushes no harder than to stand at it.
  const fullM = movesM(opponent, lowS);
  const scale = size > 0 ? 1 / Math.max(size, fullM) : 0;
  return { afterS: lowS, pushX: scale * lack.xM, pushY: scale * lack.yM };
};

/** A puck without spin only slows. */
const fastestMps = (path: PuckPath): number => {
  const first = path.legs[0];
  return first?.kind === 'slide' ? first.startMps : Number.POSITIVE_INFINITY;
};

/** How far the middle of the reach disc can be moved by then at full effort, metres. */
const movesM = ({ model }: Actor, afterS: number): number => {
  const pushedS = afterS - model.reactionS;
  return model.topSpeedMps * (pushedS - model.tauS * (1 - Math.exp(-pushedS / model.tauS)));
};

/** How far the stick is short of the puck, metres; sets `lack` to the way from the middle of the reach disc to the puck. */
const missM = (opponent: Actor, path: PuckPath, afterS: number, lack: Place): number => {
  const { reactionS, tauS, topSpeedMps, reachM } = opponent.model;
  const drawnS = tauS * (1 - Math.exp(-(afterS - reactionS) / tauS));
  placeOnPath(path, afterS, lack);
  const x = lack.xM - opponent.xM - opponent.xMps * (reactionS + drawnS);
  const y = lack.yM - opponent.yM - opponent.yMps * (reactionS + drawnS);
  lack.xM = x;
  lack.yM = y;
  return Math.sqrt(x * x + y * y) - topSpeedMps * (afterS - reactionS - drawnS) - reachM;
};
