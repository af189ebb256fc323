import type { Pen } from '../pen/pen.ts';
import { along, beside, directionRad, distanceOf, type SheetPoint } from './sheet-point.ts';

const END_BAR_HALF_M = 0.4;
const WORDS_ABOVE_M = 0.47;
/** Words longer than the free length rise above the discs beside them. */
const CROWDED_ABOVE_M = 1.25;

/** Engineering bars between two places, with words on them: a distance, or a gap that is held. */
export const drawLink = (
  pen: Pen,
  from: SheetPoint,
  to: SheetPoint,
  words: string,
  clear: { readonly fromM: number; readonly toM: number } = { fromM: 1, toM: 1 },
): void => {
  const turnRad = directionRad(from, to);
  const span = distanceOf(from, to);
  const room = clear.fromM + clear.toM + 0.2 < span;
  const start = room ? along(from, turnRad, clear.fromM) : from;
  const end = room ? along(to, turnRad, -clear.toM) : to;
  const bar = END_BAR_HALF_M * pen.k;
  pen.group('link', {}, () => {
    pen.path('link', sink => {
      sink.moveTo(start.x, start.y);
      sink.lineTo(end.x, end.y);
      for (const point of [start, end]) {
        const one = beside(point, turnRad, bar);
        const other = beside(point, turnRad, -bar);
        sink.moveTo(one.x, one.y);
        sink.lineTo(other.x, other.y);
      }
    });
    if (words === '') return;
    const middle = { x: (start.x + end.x) / 2, y: (start.y + end.y) / 2 };
    pen.text('measure', words, middle.x, middle.y, {
      anchor: 'middle',
      turnRad: readableTurn(turnRad + pen.turnRad),
      drop: -(pen.measure('measure', words) > span - 2 ? CROWDED_ABOVE_M : WORDS_ABOVE_M) * pen.k,
    });
  });
};

/** A thin line square to the rink between two who are, or are not, level; the words stand beside it. */
export const drawLevel = (pen: Pen, xM: number, fromYM: number, toYM: number, words: string): void => {
  const low = Math.min(-fromYM, -toYM) - 0.9 * pen.k;
  const high = Math.max(-fromYM, -toYM) + 0.9 * pen.k;
  pen.path('level', sink => {
    sink.moveTo(xM, low);
    sink.lineTo(xM, high);
  });
  if (words !== '') {
    pen.text('label', words, xM + 1.3 * pen.k, (low + high) / 2, { drop: 0.28 * pen.k });
  }
};

/** Words along a line must not stand on their heads. */
const readableTurn = (turnRad: number): number => {
  const turn = Math.atan2(Math.sin(turnRad), Math.cos(turnRad));
  if (turn > Math.PI / 2 + 1e-9) return turn - Math.PI;
  return turn < -Math.PI / 2 + 1e-9 ? turn + Math.PI : turn;
};
