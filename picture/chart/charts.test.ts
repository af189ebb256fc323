import { describe, expect, it } from 'vitest';
import { recordingOf } from '../pen/recording-pen.ts';
import { drawChange } from './change-bar.ts';
import { drawLedgerRow, LEDGER_RISE_PX } from './ledger-row.ts';
import { drawPulse, type PulseMoment } from './pulse.ts';
import { drawRule } from './rule.ts';

const rectOf = (outline: string) => {
  const [x = 0, y = 0, width = 0, height = 0] =
    /M(-?[\d.]+),(-?[\d.]+)h(-?[\d.]+)v(-?[\d.]+)/.exec(outline)?.slice(1).map(Number) ?? [];
  return { x, y, width, height };
};

describe('the pulse', () => {
  const moment = (outcome: PulseMoment['outcome'], cost: number): PulseMoment => ({
    atMinute: 10,
    outcome,
    cost,
    chosen: true,
  });
  const draw = (...moments: readonly PulseMoment[]) =>
    recordingOf(pen => drawPulse(pen, { minutes: 60, periods: [], moments }, 912));

  it('stands done above the line and missed below it, taller the more it cost', () => {
    const heights = [0.2, 0.9].map(cost => {
      const calls = draw(moment('done', cost), moment('missed', cost));
      const of = (mark: string) =>
        calls.flatMap(call => (call.call === 'path' && call.mark === mark ? [rectOf(call.outline)] : []))[0]!;
      const done = of('pulseDone');
      const missed = of('pulseMissed');
      expect(done.y + done.height).toBeCloseTo(missed.y, 3);
      return done.height;
    });
    expect(heights[1]!).toBeGreaterThan(heights[0]!);
  });

  it('draws what could not be seen as a ring on the line, with no height', () => {
    const calls = draw(moment('unseen', 1));
    expect(calls.some(call => call.call === 'circle' && call.mark === 'pulseUnseen')).toBe(true);
    expect(calls.some(call => call.call === 'path' && call.mark.startsWith('pulse'))).toBe(false);
  });
});

describe('a row of the ledger', () => {
  it('puts rate 1 its rise above rate 0, and whiskers from low to high', () => {
    const calls = recordingOf(pen =>
      drawLedgerRow(
        pen,
        { games: [{ day: 5, rate: 1, low: 0.5, high: 1 }], practices: [{ day: 6, minutes: 10 }] },
        { left: 0, right: 100, fromDay: 0, toDay: 10, base: 200 },
      ),
    );
    const dot = calls.find(call => call.call === 'circle' && call.mark === 'gameDot');
    expect(dot).toMatchObject({ x: 50, y: 200 - LEDGER_RISE_PX });
    const whisker = calls.find(call => call.call === 'path' && call.mark === 'whisker');
    expect(whisker).toMatchObject({ outline: `M50,${200 - LEDGER_RISE_PX}L50,${200 - LEDGER_RISE_PX / 2}` });
  });

  it('ends a change that goes beyond its axis in an arrow at the edge, with the figure', () => {
    const place = { zeroX: 86, pxAPoint: 1, y: 40, spanPoints: 60 };
    const calls = recordingOf(pen =>
      drawChange(pen, { points: -40, low: -100, high: 12, verdict: 'cannotTell' }, place),
    );
    const outlines = calls.flatMap(call => (call.call === 'path' ? [call.outline] : []));
    for (const outline of outlines)
      for (const [, x] of outline.matchAll(/[ML](-?[\d.]+),/g)) {
        expect(Number(x)).toBeGreaterThanOrEqual(26);
        expect(Number(x)).toBeLessThanOrEqual(146);
      }
    expect(outlines).toContain('M33,35L26,40L33,45');
    expect(calls.flatMap(call => (call.call === 'text' ? [call.words] : []))).toEqual(['\u2212100']);
    const within = recordingOf(pen =>
      drawChange(pen, { points: 5, low: -5, high: 15, verdict: 'cannotTell' }, place),
    );
    expect(within.filter(call => call.call === 'text')).toEqual([]);
  });

  it('tells the verdicts apart by shape: solid, open, broken', () => {
    const marks = (['movedUp', 'noSignYet', 'cannotTell'] as const).map(verdict =>
      recordingOf(pen =>
        drawChange(pen, { points: 5, low: -5, high: 15, verdict }, { zeroX: 0, pxAPoint: 1, y: 0 }),
      ).flatMap(call => (call.call === 'path' || call.call === 'circle' ? [call.mark] : [])),
    );
    expect(new Set(marks.map(each => each.join())).size).toBe(3);
  });
});

describe('the graduated rule', () => {
  it('takes full and open segments by turns and ends where it should', () => {
    const segments = recordingOf(pen => drawRule(pen, { x: 10, y: 0, width: 35, each: 10 })).flatMap(call =>
      call.call === 'path' ? [{ mark: call.mark, ...rectOf(call.outline) }] : [],
    );
    expect(segments.map(segment => segment.mark)).toEqual(['ruleFull', 'ruleOpen', 'ruleFull', 'ruleOpen']);
    expect(segments[3]).toMatchObject({ x: 40, width: 5 });
  });
});
