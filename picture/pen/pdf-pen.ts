import { BLACK_PALETTE, type Palette } from '../inks.ts';
import { type Lettering, type LetteringName, letteringOf } from '../lettering.ts';
import { type Mark, type MarkName, markOf } from '../marks.ts';
import { fontRunsOf } from './font-runs.ts';
import { pathString } from './path-string.ts';
import type { PdfDocument, PdfTextSet } from './pdf-document.ts';
import { pdfFontName } from './pdf-fonts.ts';
import type { Pen, TextSetting } from './pen.ts';
import { type PenState, placedState } from './pen-state.ts';
import { letterSize, strokeSet } from './stroke-set.ts';

const DIGITS = 4;
/** Figures of one width under each other, on the line. */
const FIGURE_FEATURES = ['tnum', 'lnum', 'kern'];
const WORD_FEATURES = ['kern', 'liga'];

/** Draws on the document's current page, in points with y down. Vector only, but for photographs; every font must be registered before. */
export const pdfPen = (document: PdfDocument, palette: Palette = BLACK_PALETTE): Pen => {
  let state: PenState = { k: 1, thinFloor: 0, turnRad: 0 };
  const within = (draw: () => void) => {
    document.save();
    draw();
    document.restore();
  };
  const paint = (name: MarkName, outline: () => void) =>
    within(() => {
      const mark = markOf(name);
      setStroke(document, mark, state);
      outline();
      paintMark(document, mark, palette);
    });
  return {
    get k() {
      return state.k;
    },
    get thinFloor() {
      return state.thinFloor;
    },
    get turnRad() {
      return state.turnRad;
    },
    path: (mark, draw) => paint(mark, () => document.path(pathString(draw, DIGITS))),
    circle: (mark, x, y, radius) => paint(mark, () => document.circle(x, y, radius)),
    text: (name, words, x, y, set = {}) =>
      within(() => setWords(document, palette, state, { name, words, x, y, set })),
    measure: (name, words, size) =>
      widthOf(document, letteringOf(name), letterSize(name, state, size), words),
    group: (_name, _data, draw) => draw(),
    kept: (_of, _and, draw) => draw(),
    place: (where, draw) => {
      const before = state;
      state = placedState(before, where);
      within(() => {
        if (where.x || where.y) document.translate(where.x ?? 0, where.y ?? 0);
        if (where.turnRad) document.rotate(degrees(where.turnRad));
        if (where.scale !== undefined && where.scale !== 1) document.scale(where.scale);
        draw();
      });
      state = before;
    },
    photo: (of, { left, top, width, height }) => document.image(of.dataUrl, left, top, { width, height }),
    clip: (outline, draw) =>
      within(() => {
        document.path(pathString(outline, DIGITS));
        document.clip();
        draw();
      }),
  };
};

const setStroke = (document: PdfDocument, mark: Mark, state: PenState): void => {
  if (mark.opacity !== undefined) document.opacity(mark.opacity);
  if (!mark.stroke) return;
  const { width, dash } = strokeSet(mark, state);
  document.lineWidth(width);
  document.lineCap(mark.cap ?? 'butt');
  document.lineJoin(mark.join ?? 'miter');
  if (dash) document.dash(dash[0], { space: dash[1] });
};

const paintMark = (document: PdfDocument, mark: Mark, palette: Palette): void => {
  if (mark.fill && mark.stroke) document.fillAndStroke(palette[mark.fill], palette[mark.stroke]);
  else if (mark.fill) document.fill(palette[mark.fill]);
  else if (mark.stroke) document.stroke(palette[mark.stroke]);
};

interface SetWords {
  readonly name: LetteringName;
  readonly words: string;
  readonly x: number;
  readonly y: number;
  readonly set: TextSetting;
}

const setWords = (document: PdfDocument, palette: Palette, state: PenState, of: SetWords): void => {
  const lettering: Lettering = letteringOf(of.name);
  const size = letterSize(of.name, state, of.set.size);
  const width = widthOf(document, lettering, size, of.words);
  const shift = of.set.anchor === 'middle' ? width / 2 : of.set.anchor === 'end' ? width : 0;
  document.translate(of.x, of.y);
  const turnRad = (of.set.turnRad ?? 0) - state.turnRad;
  if (Math.abs(turnRad) > 1e-9) document.rotate(degrees(turnRad));
  const passes = lettering.casing ? (['casing', 'letters'] as const) : (['letters'] as const);
  for (const pass of passes) {
    if (pass === 'casing' && lettering.casing) {
      document.lineWidth((lettering.casing.width * size) / lettering.size);
      document.lineJoin('round');
      document.strokeColor(palette[lettering.casing.ink]);
    } else document.fillColor(palette[lettering.ink]);
    let x = -shift;
    for (const run of fontRunsOf(of.words)) {
      const set = textSet(lettering);
      document.font(pdfFontName(lettering, run.script));
      document.fontSize(size);
      document.text(run.words, x, of.set.drop ?? 0, {
        ...set,
        lineBreak: false,
        baseline: 'alphabetic',
        fill: pass === 'letters',
        stroke: pass === 'casing',
      });
      x += document.widthOfString(run.words, set);
    }
  }
};

const widthOf = (document: PdfDocument, lettering: Lettering, size: number, words: string): number =>
  fontRunsOf(words).reduce((sum, run) => {
    document.font(pdfFontName(lettering, run.script));
    document.fontSize(size);
    return sum + document.widthOfString(run.words, textSet(lettering));
  }, 0);

const textSet = (lettering: Lettering): PdfTextSet => ({
  features: lettering.voice === 'figures' ? FIGURE_FEATURES : WORD_FEATURES,
  ...(lettering.stretch ? { horizontalScaling: lettering.stretch } : {}),
});

const degrees = (turnRad: number): number => (turnRad * 180) / Math.PI;
