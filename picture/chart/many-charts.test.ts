import { describe, expect, it } from 'vitest';
import { drawMany } from '../drill/draw-many.ts';
import { recordingOf } from '../pen/recording-pen.ts';
import { drawTuneCurve, tuneRateAt, tuneX, tuneY } from './tune-curve.ts';
import { drawWhereStrip, type WhereStrip } from './where-strip.ts';

const strip = (more: Partial<WhereStrip>): WhereStrip => ({
  fromXM: -31,
  toXM: 31,
  minXM: -30,
  maxXM: 30,
  yesXM: [],
  otherXM: [],
  ...more,
});
const rects = (calls: ReturnType<typeof recordingOf>, mark: string) =>
  calls.flatMap(call => {
    if (call.call !== 'path' || call.mark !== mark) return [];
    const [x = 0, y = 0, width = 0, height = 0] =
      /M(-?[\d.]+),(-?[\d.]+)h(-?[\d.]+)v(-?[\d.]+)/.exec(call.outline)?.slice(1).map(Number) ?? [];
    return [{ x, y, width, height }];
  });

describe('where something came, along the sheet', () => {
  it('stands over its own metre of ice, taller the more often, the other kind upon it', () => {
    const calls = recordingOf(pen =>
      drawWhereStrip(pen, strip({ yesXM: [0.2, 0.4, 0.9, -9.5], otherXM: [0.5] }), 620),
    );
    const [first, second] = rects(calls, 'whereYes');
    expect(first!.x).toBeGreaterThanOrEqual(210);
    expect(first!.x + first!.width).toBeLessThanOrEqual(220);
    expect(second!.x).toBeGreaterThanOrEqual(310);
    expect(second!.height).toBeCloseTo(3 * first!.height, 1);
    const [other] = rects(calls, 'whereOther');
    expect(other!.y + other!.height).toBeCloseTo(second!.y, 1);
  });

  it('has its figures in feet when lengths are', () => {
    const words = (lengths: 'metres' | 'feet') =>
      recordingOf(pen => drawWhereStrip(pen, strip({ lengths }), 620)).flatMap(call =>
        call.call === 'text' ? [call.words] : [],
      );
    expect(words('metres')).toContain('+30\u2009m');
    expect(words('feet')).toContain('+80\u2009ft');
  });
});

describe('the curve of a tuned quantity', () => {
  const curve = {
    low: 0,
    high: 10,
    points: [0, 5, 10].map(value => ({ value, rate: value / 10, lower: 0, upper: 1 })),
    wantedRatio: 0.6,
    now: 2.5,
    unit: 'm',
  };

  it('puts where it stands now on the curve', () => {
    const calls = recordingOf(pen => drawTuneCurve(pen, curve, 400));
    const now = calls.find(call => call.call === 'circle' && call.mark === 'tuneNow');
    if (now?.call !== 'circle') throw new Error('nowhere');
    expect(now.x).toBeCloseTo(tuneX(curve, 400, 2.5), 1);
    expect(now.y).toBeCloseTo(tuneY(0.25), 1);
  });

  it('reads a height back as the rate that lies there', () => {
    for (const rate of [0, 0.3, 0.6, 1]) expect(tuneRateAt(tuneY(rate))).toBeCloseTo(rate, 12);
    expect(tuneRateAt(-50)).toBe(1);
    expect(tuneRateAt(500)).toBe(0);
  });
});

describe('places of many reps on the ice', () => {
  it('are all drawn, however many, in few paths', () => {
    const yes = Array.from({ length: 100 }, (_, i) => ({ xM: i / 10, yM: 0 }));
    const calls = recordingOf(pen =>
      drawMany(pen, { yes, other: [], received: [], cutOff: [], missed: [] }),
    ).flatMap(call => (call.call === 'path' && call.mark === 'manyYes' ? [call.outline] : []));
    expect(calls.length).toBeLessThan(10);
    expect(calls.join('').match(/M/g)?.length).toBe(100);
  });
});
