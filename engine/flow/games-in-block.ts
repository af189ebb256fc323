import type { DrillPlan } from '../drill/drill.ts';
import { isNone } from '../units/none.ts';
import type { FlowSetting } from './flow-result.ts';
import { gameFlowOf, skatersOfGames } from './game-flow-of.ts';

/** What small games take of those who are here: how many skaters, and how many of them play at once on the mean of the block. */
export interface GamesInBlock {
  readonly skaterCount: number;
  readonly playingCount: number;
}

/**
 * The small games of a drill beside its lines; whole skaters, roster in whole numbers ≥ 0, minutes > 0. Zeros without games. Those who play
 * are counted as in motion for all of their go: by `gameFlowOf`.
 */
export const gamesInBlock = (plan: DrillPlan, { roster, minutes }: FlowSetting): GamesInBlock => {
  const shares = skatersOfGames(plan, roster.skaters);
  return Object.entries(plan.games ?? {}).reduce<GamesInBlock>(
    (sum, [id, game]) => {
      const skaters = shares[id] ?? 0;
      const flow = gameFlowOf(game, skaters, minutes);
      const playedS = isNone(flow) ? 0 : flow.meanGoes * skaters * game.shiftS;
      return {
        skaterCount: sum.skaterCount + skaters,
        playingCount: sum.playingCount + playedS / (minutes * 60),
      };
    },
    { skaterCount: 0, playingCount: 0 },
  );
};

/** Whether every small game has who plays at once, and everybody of it gets a go in the block; true without games. As `gamesInBlock`. */
export const isEveryGameFull = (plan: DrillPlan, { roster, minutes }: FlowSetting): boolean => {
  const shares = skatersOfGames(plan, roster.skaters);
  return Object.entries(plan.games ?? {}).every(([id, game]) => {
    const flow = gameFlowOf(game, shares[id] ?? 0, minutes);
    return !isNone(flow) && flow.shortCount === 0 && flow.fewestGoes > 0;
  });
};
