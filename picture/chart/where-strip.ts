import type { Lengths } from '@icewright/engine';
import type { Pen } from '../pen/pen.ts';
import { drawRule } from './rule.ts';

/** How often something came at each place along the sheet, under the ice and on its scale. Metres along x. */
export interface WhereStrip {
  /** x at the left and right edge of the drawing. */
  readonly fromXM: number;
  readonly toXM: number;
  /** The rule runs between these. */
  readonly minXM: number;
  readonly maxXM: number;
  readonly yesXM: readonly number[];
  readonly otherXM: readonly number[];
  /** The line it was asked at, and its words. */
  readonly lineXM?: number;
  readonly lengths?: Lengths;
}

export const WHERE_STRIP_HEIGHT_PX = 74;
const BARS_PX = 46;
const RULE_Y_PX = 51;
const BIN_M = 1;
const FEET_IN_A_METRE = 1 / 0.3048; // exact by definition of the foot

/** Full bars: in time. Open bars upon them: otherwise. Px. */
export const drawWhereStrip = (pen: Pen, strip: WhereStrip, width: number): void => {
  const pxOf = (xM: number): number => ((xM - strip.fromXM) / (strip.toXM - strip.fromXM)) * width;
  const yes = binsOf(strip.yesXM);
  const other = binsOf(strip.otherXM);
  const bins = [...new Set([...yes.keys(), ...other.keys()])].sort((a, b) => a - b);
  const most = Math.max(1, ...bins.map(bin => (yes.get(bin) ?? 0) + (other.get(bin) ?? 0)));
  if (strip.lineXM !== undefined) {
    const x = pxOf(strip.lineXM);
    pen.path('axisLine', sink => {
      sink.moveTo(x, 0);
      sink.lineTo(x, RULE_Y_PX);
    });
  }
  for (const bin of bins) {
    const left = pxOf(bin * BIN_M) + 0.5;
    const barWidth = Math.max(1, pxOf((bin + 1) * BIN_M) - left - 1);
    const yesPx = ((yes.get(bin) ?? 0) / most) * BARS_PX;
    const otherPx = ((other.get(bin) ?? 0) / most) * BARS_PX;
    if (yesPx > 0) {
      pen.path('whereYes', sink => sink.rect(left, RULE_Y_PX - 1 - yesPx, barWidth, yesPx));
    }
    if (otherPx > 0) {
      pen.path('whereOther', sink =>
        sink.rect(left + 0.5, RULE_Y_PX - 1 - yesPx - otherPx, Math.max(1, barWidth - 1), otherPx),
      );
    }
  }
  drawAxis(pen, strip, pxOf);
};

const binsOf = (places: readonly number[]): ReadonlyMap<number, number> => {
  const bins = new Map<number, number>();
  for (const xM of places) {
    const bin = Math.floor(xM / BIN_M);
    bins.set(bin, (bins.get(bin) ?? 0) + 1);
  }
  return bins;
};

/** Segments of 5 m from the middle of the ice, or of 20 ft; a figure at every second one where there is room. */
const drawAxis = (pen: Pen, strip: WhereStrip, pxOf: (xM: number) => number): void => {
  const isFeet = strip.lengths === 'feet';
  const eachM = isFeet ? 20 / FEET_IN_A_METRE : 5;
  const first = Math.ceil(strip.minXM / eachM);
  const last = Math.floor(strip.maxXM / eachM);
  const startPx = pxOf(first * eachM);
  const eachPx = pxOf(eachM) - pxOf(0);
  const every = eachPx >= 34 ? 1 : eachPx >= 17 ? 2 : 4;
  const figures = [];
  for (let index = first; index <= last; index++) {
    if (index % every !== 0) continue;
    const value = Math.round(index * (isFeet ? 20 : 5));
    const sign = value > 0 ? '+' : value < 0 ? '\u2212' : '';
    const unit = index + every > last ? (isFeet ? '\u2009ft' : '\u2009m') : '';
    figures.push({ at: pxOf(index * eachM) - startPx, words: `${sign}${Math.abs(value)}${unit}` });
  }
  drawRule(pen, {
    x: startPx,
    y: RULE_Y_PX,
    width: pxOf(last * eachM) - startPx,
    each: eachPx,
    figures,
  });
};
