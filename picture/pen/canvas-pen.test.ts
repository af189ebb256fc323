import { pathRound } from 'd3-path';
import { describe, expect, it } from 'vitest';
import { BLACK_PALETTE } from '../inks.ts';
import { LETTERINGS } from '../lettering.ts';
import { markOf } from '../marks.ts';
import { type CanvasContext, canvasPen } from './canvas-pen.ts';
import { drawEverything } from './everything-for-tests.ts';
import { type PenCall, recordingOf } from './recording-pen.ts';

/** A canvas that writes down what is painted, as outlines in the units of the drawing. */
function listeningCanvas() {
  const painted: { how: string; outline: string; alpha: number; width: number; ink: unknown }[] = [];
  const words: { words: string; how: string; font: string; scale: readonly [number, number] }[] = [];
  let outline = pathRound(3);
  let saved: object[] = [];
  let scale: readonly [number, number] = [1, 1];
  const set = {
    lineWidth: 1,
    globalAlpha: 1,
    fillStyle: '' as unknown,
    strokeStyle: '' as unknown,
    font: '',
  };
  const paint = (how: string, ink: unknown) =>
    painted.push({ how, outline: `${outline}`, alpha: set.globalAlpha, width: set.lineWidth, ink });
  const context = Object.assign(set, {
    save: () => (saved = [...saved, { ...set, scale }]),
    restore: () => {
      const { scale: before, ...rest } = saved.at(-1) as typeof set & { scale: readonly [number, number] };
      saved = saved.slice(0, -1);
      Object.assign(set, rest);
      scale = before;
    },
    translate: () => {},
    rotate: () => {},
    scale: (x: number, y: number) => (scale = [scale[0] * x, scale[1] * y]),
    beginPath: () => (outline = pathRound(3)),
    fill: () => paint('fill', set.fillStyle),
    stroke: () => paint('stroke', set.strokeStyle),
    clip: () => paint('clip', ''),
    setLineDash: () => {},
    fillText: (said: string) => words.push({ words: said, how: 'fill', font: set.font, scale }),
    strokeText: (said: string) => words.push({ words: said, how: 'stroke', font: set.font, scale }),
    moveTo: (x: number, y: number) => outline.moveTo(x, y),
    lineTo: (x: number, y: number) => outline.lineTo(x, y),
    quadraticCurveTo: (...to: [number, number, number, number]) => outline.quadraticCurveTo(...to),
    bezierCurveTo: (...to: [number, number, number, number, number, number]) => outline.bezierCurveTo(...to),
    arc: (...to: [number, number, number, number, number, boolean?]) => outline.arc(...to),
    rect: (...to: [number, number, number, number]) => outline.rect(...to),
    closePath: () => outline.closePath(),
  });
  return { context: context as unknown as CanvasContext, painted, words, openCount: () => saved.length };
}

const families = { words: 'Newsreader', figures: 'Encode Sans' };
const circled = (call: Extract<PenCall, { call: 'circle' }>) => {
  const path = pathRound(3);
  path.arc(call.x, call.y, call.radius, 0, 2 * Math.PI);
  return `${path}`;
};

describe('the canvas pen', () => {
  const canvas = listeningCanvas();
  drawEverything(canvasPen(canvas.context, families));
  const calls = recordingOf(drawEverything);

  it('traces the same outlines in the same order as the recorder, filled and stroked as the table says', () => {
    const wanted = calls.flatMap(call => {
      if (call.call === 'clip') return [`clip ${call.outline}`];
      if (call.call !== 'path' && call.call !== 'circle') return [];
      const outline = call.call === 'path' ? call.outline : circled(call);
      const { fill, stroke } = markOf(call.mark);
      return [...(fill ? [`fill ${outline}`] : []), ...(stroke ? [`stroke ${outline}`] : [])];
    });
    expect(wanted.length).toBeGreaterThan(100);
    expect(canvas.painted.map(({ how, outline }) => `${how} ${outline}`)).toEqual(wanted);
  });

  it('sets the same words, casing first, in the voice and weight of their lettering', () => {
    const texts = calls.filter(call => call.call === 'text');
    const wanted = texts.flatMap(call =>
      'casing' in LETTERINGS[call.lettering] ? ['stroke', 'fill'] : ['fill'],
    );
    expect(canvas.words.map(({ how }) => how)).toEqual(wanted);
    expect(new Set(canvas.words.map(({ words }) => words))).toEqual(new Set(texts.map(({ words }) => words)));
    expect(
      canvas.words.some(({ font }) => font.startsWith('italic 400 ') && font.endsWith('Newsreader')),
    ).toBe(true);
    const narrowed = canvas.words.filter(({ scale }) => scale[0] < scale[1] - 1e-9);
    expect(narrowed.length).toBeGreaterThan(5);
  });

  it('uses no ink beyond the palette and leaves the canvas as it found it', () => {
    const inks = new Set<unknown>(Object.values(BLACK_PALETTE));
    for (const { how, ink, alpha } of canvas.painted) {
      if (how !== 'clip') expect(inks).toContain(ink);
      expect(alpha).toBeGreaterThan(0);
    }
    expect(canvas.openCount()).toBe(0);
  });

  it('grows marks by k', () => {
    const widthAt = (k: number) => {
      const one = listeningCanvas();
      canvasPen(one.context, families, BLACK_PALETTE, { k }).circle('skate', 0, 0, 1);
      return one.painted[0]!.width;
    };
    expect(widthAt(2)).toBeCloseTo(2 * widthAt(1), 9);
  });
});
