import { gameAreaOf, halfSpanAtX, halfSpanAtY, type Rink, type SmallGame } from '@icewright/engine';
import type { Pen } from '../pen/pen.ts';

/** How far inside its edge the words of a game stand, ice metres at k = 1. */
const WORDS_IN_M = 1.15;

/** A small game on the ice: a dotted edge, as a limit on a chart, and what it is in words. Where it meets the boards, they are its edge. */
export const drawGame = (pen: Pen, game: SmallGame, rink: Rink): void => {
  const { minXM, maxXM, minYM, maxYM } = gameAreaOf(game);
  const edge = (x1: number, y1: number, x2: number, y2: number): void => {
    if (x1 >= x2 && y1 >= y2) return;
    pen.path('zone', sink => {
      sink.moveTo(x1, -y1);
      sink.lineTo(x2, -y2);
    });
  };
  for (const xM of [minXM, maxXM]) {
    const halfM = halfSpanAtX(rink.boards, xM);
    edge(xM, Math.max(minYM, -halfM), xM, Math.min(maxYM, halfM));
  }
  for (const yM of [minYM, maxYM]) {
    const halfM = halfSpanAtY(rink.boards, yM);
    edge(Math.max(minXM, -halfM), yM, Math.min(maxXM, halfM), yM);
  }
  const { x, y } = gameWordsAt(game, pen.turnRad !== 0, pen.k);
  pen.text('labelWord', gameWords(game), x, y, { anchor: 'middle', drop: 0.3 * pen.k });
};

/** Where the words stand, in ice metres with y turned down: in the middle of the edge that is uppermost on the page. */
export const gameWordsAt = (
  game: Pick<SmallGame, 'fromM' | 'toM'>,
  isOnEnd: boolean,
  k: number,
): { readonly x: number; readonly y: number } => {
  const { minXM, maxXM, minYM, maxYM } = gameAreaOf(game);
  return isOnEnd
    ? { x: maxXM - WORDS_IN_M * k, y: -(minYM + maxYM) / 2 }
    : { x: (minXM + maxXM) / 2, y: -maxYM + WORDS_IN_M * k };
};

/** A game as it stands on the ice: 3 on 2, coach brings the puck. */
export const gameWords = (game: SmallGame): string =>
  `${game.usCount} on ${game.themCount}, ${RESETS_SAID[game.resets]} brings the puck`;

const RESETS_SAID: Readonly<Record<SmallGame['resets'], string>> = {
  coach: 'coach',
  whoScored: 'who scored',
  whoWasScoredOn: 'who was scored on',
};
