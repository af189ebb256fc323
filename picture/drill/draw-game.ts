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
  const { x, y, roomM } = gameWordsAt(game, rink, pen.turnRad !== 0, pen.k);
  const down = { x: Math.sin(pen.turnRad), y: Math.cos(pen.turnRad) };
  linesOf(pen, game, roomM).forEach((words, line) => {
    const step = LINE_M * pen.k * line;
    const set = { anchor: 'middle', drop: 0.3 * pen.k } as const;
    pen.text('labelWord', words, x + down.x * step, y + down.y * step, set);
  });
};

const LINE_M = 1.25;

/** The words in as few lines as there is room for. */
const linesOf = (pen: Pen, game: SmallGame, roomM: number): readonly string[] => {
  const lines: string[] = [];
  for (const part of partsOf(game)) {
    const longer = lines.length === 0 ? part : `${lines.at(-1)} ${part}`;
    if (lines.length > 0 && pen.measure('labelWord', longer) <= roomM) lines[lines.length - 1] = longer;
    else lines.push(part);
  }
  return lines;
};

/**
 * Where the words begin, in ice metres with y turned down: in the middle of what is on the ice of the edge that is uppermost on
 * the page, and how much room there is along it, metres.
 */
export const gameWordsAt = (
  game: Pick<SmallGame, 'fromM' | 'toM'>,
  rink: Rink,
  isOnEnd: boolean,
  k: number,
): { readonly x: number; readonly y: number; readonly roomM: number } => {
  const { minXM, maxXM, minYM, maxYM } = gameAreaOf(game);
  const inM = WORDS_IN_M * k;
  if (isOnEnd) {
    const halfM = halfSpanAtX(rink.boards, maxXM - inM);
    const [low, high] = [Math.max(minYM, -halfM), Math.min(maxYM, halfM)];
    return { x: maxXM - inM, y: -(low + high) / 2, roomM: high - low };
  }
  const halfM = halfSpanAtY(rink.boards, maxYM - inM);
  const [low, high] = [Math.max(minXM, -halfM), Math.min(maxXM, halfM)];
  return { x: (low + high) / 2, y: -maxYM + inM, roomM: high - low };
};

/** A game as it stands on the ice: 3 on 2, coach brings the puck. */
const partsOf = (game: SmallGame): readonly string[] => [
  `${game.usCount} on ${game.themCount},`,
  RESETS_SAID[game.resets],
  'brings the puck',
];

const RESETS_SAID: Readonly<Record<SmallGame['resets'], string>> = {
  coach: 'coach',
  whoScored: 'who scored',
  whoWasScoredOn: 'who was scored on',
};
