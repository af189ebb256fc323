import type { Palette } from '../inks.ts';
import { BLACK_PALETTE } from '../inks.ts';
import { type Lettering, letteringOf } from '../lettering.ts';
import { type Mark, markOf } from '../marks.ts';
import { letterWidth } from './letter-widths.ts';
import { pathString, shortNumber } from './path-string.ts';
import type { Drawing, Pen, Photo, PhotoBox } from './pen.ts';
import { type PenState, placedState } from './pen-state.ts';
import { letterSize, strokeSet } from './stroke-set.ts';

export interface SvgOptions {
  /** x, y, width and height in drawing units. */
  readonly viewBox: readonly [x: number, y: number, width: number, height: number];
  /** Said to those who cannot see the picture; without it the picture is hidden from them. */
  readonly label?: string;
  readonly className?: string;
  readonly k?: number;
  readonly thinFloor?: number;
  /** Decimals of every number: 3 in ice metres, 1 in px. */
  readonly digits?: number;
  /** Must differ between pictures of one page that use `clip`. */
  readonly idPrefix?: string;
  /** Who shows the drawing turns it by this; its letters are set upright against it. */
  readonly turnRad?: number;
}

/** For the screens: colours by class and theme (app/parts/ice.css), no style attribute. */
export const svgMarkup = (draw: Drawing, options: SvgOptions): string => svgRoot(draw, options, SCREEN, '');

/** The same without its <svg>, for a screen that keeps the root in its own hand. */
export const svgParts = (draw: Drawing, options: Omit<SvgOptions, 'viewBox'>): string =>
  svgInner(draw, options, SCREEN);

/** The same in pieces, one a thing that stands beside the others, for a screen that writes only those that are new. */
export const svgPieces = (draw: Drawing, options: Omit<SvgOptions, 'viewBox'>): readonly string[] => {
  const pieces: string[] = [];
  let depth = 0;
  for (const part of written(draw, options, SCREEN)) {
    if (depth === 0) pieces.push(part);
    else pieces[pieces.length - 1] += part;
    if (part === GROUP_END) depth--;
    else if (part.startsWith('<g')) depth++;
  }
  return pieces;
};

/**
 * A file that stands alone: attributes only, black ink unless a palette is given. `fonts`: rules of a style sheet that
 * bring the letters along, for those who have not installed them.
 */
export const svgFile = (
  draw: Drawing,
  options: SvgOptions,
  palette: Palette = BLACK_PALETTE,
  fonts = '',
): string => {
  const [, , width, height] = options.viewBox;
  const size = ` width="${shortNumber(width, 3)}" height="${shortNumber(height, 3)}"`;
  return svgRoot(draw, options, attributesIn(palette), size, fonts === '' ? '' : `<style>${fonts}</style>`);
};

interface SvgDress {
  attributesOf(name: string, mark: Mark): string;
  textAttributesOf(name: string, lettering: Lettering): string;
}

const classesOf = (name: string): string => ` class="mk-${name}"`;
const textClassesOf = (name: string): string => ` class="tx-${name}"`;

const SCREEN: SvgDress = { attributesOf: classesOf, textAttributesOf: textClassesOf };

const attributesIn = (palette: Palette): SvgDress => ({
  attributesOf: (_name, mark) =>
    [
      ` fill="${mark.fill ? palette[mark.fill] : 'none'}"`,
      mark.stroke ? ` stroke="${palette[mark.stroke]}"` : '',
      mark.cap ? ` stroke-linecap="${mark.cap}"` : '',
      mark.join ? ` stroke-linejoin="${mark.join}"` : '',
      mark.opacity !== undefined ? ` opacity="${mark.opacity}"` : '',
    ].join(''),
  textAttributesOf: (_name, lettering) =>
    [
      ` font-family="${lettering.voice === 'words' ? 'Newsreader, Georgia, serif' : 'Encode Sans, Arial, sans-serif'}"`,
      ` font-weight="${lettering.weight}"`,
      lettering.stretch ? ` font-stretch="${lettering.stretch}%"` : '',
      lettering.italic ? ' font-style="italic"' : '',
      ` fill="${palette[lettering.ink]}"`,
      lettering.casing
        ? ` stroke="${palette[lettering.casing.ink]}" paint-order="stroke" stroke-linejoin="round"`
        : '',
    ].join(''),
});

const svgRoot = (draw: Drawing, options: SvgOptions, dress: SvgDress, size: string, style = ''): string => {
  const box = options.viewBox.map(value => shortNumber(value, 3)).join(' ');
  const said = options.label ? ` role="img" aria-label="${escaped(options.label)}"` : ' aria-hidden="true"';
  const named = options.className ? ` class="${escaped(options.className)}"` : '';
  return `<svg xmlns="http://www.w3.org/2000/svg"${named} viewBox="${box}"${size}${said}>${style}${svgInner(draw, options, dress)}</svg>`;
};

const svgInner = (draw: Drawing, options: Omit<SvgOptions, 'viewBox'>, dress: SvgDress): string =>
  written(draw, options, dress).join('');

/** A mark, a letter, the beginning or the end of a group each. */
const written = (draw: Drawing, options: Omit<SvgOptions, 'viewBox'>, dress: SvgDress): string[] => {
  const out: string[] = [];
  draw(new SvgPen(out, options, dress));
  return out;
};

/** What was written of a thing, and how; it goes with the thing. */
const keptParts = new WeakMap<
  object,
  { readonly asked: readonly unknown[]; readonly parts: readonly string[] }
>();

const GROUP_END = '</g>';

