import type { SmallGame } from '../drill/drill.ts';
import { halfSpanAtX } from '../rink/boards.ts';
import type { IceArea, Rink } from '../rink/rink.ts';

/** The region of a game with its corners in order, metres. */
export const gameAreaOf = ({ fromM, toM }: Pick<SmallGame, 'fromM' | 'toM'>): IceArea => ({
  minXM: Math.min(fromM.xM, toM.xM),
  maxXM: Math.max(fromM.xM, toM.xM),
  minYM: Math.min(fromM.yM, toM.yM),
  maxYM: Math.max(fromM.yM, toM.yM),
});

/** Strips of the sum: the rounded corners come out within a thousandth. */
const STRIPS = 400;

/** Ice inside the region, m²: what the rounded corners of the boards cut off does not count. 0 when all of it is off the ice. */
export const gameIceSqM = (game: Pick<SmallGame, 'fromM' | 'toM'>, rink: Rink): number => {
  const { minXM, maxXM, minYM, maxYM } = gameAreaOf(game);
  const stripM = (maxXM - minXM) / STRIPS;
  let areaSqM = 0;
  for (let i = 0; i < STRIPS; i++) {
    const halfM = halfSpanAtX(rink.boards, minXM + (i + 0.5) * stripM);
    areaSqM += stripM * Math.max(0, Math.min(maxYM, halfM) - Math.max(minYM, -halfM));
  }
  return areaSqM;
};
