import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BLACK_PALETTE } from '../inks.ts';
import { LETTERINGS, type LetteringName } from '../lettering.ts';
import { MARKS, type MarkName } from '../marks.ts';
import { drawEverything } from './everything-for-tests.ts';
import { shortNumber } from './path-string.ts';
import { svgFile, svgMarkup, svgParts, svgPieces } from './svg-pen.ts';

const BOX = { viewBox: [0, 0, 10, 10] } as const;

describe('the SVG pen of the screens', () => {
  it('needs no style attribute, no script and no event, so that a strict content policy holds', () => {
    const markup = svgMarkup(drawEverything, BOX);
    expect(markup).not.toMatch(/\sstyle=|<script|\son[a-z]+=|<style/);
    for (const name of Object.keys(MARKS)) expect(markup).toContain(`class="mk-${name}"`);
    for (const name of Object.keys(LETTERINGS)) expect(markup).toContain(`class="tx-${name}"`);
  });

  it('gives the same drawing in pieces, each of them one whole element', () => {
    const pieces = svgPieces(drawEverything, {});
    expect(pieces.join('')).toBe(svgParts(drawEverything, {}));
    expect(pieces.length).toBeGreaterThan(1);
    for (const piece of pieces) {
      const [, name] = /^<(\w+)/.exec(piece) ?? [];
      expect(piece.endsWith('/>') || piece.endsWith(`</${name}>`), piece.slice(0, 80)).toBe(true);
      const groups = (piece.match(/<g[\s>]/g) ?? []).length;
      expect((piece.match(/<\/g>/g) ?? []).length).toBe(groups);
    }
  });

  it('keeps letters upright in a drawing that is turned by who shows it, as in one that turns itself', () => {
    const words = (pen: Parameters<typeof drawEverything>[0]) => pen.text('order', '1', 3, 4);
    const turned = svgParts(pen => pen.place({ turnRad: -Math.PI / 2 }, () => words(pen)), {});
    const [own] = svgPieces(words, { turnRad: -Math.PI / 2 });
    expect(turned).toBe(`<g transform="rotate(-90)">${own}</g>`);
  });

  it('lets nobody write markup with words', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), words => {
        const parts = svgParts(
          pen => pen.group('spot', { spot: words }, () => pen.text('label', words, 0, 0)),
          {},
        );
        const tags = parts.match(/<\/?[a-z]+/g);
        expect(tags).toEqual(['<g', '<text', '</text', '</g']);
        expect(parts.match(/"/g)?.length).toBe(
          2 * (parts.match(/=/g)!.length - (words.match(/=/g)?.length ?? 0) * 2),
        );
      }),
    );
  });

  it('sets letters upright whatever the drawing is turned by', () => {
    const turned = svgParts(
      pen =>
        pen.place({ turnRad: -Math.PI / 2 }, () =>
          pen.place({ turnRad: 0.5 }, () => pen.text('label', 'F1', 2, 3)),
        ),
      {},
    );
    const turns = [...turned.matchAll(/rotate\((-?[0-9.]+)/g)].map(match => Number(match[1]));
    expect(turns).toHaveLength(3);
    expect(turns.reduce((sum, turn) => sum + turn, 0)).toBeCloseTo(0, 1);
  });

  it('grows marks by k and leaves true lines true, down to the floor of painted lines', () => {
    const widths = (k: number, thinFloor: number) =>
      ['skate', 'blueLine', 'redPaint'].map(mark => {
        const parts = svgParts(pen => pen.circle(mark as MarkName, 0, 0, 1), { k, thinFloor });
        return Number(/stroke-width="([0-9.]+)"/.exec(parts)?.[1]);
      });
    expect(widths(1, 0)).toEqual([0.16, 0.305, 0.051]);
    expect(widths(2, 0.12)).toEqual([0.32, 0.305, 0.12]);
  });
});

describe('the file pen', () => {
  it('holds only black, white and greys: it survives a photocopier', () => {
    const colours = svgFile(drawEverything, BOX).match(/#[0-9a-f]{6}/g) ?? [];
    expect(colours.length).toBeGreaterThan(100);
    for (const colour of colours) expect(colour).toMatch(/^#([0-9a-f]{2})\1\1$/);
    expect(new Set(Object.values(BLACK_PALETTE)).size).toBeGreaterThan(3);
  });

  it('writes every number short, and never minus nothing', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e4, max: 1e4, noNaN: true }), value => {
        const text = shortNumber(value, 3);
        expect(Math.abs(Number(text) - value)).toBeLessThanOrEqual(0.0005 + 1e-9);
        expect(text).not.toMatch(/\.\d*0$|\.$|^-0$/);
      }),
    );
  });
});

describe('the table of letters', () => {
  it('gives every lettering a size that can be read: 11 px on an axis and no less, 6.5 pt on paper', () => {
    for (const [name, lettering] of Object.entries(LETTERINGS) as [
      LetteringName,
      (typeof LETTERINGS)[LetteringName],
    ][]) {
      if (name.startsWith('card')) expect(lettering.size, name).toBeGreaterThanOrEqual(6.5);
      else if (lettering.size > 2) expect(lettering.size, name).toBeGreaterThanOrEqual(11);
    }
  });
});
