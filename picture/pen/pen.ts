import type { LetteringName } from '../lettering.ts';
import type { MarkName } from '../marks.ts';

/**
 * What a drawing draws with. A drawing is one routine over engine values; the screen, the SVG file, the PDF and the
 * test recorder are pens. Units are those of the drawing: ice metres with y turned down, or px, or points.
 */
export interface Pen {
  /** Enlarges the marks, never the sheet: 1 on the board, 1.75 on an A4 card. Set by `place`. */
  readonly k: number;
  /** True painted lines (5 cm) never get thinner than this, in drawing units. Set by `place`. */
  readonly thinFloor: number;
  /** All that `place` has turned so far, clockwise on the page: what must stand upright turns back by it. */
  readonly turnRad: number;
  path(mark: MarkName, draw: (sink: PathSink) => void): void;
  circle(mark: MarkName, x: number, y: number, radius: number): void;
  /** Letters stay upright whatever `place` has turned, unless `turnRad` says otherwise. */
  text(lettering: LetteringName, words: string, x: number, y: number, set?: TextSetting): void;
  /** Width of the words in drawing units. */
  measure(lettering: LetteringName, words: string, size?: number): number;
  /** A named part, so that a screen can find what was pressed: becomes class and data attributes in SVG. */
  group(name: string, data: Readonly<Record<string, string>>, draw: () => void): void;
  /**
   * A part that looks the same as long as `of` and everything in `and` are the very same values: a pen that can may show what it
   * drew of it before, another just draws.
   */
  kept(of: object, and: readonly unknown[], draw: () => void): void;
  place(where: Placing, draw: () => void): void;
  clip(outline: (sink: PathSink) => void, draw: () => void): void;
  /** A photograph in a box, in drawing units. Only pens for paper have it: a drawing that shows one does not hang on it. */
  photo?(of: Photo, box: PhotoBox): void;
}

/** A picture of a film as it is printed. */
export interface Photo {
  /** `data:image/jpeg;base64,…` */
  readonly dataUrl: string;
  readonly widthPx: number;
  readonly heightPx: number;
}

export interface PhotoBox {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

export interface PathSink {
  moveTo(x: number, y: number): void;
  lineTo(x: number, y: number): void;
  quadraticCurveTo(cx: number, cy: number, x: number, y: number): void;
  bezierCurveTo(c1x: number, c1y: number, c2x: number, c2y: number, x: number, y: number): void;
  /** Angles as on a canvas: clockwise on the page, since y points down. */
  arc(x: number, y: number, radius: number, from: number, to: number, anticlockwise?: boolean): void;
  rect(x: number, y: number, width: number, height: number): void;
  closePath(): void;
}

export interface TextSetting {
  readonly anchor?: 'start' | 'middle' | 'end';
  /** Instead of the lettering's own size. */
  readonly size?: number;
  /** Clockwise on the page, against the page and not against what `place` has turned. */
  readonly turnRad?: number;
  /** Moves the baseline down in the letters' own frame; 0.35 of the size centres capitals on the point. */
  readonly drop?: number;
}

export interface Placing {
  readonly x?: number;
  readonly y?: number;
  readonly turnRad?: number;
  readonly scale?: number;
  readonly k?: number;
  readonly thinFloor?: number;
}

export type Drawing = (pen: Pen) => void;