class SvgPen implements Pen {
  readonly #out: string[];
  readonly #dress: SvgDress;
  readonly #digits: number;
  readonly #idPrefix: string;
  #state: PenState;
  #clipCount = 0;

  constructor(out: string[], options: Omit<SvgOptions, 'viewBox'>, dress: SvgDress) {
    this.#out = out;
    this.#dress = dress;
    this.#digits = options.digits ?? 3;
    this.#idPrefix = options.idPrefix ?? 'clip';
    this.#state = { k: options.k ?? 1, thinFloor: options.thinFloor ?? 0, turnRad: options.turnRad ?? 0 };
  }

  get k(): number {
    return this.#state.k;
  }

  get thinFloor(): number {
    return this.#state.thinFloor;
  }

  get turnRad(): number {
    return this.#state.turnRad;
  }

  path: Pen['path'] = (name, draw) => {
    this.#out.push(`<path${this.#markAttributes(name)} d="${pathString(draw, this.#digits)}"/>`);
  };

  circle: Pen['circle'] = (name, x, y, radius) => {
    this.#out.push(
      `<circle${this.#markAttributes(name)} cx="${this.#n(x)}" cy="${this.#n(y)}" r="${this.#n(radius)}"/>`,
    );
  };

  text: Pen['text'] = (name, words, x, y, set = {}) => {
    const lettering: Lettering = letteringOf(name);
    const size = letterSize(name, this.#state, set.size);
    const turnRad = (set.turnRad ?? 0) - this.#state.turnRad;
    const casing = lettering.casing
      ? ` stroke-width="${this.#n((lettering.casing.width * size) / lettering.size)}"`
      : '';
    const anchor = set.anchor && set.anchor !== 'start' ? ` text-anchor="${set.anchor}"` : '';
    const drop = set.drop ? ` dy="${this.#n(set.drop)}"` : '';
    const turn =
      Math.abs(turnRad) > 1e-9 ? ` transform="rotate(${degrees(turnRad)} ${this.#n(x)} ${this.#n(y)})"` : '';
    this.#out.push(
      `<text${this.#dress.textAttributesOf(name, lettering)} x="${this.#n(x)}" y="${this.#n(y)}"${drop} font-size="${this.#n(size)}"${anchor}${casing}${turn}>${escaped(words)}</text>`,
    );
  };

  measure: Pen['measure'] = (name, words, size) =>
    letterWidth(words, letteringOf(name)) * letterSize(name, this.#state, size);

  group: Pen['group'] = (name, data, draw) => {
    const attributes = Object.entries(data)
      .map(([key, value]) => ` data-${key}="${escaped(value)}"`)
      .join('');
    this.#out.push(`<g class="${escaped(name)}"${attributes}>`);
    draw();
    this.#out.push(GROUP_END);
  };

  kept: Pen['kept'] = (of, and, draw) => {
    const asked = [...and, this.#dress, this.#digits, this.k, this.thinFloor, this.turnRad];
    const before = keptParts.get(of);
    if (before?.asked.every((each, place) => each === asked[place])) {
      for (const part of before.parts) this.#out.push(part);
      return;
    }
    const from = this.#out.length;
    const clips = this.#clipCount;
    draw();
    // The names of what is clipped differ from picture to picture.
    if (this.#clipCount === clips) keptParts.set(of, { asked, parts: this.#out.slice(from) });
  };

  place: Pen['place'] = (where, draw) => {
    const before = this.#state;
    this.#state = placedState(before, where);
    const steps = [
      where.x || where.y ? `translate(${this.#n(where.x ?? 0)} ${this.#n(where.y ?? 0)})` : '',
      where.turnRad ? `rotate(${degrees(where.turnRad)})` : '',
      where.scale !== undefined && where.scale !== 1 ? `scale(${shortNumber(where.scale, 5)})` : '',
    ].filter(step => step !== '');
    this.#out.push(steps.length > 0 ? `<g transform="${steps.join(' ')}">` : '<g>');
    draw();
    this.#out.push(GROUP_END);
    this.#state = before;
  };

  photo = (of: Photo, box: PhotoBox): void => {
    const [x, y, width, height] = [box.left, box.top, box.width, box.height].map(one => this.#n(one));
    this.#out.push(
      `<image href="${escaped(of.dataUrl)}" x="${x}" y="${y}" width="${width}" height="${height}" preserveAspectRatio="none"/>`,
    );
  };

  clip: Pen['clip'] = (outline, draw) => {
    const id = `${this.#idPrefix}-${this.#clipCount++}`;
    this.#out.push(`<clipPath id="${id}"><path d="${pathString(outline, this.#digits)}"/></clipPath>`);
    this.#out.push(`<g clip-path="url(#${id})">`);
    draw();
    this.#out.push(GROUP_END);
  };

  #markAttributes(name: Parameters<Pen['path']>[0]): string {
    const mark = markOf(name);
    const stroke = strokeSet(mark, this.#state);
    const width = mark.stroke ? ` stroke-width="${this.#n(stroke.width)}"` : '';
    const dash = stroke.dash ? ` stroke-dasharray="${stroke.dash.map(part => this.#n(part)).join(' ')}"` : '';
    return this.#dress.attributesOf(name, mark) + width + dash;
  }

  #n(value: number): string {
    return shortNumber(value, this.#digits);
  }
}

const degrees = (turnRad: number): string => shortNumber((turnRad * 180) / Math.PI, 2);

const ENTITIES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

const escaped = (words: string): string => words.replace(/[&<>"]/g, letter => ENTITIES[letter] ?? letter);
