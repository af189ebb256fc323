import { isSmall } from '../pen/is-small.ts';
import type { Pen } from '../pen/pen.ts';
import type { SheetPoint } from './sheet-point.ts';

/** Half the diagonal of a lozenge at k = 1, ice metres. */
export const CUE_HALF_M = 0.72;
/** On small drawings a letter fills its lozenge. */
const LARGE_LETTER_M = 0.95;

/** A lozenge: full where the cue fires, open where its letter is waited for. */
export const drawCue = (pen: Pen, at: SheetPoint, letter: string, way: 'fires' | 'waits'): void =>
  pen.group('cue', { way }, () => {
    const half = CUE_HALF_M * pen.k;
    pen.path(way === 'fires' ? 'cueFull' : 'cueOpen', sink => {
      sink.moveTo(at.x, at.y - half);
      sink.lineTo(at.x + half, at.y);
      sink.lineTo(at.x, at.y + half);
      sink.lineTo(at.x - half, at.y);
      sink.closePath();
    });
    const isLarge = letter.length === 1 && isSmall(pen);
    pen.text(way === 'fires' ? 'cueFull' : 'cueOpen', letter, at.x, at.y, {
      anchor: 'middle',
      drop: 0.28 * pen.k,
      ...(isLarge ? { size: LARGE_LETTER_M * pen.k, drop: 0.31 * pen.k } : {}),
      ...(letter.length > 1 ? { size: (letter.length > 2 ? 0.56 : 0.68) * pen.k, drop: 0.22 * pen.k } : {}),
    });
  });
