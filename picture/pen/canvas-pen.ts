import { BLACK_PALETTE, type Palette } from '../inks.ts';
import { type Lettering, letteringOf, type Voice } from '../lettering.ts';
import { type MarkName, markOf } from '../marks.ts';
import { letterWidth } from './letter-widths.ts';
import type { PathSink, Pen } from './pen.ts';
import { type PenState, placedState } from './pen-state.ts';
import { letterSize, strokeSet } from './stroke-set.ts';

/** What the canvas pen needs of a 2D context; a canvas of a browser has it. Declared here: pictures know no browser. */
export interface CanvasContext extends PathSink {
  lineWidth: number;
  lineCap: 'butt' | 'round' | 'square';
  lineJoin: 'miter' | 'round' | 'bevel';
  globalAlpha: number;
  font: string;
  textAlign: 'start' | 'end' | 'left' | 'right' | 'center';
  /** Wider than a colour, as a canvas has it; only colours are given. */
  fillStyle: unknown;
  strokeStyle: unknown;
  save(): void;
  restore(): void;
  translate(x: number, y: number): void;
  rotate(turnRad: number): void;
  scale(x: number, y: number): void;
  beginPath(): void;
  fill(): void;
  stroke(): void;
  clip(): void;
  setLineDash(dash: number[]): void;
  fillText(words: string, x: number, y: number): void;
  strokeText(words: string, x: number, y: number): void;
}

export type CanvasFamilies = Readonly<Record<Voice, string>>;

/** Letters are set at this size and scaled: a canvas rounds the sizes of small letters, and ice metres are small. */
const SET_PX = 100;

/** Draws on a canvas, for films and pictures of dots. Fonts must be loaded before. */
export const canvasPen = (
  context: CanvasContext,
  families: CanvasFamilies,
  palette: Palette = BLACK_PALETTE,
  start: { readonly k?: number; readonly thinFloor?: number } = {},
): Pen => {
  let state: PenState = { k: start.k ?? 1, thinFloor: start.thinFloor ?? 0, turnRad: 0 };
  const within = (draw: () => void) => {
    context.save();
    draw();
    context.restore();
  };
  const paint = (name: MarkName, outline: () => void) =>
    within(() => {
      context.beginPath();
      outline();
      paintMark(context, name, state, palette);
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
    path: (mark, draw) => paint(mark, () => draw(context)),
    circle: (mark, x, y, radius) => paint(mark, () => context.arc(x, y, radius, 0, 2 * Math.PI)),
    text: (name, words, x, y, set = {}) =>
      within(() => {
        const lettering: Lettering = letteringOf(name);
        const size = letterSize(name, state, set.size);
        const turnRad = (set.turnRad ?? 0) - state.turnRad;
        context.translate(x, y);
        if (Math.abs(turnRad) > 1e-9) context.rotate(turnRad);
        if (set.drop) context.translate(0, set.drop);
        context.scale((size / SET_PX) * ((lettering.stretch ?? 100) / 100), size / SET_PX);
        setLetters(context, lettering, families, palette);
        context.textAlign = ALIGN[set.anchor ?? 'start'];
        if (lettering.casing) context.strokeText(words, 0, 0);
        context.fillText(words, 0, 0);
      }),
    measure: (name, words, size) => letterWidth(words, letteringOf(name)) * letterSize(name, state, size),
    group: (_name, _data, draw) => draw(),
    kept: (_of, _and, draw) => draw(),
    place: (where, draw) => {
      const before = state;
      state = placedState(before, where);
      within(() => {
        if (where.x || where.y) context.translate(where.x ?? 0, where.y ?? 0);
        if (where.turnRad) context.rotate(where.turnRad);
        if (where.scale !== undefined && where.scale !== 1) context.scale(where.scale, where.scale);
        draw();
      });
      state = before;
    },
    clip: (outline, draw) =>
      within(() => {
        context.beginPath();
        outline(context);
        context.clip();
        draw();
      }),
  };
};

const ALIGN = { start: 'left', middle: 'center', end: 'right' } as const;

const paintMark = (context: CanvasContext, name: MarkName, state: PenState, palette: Palette): void => {
  const mark = markOf(name);
  if (mark.opacity !== undefined) context.globalAlpha = mark.opacity;
  if (mark.fill) {
    context.fillStyle = palette[mark.fill];
    context.fill();
  }
  if (!mark.stroke) return;
  const { width, dash } = strokeSet(mark, state);
  context.strokeStyle = palette[mark.stroke];
  context.lineWidth = width;
  context.lineCap = mark.cap ?? 'butt';
  context.lineJoin = mark.join ?? 'miter';
  context.setLineDash(dash ? [...dash] : []);
  context.stroke();
};

const setLetters = (
  context: CanvasContext,
  lettering: Lettering,
  families: CanvasFamilies,
  palette: Palette,
): void => {
  context.font = `${lettering.italic ? 'italic ' : ''}${lettering.weight} ${SET_PX}px ${families[lettering.voice]}`;
  context.fillStyle = palette[lettering.ink];
  if (!lettering.casing) return;
  context.strokeStyle = palette[lettering.casing.ink];
  context.lineWidth = (lettering.casing.width / lettering.size) * SET_PX;
  context.lineJoin = 'round';
  context.setLineDash([]);
};
