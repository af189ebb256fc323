import type { FilmPoint } from '@icewright/engine';
import type { LetteringName } from '../lettering.ts';
import type { Pen } from '../pen/pen.ts';
import { type FilmMark, type FilmView, POLE_M, sizeOf } from './film-mark.ts';
import { areaOnFilm, heightOnFilm, pointOnFilm, ringOf } from './on-film.ts';

/** Words of all marks, each where it belongs, or a line further where others stand already. */
export const drawMarkWords = (pen: Pen, marks: readonly FilmMark[], view: FilmView): void => {
  const line = 19 * view.unitPx;
  const taken: Box[] = [];
  for (const mark of marks) {
    const lines = linesOf(mark);
    const at = lines.length > 0 && mark.placesM.length > 0 ? wordPlaceOf(mark, view) : undefined;
    if (!at) continue;
    const half = Math.max(...lines.map(([lettering, words]) => pen.measure(lettering, words))) / 2;
    const first =
      at.yPx +
      (at.stands === 'below' ? line : (at.stands === 'in' ? 0.3 : -0.45) * line - (lines.length - 1) * line);
    const boxAt = (y: number): Box => ({
      left: at.xPx - half,
      right: at.xPx + half,
      top: y - 0.8 * line,
      bottom: y + (lines.length - 0.75) * line,
    });
    const shift = SHIFTS.find(one => !taken.some(other => overlaps(other, boxAt(first + one * line)))) ?? 0;
    taken.push(boxAt(first + shift * line));
    lines.forEach(([lettering, words], i) => {
      pen.text(lettering, words, at.xPx, first + (shift + i) * line, { anchor: 'middle' });
    });
  }
};

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const overlaps = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

/** In lines: its own place first, then below and above it. */
const SHIFTS = [0, 1, -1, 2, -2, 3, -3] as const;

const linesOf = ({ kind, figure, who, words }: FilmMark): (readonly [LetteringName, string])[] => [
  ...(figure ? [['filmFigure', figure] as const] : []),
  ...(who ? [['filmGhostName', who] as const] : []),
  ...(words === '' ? [] : [[kind === 'ghost' ? 'filmGhostWords' : 'filmWords', words] as const]),
];

const wordPlaceOf = (
  mark: FilmMark,
  view: FilmView,
): (FilmPoint & { readonly stands: 'below' | 'in' | 'above' }) | undefined => {
  const placesM = mark.placesM;
  const last = placesM[placesM.length - 1]!;
  const single = mark.kind === 'ring' || mark.kind === 'ghost' || mark.kind === 'spotlight';
  if (single) {
    const ring = areaOnFilm(view, ringOf(last, sizeOf(mark)));
    if (ring.length === 0) return undefined;
    const lowest = ring.reduce((a, b) => (b.yPx > a.yPx ? b : a));
    const middle = ring.reduce((sum, one) => sum + one.xPx, 0) / ring.length;
    return { xPx: middle, yPx: lowest.yPx, stands: 'below' };
  }
  const n = placesM.length;
  const middleM =
    mark.kind === 'text'
      ? last
      : {
          xM: placesM.reduce((sum, one) => sum + one.xM, 0) / n,
          yM: placesM.reduce((sum, one) => sum + one.yM, 0) / n,
        };
  const at = pointOnFilm(view, middleM);
  if (!at) return undefined;
  const upPx = mark.kind === 'text' ? heightOnFilm(view, last, POLE_M) : 0;
  return { xPx: at.xPx, yPx: at.yPx - upPx, stands: mark.kind === 'zone' ? 'in' : 'above' };
};
