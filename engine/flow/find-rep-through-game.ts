import type { DrillPlan, SmallGame } from '../drill/drill.ts';
import { STILL_MOVES_MPS } from '../drill/drill-rows.ts';
import type { Finding, Run } from '../run/run-result.ts';
import type { SpotId } from '../units/ids.ts';
import type { IcePoint } from '../units/points.ts';
import { GAME_EDGE_M } from './flow-rows.ts';
import { gameAreaOf } from './game-area.ts';

/** Samples between two looks at a track. */
const LOOK_EVERY = 12;

interface Inside {
  readonly spot: SpotId;
  readonly deepM: number;
  readonly atM: IcePoint;
  readonly timeS: number;
}

/**
 * Skaters of a rep who skate through the region of a small game, farther in than `GAME_EDGE_M`; also at the other end where that is used. One
 * finding a game, at the deepest: value metres inside, threshold those allowed. Empty when reps and games keep apart. Our own rule.
 */
export const findRepThroughGame = (plan: DrillPlan, run: Run): readonly Finding[] => {
  const turns = plan.flow === undefined || plan.flow.ends === 'one' ? [1] : [1, -1];
  return Object.values(plan.games ?? {}).flatMap(game => {
    const deepest = turns
      .flatMap(turn => deepestOf(plan, run, game, turn))
      .sort((a, b) => b.deepM - a.deepM)[0];
    if (deepest === undefined || deepest.deepM <= GAME_EDGE_M.value) return [];
    const { spot, deepM, atM, timeS } = deepest;
    return [
      {
        kind: 'repThroughGame',
        weight: 'look',
        timeS,
        atM,
        spots: [spot],
        value: deepM,
        threshold: GAME_EDGE_M.value,
        unit: 'm',
        status: GAME_EDGE_M.status,
        source: GAME_EDGE_M.source,
      },
    ];
  });
};

/** The deepest place of everybody who moves, with the rep turned or not. */
const deepestOf = (plan: DrillPlan, run: Run, game: SmallGame, turn: number): readonly Inside[] => {
  const { minXM, maxXM, minYM, maxYM } = gameAreaOf(game);
  return run.tracks.flatMap(track => {
    if (plan.spots[track.spot]?.kind !== 'skater') return [];
    let deepest: Inside | undefined;
    for (let i = 0; i < track.xM.length; i += LOOK_EVERY) {
      if (Math.hypot(track.xMps[i]!, track.yMps[i]!) < STILL_MOVES_MPS.value) continue;
      const xM = turn * track.xM[i]!;
      const yM = turn * track.yM[i]!;
      const deepM = Math.min(xM - minXM, maxXM - xM, yM - minYM, maxYM - yM);
      if (deepM > (deepest?.deepM ?? 0))
        deepest = { spot: track.spot, deepM, atM: { xM, yM }, timeS: i / run.stepHz };
    }
    return deepest ? [deepest] : [];
  });
};
