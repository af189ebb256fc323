import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  breakCount,
  clockSecondsAt,
  isOver,
  openBreaks,
  standsOf,
  watchSecondsOf,
  withinBreaks,
} from './live-breaks.ts';

const START = Date.parse('2026-11-28T18:00:00Z');
const at = (s: number) => new Date(START + 1000 * s).toISOString();
const partOf = (...breaks: readonly (readonly [number, (number | undefined)?])[]) =>
  ({
    breaks: Object.fromEntries(
      breaks.map(([from, to], i) => [
        `b${i}`,
        { stoppedAt: at(from), ...(to === undefined ? {} : { goesOnAt: at(to) }) },
      ]),
    ),
  }) as never;
const clock = (part: never, s: number) => clockSecondsAt(part, START, START + 1000 * s);

describe('a live clock that is stopped in the breaks', () => {
  it('stands from the press to the press, and goes on from there', () => {
    const part = partOf([1200, 2100]);
    expect([600, 1200, 1500, 2100, 2160].map(s => clock(part, s))).toEqual([600, 1200, 1200, 1200, 1260]);
    expect(clock(partOf([1200]), 9000)).toBe(1200);
    expect(openBreaks(partOf([10, 20], [30]))).toEqual(['b1']);
  });

  it('stands for good when the game is over, which is no break', () => {
    const over = {
      breaks: {
        b0: { stoppedAt: at(1200), goesOnAt: at(2100) },
        b1: { stoppedAt: at(3300), isOver: true },
      },
    } as never;
    expect([isOver(over), breakCount(over), clock(over, 90_000)]).toEqual([true, 1, 2400]);
    // It went on after all: then it was a break.
    const taken = { breaks: { b0: { stoppedAt: at(1200), goesOnAt: at(2100), isOver: true } } } as never;
    expect([isOver(taken), breakCount(taken), clock(taken, 2160)]).toEqual([false, 1, 1260]);
    expect([isOver(partOf([1200])), breakCount(partOf([1200]))]).toEqual([false, 1]);
  });

  it('keeps the seconds of a moment on its own side of every break', () => {
    const within = (part: never, filmTimeS: number, fromS: number, toS: number) => {
      const cut = withinBreaks(part, START, { filmTimeS, fromS, toS });
      return [cut.fromS, cut.toS];
    };
    // Marked a second before the break: the six seconds after it end where the clock was stopped.
    expect(within(partOf([1200, 2100]), 1199, 1195, 1205)).toEqual([1195, 1200]);
    // Marked while it stands, and two seconds after it went on.
    expect(within(partOf([1200]), 1200, 1196, 1206)).toEqual([1196, 1200]);
    expect(within(partOf([1200, 2100]), 1202, 1198, 1208)).toEqual([1200, 1208]);
    // The second break comes at 1500 of the clock; while it runs nothing is cut.
    expect(within(partOf([1200, 2100], [2400]), 1499, 1190, 1600)).toEqual([1200, 1500]);
    expect(within(partOf(), 600, 590, 610)).toEqual([590, 610]);
    // A moment that was not given seconds gets none.
    expect(withinBreaks(partOf([1200]), START, { filmTimeS: 1199 })).toEqual({ filmTimeS: 1199 });
  });

  it('never cuts a moment away from its own picture, nor lets it span a break', () => {
    const time = fc.integer({ min: 0, max: 9000 });
    fc.assert(
      fc.property(
        fc.array(fc.tuple(time, time), { maxLength: 5 }),
        time,
        fc.nat(60),
        fc.nat(60),
        (breaks, s, beforeS, afterS) => {
          const part = partOf(...breaks);
          const filmTimeS = clock(part, s);
          const cut = withinBreaks(part, START, {
            filmTimeS,
            fromS: Math.max(0, filmTimeS - beforeS),
            toS: filmTimeS + afterS,
          });
          expect(cut.fromS).toBeLessThanOrEqual(filmTimeS);
          expect(cut.toS).toBeGreaterThanOrEqual(filmTimeS);
          for (const { fromMs } of standsOf(part)) {
            const stopS = clockSecondsAt(part, START, fromMs);
            expect(cut.fromS < stopS && stopS < cut.toS).toBe(false);
          }
        },
      ),
    );
  });

  it('counts a break once that two people stopped it for', () => {
    expect(standsOf(partOf([100, 200], [150, 260], [400, 380]))).toHaveLength(1);
    expect(clock(partOf([100, 200], [150, 260]), 300)).toBe(140);
  });

  it('never runs back, nor faster than a second a second; and the watch finds each clock time again', () => {
    const time = fc.integer({ min: 0, max: 9000 });
    fc.assert(
      fc.property(
        fc.array(fc.tuple(time, fc.option(time, { nil: undefined })), { maxLength: 6 }),
        fc.array(time, { minLength: 2, maxLength: 12 }),
        (breaks, times) => {
          const part = partOf(...breaks);
          const sorted = [...times].sort((a, b) => a - b);
          // By counting the seconds in which no break stands.
          const isStopped = (s: number) =>
            breaks.some(([from, to]) => s >= from && s < (to ?? Number.POSITIVE_INFINITY));
          for (const [i, s] of sorted.entries()) {
            let counted = 0;
            for (let each = 0; each < s; each++) if (!isStopped(each)) counted++;
            expect(clock(part, s)).toBe(counted);
            const watchS = watchSecondsOf(part, START, counted);
            expect(watchS).toBeLessThanOrEqual(s);
            expect(clock(part, watchS)).toBe(counted);
            if (i > 0) expect(clock(part, s)).toBeGreaterThanOrEqual(clock(part, sorted[i - 1]!));
          }
        },
      ),
    );
  });
});
