import { describe, expect, it } from 'vitest';
import { overFilmOf } from '../marks/over-film-of.ts';
import { flashesS, untiedCount } from './reel-films.ts';
import { AS_SHOWN, chosenOf, movedBy, orderOf, withOrWithout } from './reel-order.ts';
import { reelPlanOf } from './reel-plan.ts';
import { leftWords } from './reel-words.ts';

const shown = ['a', 'b', 'c'];

describe('the order of a reel', () => {
  it('is as shown, until one is moved, and those at the ends stay', () => {
    expect(chosenOf(shown, AS_SHOWN)).toEqual(shown);
    const moved = movedBy(shown, AS_SHOWN, 'c', -1);
    expect(orderOf(shown, moved)).toEqual(['a', 'c', 'b']);
    expect(orderOf(shown, movedBy(shown, AS_SHOWN, 'a', -1))).toEqual(shown);
    // One that is filtered away meanwhile is not missed, one that comes is at the end.
    expect(orderOf(['b', 'c', 'd'], moved)).toEqual(['c', 'b', 'd']);
  });

  it('leaves out and takes back', () => {
    const without = withOrWithout(AS_SHOWN, 'b');
    expect(chosenOf(shown, without)).toEqual(['a', 'c']);
    expect(chosenOf(shown, withOrWithout(without, 'b'))).toEqual(shown);
  });
});

describe('what is said of the time and the size that are left', () => {
  it('follows from what is done: the same speed, the same size for a second', () => {
    // A quarter of a minute's reel in 10 s at 2 MB: thirty more seconds, eight megabytes in all.
    expect(leftWords({ atS: 15, byteCount: 2_000_000 }, 60, 10)).toBe('about 30 s more, 8 MB in all');
    expect(leftWords({ atS: 1, byteCount: 1000 }, 600, 1)).toBe('about 10 min more, 1 MB in all');
    expect(leftWords({ atS: 0.1, byteCount: 10 }, 60, 0.4)).toBe('');
  });
});

describe('marks of a reel', () => {
  it('are missed in pictures that nothing ties to the ice', () => {
    const index = { timesS: Float64Array.from({ length: 60 }, (_, i) => i / 30), endS: 2, frameCount: 60 };
    const picture = (frameIndex: number) => ({
      kind: 'picture' as const,
      item: 0,
      pass: 0,
      frameIndex,
      atS: 0,
      lengthS: 1 / 30,
    });
    const steps = [
      ...Array.from({ length: 30 }, (_, i) => picture(i)),
      { kind: 'card' as const, item: 0, atS: 1, lengthS: 2 },
    ];
    const mark = { film: 'f', fromS: 10 / 30, toS: 19 / 30 };
    const game = { marks: { m: mark }, freezes: {} } as never;
    const tie = {
      fitAt: (frame: number) => (frame < 15 ? ({} as never) : undefined),
      fitOf: () => undefined,
    };
    const untiedIn = (film: string) => {
      const { isUntiedAt } = overFilmOf(game, film, index, tie, { lengths: 'metres', skaters: {} });
      const item = { film, fromFrame: 0, toFrame: 29, holds: new Map(), rates: [1], words: [] };
      return untiedCount({ steps }, [item], new Map([[film, { isUntiedAt }]]));
    };
    expect(untiedIn('f')).toBe(5);
    expect(untiedIn('other')).toBe(0);
  });

  it('says where marks of a freeze that does not stand flash by, each once', () => {
    const timesS = Float64Array.from({ length: 30 }, (_, i) => i / 30);
    const index = { timesS, frameCount: 30, endS: 1 } as never;
    const game = {
      marks: {
        a: { film: 'f', freeze: 'x' },
        b: { film: 'f', freeze: 'x' },
        c: { film: 'f', fromS: 0, toS: 1 },
      },
      freezes: { x: { film: 'f', frameIndex: 12 }, y: { film: 'f', frameIndex: 20 } },
    } as never;
    const tie = { fitAt: () => undefined, fitOf: () => undefined };
    const over = overFilmOf(game, 'f', index, tie, { lengths: 'metres', skaters: {} });
    const films = new Map([['f', { film: { index }, ...over }]]);
    const flashes = (holdS: number, toFrame = 29) => {
      const item = {
        film: 'f',
        fromFrame: 0,
        toFrame,
        holds: new Map([[12, holdS]]),
        rates: [1, 0.5],
        words: [],
      };
      return flashesS(
        reelPlanOf([item, item], () => index, 2),
        [item, item],
        films,
      );
    };
    expect(flashes(0)).toEqual([12 / 30]);
    expect(flashes(3)).toEqual([]);
    expect(flashes(0, 11)).toEqual([]);
  });
});
