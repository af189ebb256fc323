import type { Pen } from '../pen/pen.ts';
import type { SheetPoint } from './sheet-point.ts';

const METRES = { each: 2.5, count: 4, figures: [0, 5, 10], unit: 'm' } as const;
const FOOT_M = 0.3048;
const FEET = { each: 10 * FOOT_M, count: 3, figures: [0, 10, 20, 30], unit: 'ft' } as const;
const HEIGHT_M = 0.32;

/** Metres above, feet below, on one graduated rule. The point is its upper left corner. */
export const drawScaleBar = (pen: Pen, at: SheetPoint): void =>
  pen.group('scalebar', {}, () => {
    drawSegments(pen, at, METRES.each, METRES.count, 0);
    drawSegments(pen, { x: at.x, y: at.y + HEIGHT_M }, FEET.each, FEET.count, 1);
    for (const figure of METRES.figures) {
      pen.text('scale', withUnit(figure, METRES), at.x + figure, at.y - 0.35, { anchor: 'middle' });
    }
    for (const figure of FEET.figures) {
      pen.text('scale', withUnit(figure, FEET), at.x + figure * FOOT_M, at.y + 1.62, { anchor: 'middle' });
    }
  });

const drawSegments = (pen: Pen, at: SheetPoint, each: number, count: number, first: 0 | 1): void => {
  for (let index = 0; index < count; index++) {
    pen.path((index + first) % 2 === 0 ? 'scaleFull' : 'scaleOpen', sink =>
      sink.rect(at.x + index * each, at.y, each, HEIGHT_M),
    );
  }
};

const withUnit = (
  figure: number,
  scale: { readonly figures: readonly number[]; readonly unit: string },
): string => (figure === scale.figures[scale.figures.length - 1] ? `${figure} ${scale.unit}` : `${figure}`);
