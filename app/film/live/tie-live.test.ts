import type { Game, Moment } from '@icewright/book';
import type { Id } from '@icewright/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { frameIndexOf } from '../frame-index.ts';
import { filmClockOf, tiedTo } from './tie-live.ts';

const live = 'live' as Id<'film'>;
const film = 'film' as Id<'film'>;
// Ten minutes at 25 pictures a second.
const index = frameIndexOf(
  Array.from({ length: 15_000 }, (_, i) => i / 25),
  1 / 25,
);
const gameOf = (timesS: readonly number[], films: object = {}): Game =>
  ({
    films,
    moments: Object.fromEntries(
      timesS.map((filmTimeS, i) => [
        `m${i}`,
        { film: live, filmTimeS, frameIndex: 0, fromS: filmTimeS - 4, toS: filmTimeS + 2 } as Moment,
      ]),
    ),
    follows: {
      f0: { moment: 'm0', step: 'regained', filmTimeS: (timesS[0] ?? 0) + 3, frameIndex: 0 },
    },
  }) as unknown as Game;

describe('tying what was marked live to the film', () => {
  it('keeps what lay between the moments, and puts each on the frame that is shown then', () => {
    const time = fc.integer({ min: 0, max: 7200 });
    fc.assert(
      fc.property(
        fc.array(time, { minLength: 1, maxLength: 12 }),
        fc.integer({ min: -7200, max: 600 }),
        (timesS, offsetS) => {
          const tied = tiedTo(gameOf(timesS), live, film, index, s => s + offsetS);
          expect(tied.moments.length + tied.outsideCount).toBe(timesS.length);
          for (const [id, one] of tied.moments) {
            const before = timesS[Number(id.slice(1))]!;
            expect(one.filmTimeS).toBe(before + offsetS);
            expect(one.film).toBe(film);
            expect(index.timesS[one.frameIndex]!).toBeLessThanOrEqual(one.filmTimeS + 1e-6);
            expect(one.fromS).toBeGreaterThanOrEqual(0);
            expect(one.toS).toBeLessThanOrEqual(index.endS);
          }
        },
      ),
    );
  });

  it('takes what came of a moment along with it', () => {
    const tied = tiedTo(gameOf([100]), live, film, index, s => s - 40);
    expect(tied.follows).toEqual([
      ['f0', { moment: 'm0', step: 'regained', filmTimeS: 63, frameIndex: 1575 }],
    ]);
  });

  it('brings nothing of the next period along with a moment marked just before the break', () => {
    const hash = 'live:2026-11-28T18:00:00.000Z';
    const breaks = { b: { stoppedAt: '2026-11-28T18:01:40Z', goesOnAt: '2026-11-28T18:10:00Z' } };
    // Four seconds before and two after each; the clock stood at 100 s.
    const tied = tiedTo(gameOf([99, 101, 110], { live: { hash, breaks } }), live, film, index, s => s + 10);
    expect(tied.moments.map(([, { fromS, toS }]) => [fromS, toS])).toEqual([
      [105, 110],
      [110, 113],
      [116, 122],
    ]);
  });

  it('goes by the clock where the camera stopped in the break, and by the watch where it ran on', () => {
    const begin = '2026-11-28T18:00:00.000Z';
    const part = {
      hash: `live:${begin}`,
      // A period of 40 minutes by the watch, a break of 15.
      breaks: { b: { stoppedAt: '2026-11-28T18:40:00Z', goesOnAt: '2026-11-28T18:55:00Z' } },
    } as never;
    const tie = { clockS: 600, filmS: 700 };
    const [first, second] = [1200, 3000];
    expect([first, second].map(filmClockOf(part, tie, false))).toEqual([1300, 3100]);
    expect([first, second].map(filmClockOf(part, tie, true))).toEqual([1300, 4000]);
    // Tied by one of the second period the first lies as much earlier.
    expect(filmClockOf(part, { clockS: second, filmS: 4000 }, true)(first)).toBe(1300);
  });
});
