import type { Pen } from '../pen/pen.ts';
import { drawRule } from './rule.ts';

/** How often the wanted comes at each value that was tried. Rates 0 to 1; values in the unit they are shown in. */
export interface TuneCurve {
  readonly low: number;
  readonly high: number;
  readonly points: readonly {
    readonly value: number;
    readonly rate: number;
    readonly lower: number;
    readonly upper: number;
    /** Values between this and the one before have no rate: the curve is not drawn across them. */
    readonly afterGap?: boolean;
  }[];
  readonly wantedRatio: number;
  /** As the drill has it. */
  readonly now: number;
  readonly answer?: number;
  /** With the last figure of the axis. */
  readonly unit: string;
}

export const TUNE_CURVE_HEIGHT_PX = 138;
const LEFT_PX = 26;
const RIGHT_PX = 8;
const TOP_PX = 10;
const RULE_Y_PX = 116;
const TALL_PX = RULE_Y_PX - 4 - TOP_PX;

export const tuneX = (curve: TuneCurve, width: number, value: number): number =>
  LEFT_PX + ((value - curve.low) / (curve.high - curve.low)) * (width - LEFT_PX - RIGHT_PX);

export const tuneY = (rate: number): number => TOP_PX + (1 - rate) * TALL_PX;

/** The rate at this height of the drawing, held between 0 and 1. */
export const tuneRateAt = (y: number): number => Math.min(1, Math.max(0, 1 - (y - TOP_PX) / TALL_PX));

/** Curve with its band, the wanted rate dotted, where it stands now, and the answer. Px. */
export const drawTuneCurve = (pen: Pen, curve: TuneCurve, width: number): void => {
  const at = (value: number): number => tuneX(curve, width, value);
  for (const tenth of [0, 5, 10]) {
    pen.text('axis', `${tenth}`, LEFT_PX - 8, tuneY(tenth / 10), { anchor: 'end', drop: 4 });
  }
  const { points } = curve;
  for (const stretch of stretchesOf(points)) {
    if (stretch.length > 1)
      pen.path('band', sink => {
        stretch.forEach((point, i) => {
          if (i === 0) sink.moveTo(at(point.value), tuneY(point.upper));
          else sink.lineTo(at(point.value), tuneY(point.upper));
        });
        for (const point of [...stretch].reverse()) sink.lineTo(at(point.value), tuneY(point.lower));
        sink.closePath();
      });
    pen.path('pooled', sink => {
      // One value alone is a short stroke.
      sink.moveTo(at(stretch[0]!.value) - (stretch.length > 1 ? 0 : ALONE_PX), tuneY(stretch[0]!.rate));
      for (const point of stretch.slice(1)) sink.lineTo(at(point.value), tuneY(point.rate));
      if (stretch.length === 1) sink.lineTo(at(stretch[0]!.value) + ALONE_PX, tuneY(stretch[0]!.rate));
    });
  }
  pen.path('wanted', sink => {
    sink.moveTo(LEFT_PX, tuneY(curve.wantedRatio));
    sink.lineTo(width - RIGHT_PX, tuneY(curve.wantedRatio));
  });
  if (curve.answer !== undefined) {
    const x = at(curve.answer);
    pen.path('playLine', sink => {
      sink.moveTo(x, tuneY(curve.wantedRatio));
      sink.lineTo(x, RULE_Y_PX);
    });
  }
  if (points.length > 1) pen.circle('tuneNow', at(curve.now), tuneY(rateAt(points, curve.now)), 5);
  drawValues(pen, curve, width);
};

const ALONE_PX = 3;

/** The points in runs that have a rate throughout. */
const stretchesOf = (points: TuneCurve['points']): readonly TuneCurve['points'][] => {
  const stretches: TuneCurve['points'][number][][] = [];
  for (const point of points) {
    if (stretches.length === 0 || point.afterGap === true) stretches.push([point]);
    else stretches.at(-1)!.push(point);
  }
  return stretches;
};

/** On the line between the two points beside it. */
const rateAt = (points: TuneCurve['points'], value: number): number => {
  const after = points.findIndex(point => point.value >= value);
  if (after < 0) return points.at(-1)!.rate;
  const b = points[after]!;
  const a = points[after - 1] ?? b;
  const share = b.value > a.value ? (value - a.value) / (b.value - a.value) : 0;
  return a.rate + share * (b.rate - a.rate);
};

const drawValues = (pen: Pen, curve: TuneCurve, width: number): void => {
  const at = (value: number): number => tuneX(curve, width, value);
  const step = evenStep((curve.high - curve.low) / 9);
  const digits = Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
  const first = Math.ceil(curve.low / step - 1e-9);
  const last = Math.floor(curve.high / step + 1e-9);
  const startPx = at(first * step);
  const figures = [];
  for (let index = first; index <= last; index++) {
    const value = index * step;
    const words = `${value < 0 && index !== 0 ? '\u2212' : ''}${Math.abs(value).toFixed(digits)}`;
    figures.push({
      at: at(value) - startPx,
      words: index === last && curve.unit !== '' ? `${words}\u2009${curve.unit}` : words,
    });
  }
  drawRule(pen, {
    x: startPx,
    y: RULE_Y_PX,
    width: at(last * step) - startPx,
    each: at(step) - at(0),
    figures,
  });
};

/** The next of 1, 2, 5, 10 … that is no smaller. */
const evenStep = (atLeast: number): number => {
  const ten = 10 ** Math.floor(Math.log10(atLeast));
  return ten * ([1, 2, 5, 10].find(each => each * ten >= atLeast - 1e-12) ?? 10);
};
