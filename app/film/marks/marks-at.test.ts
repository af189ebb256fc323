import { readFileSync } from 'node:fs';
import type { Mark } from '@icewright/book';
import { filmFromIce, fitPinsOn, type PinFit, rinkOf } from '@icewright/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { whenSeen } from './lay-mark.ts';
import { whereIs } from './mark-places.ts';
import { isSeenAt, lengthBetween, marksAt } from './marks-at.ts';
import { movedOnIce } from './move-on-ice.ts';
import { stripWindow } from './strip-window.ts';

const truth = JSON.parse(
  readFileSync(new URL('../../../fixtures/film-truth/A.json', import.meta.url), 'utf8'),
) as { frames: { landmarks: Record<string, [number, number]> }[] };
const pins = Object.entries(truth.frames[0]!.landmarks).map(([id, [xPx, yPx]]) => ({
  id,
  landmark: id,
  filmPx: { xPx, yPx },
}));
const fitted = fitPinsOn(rinkOf({ preset: '200x85ft' }), pins, 1);
if (fitted.kind !== 'fit') throw new Error('the pins of the drawn film do not fit');
const fit: PinFit = fitted.fit;
const tie = { fitAt: () => fit, fitOf: () => fit };

const team = (lengths: 'metres' | 'feet') => ({ lengths, skaters: {} });
const mark = (change: Partial<Mark> = {}): Mark =>
  ({
    film: 'f',
    kind: 'ring',
    at: [{ atM: { xM: 1, yM: 2 } }],
    text: '',
    fromS: 2,
    toS: 5,
    madeAt: '',
    ...change,
  }) as Mark;
const at = (filmTimeS: number, frameIndex = 0, film = 'f') => ({ film, frameIndex, filmTimeS });
const followed = (times: readonly number[]) => ({
  followed: {
    frameIndex: times.map((_, i) => i),
    filmTimeS: [...times],
    xM: times.map(t => 3 * t),
    yM: times.map(t => -t),
    sdM: times.map(() => 0.2),
    vxMps: times.map(() => 3),
    vyMps: times.map(() => -1),
    sdMps: times.map(() => 0.1),
  },
});

describe('a ghost', () => {
  it('carries the number of the skater it is of, else his role', () => {
    const ghost = mark({
      kind: 'ghost',
      at: [{ atM: { xM: 0, yM: 0 }, track: 't' }, { atM: { xM: 3, yM: 0 } }] as never,
    });
    const of = (skater: object) =>
      marksAt(
        {
          tracks: { t: { ...followed([2, 4]), role: 'F1', ...skater } },
          marks: { m: ghost },
          freezes: {},
        } as never,
        at(3),
        tie,
        fit,
        { lengths: 'metres', skaters: { s: { number: 21 } } } as never,
      )[0]?.who;
    expect(of({ skater: 's' })).toBe('F1 21');
    expect(of({})).toBe('F1');
  });
});

describe('when a mark is seen', () => {
  it('between its two times, both counted, and only in its film', () => {
    expect([1.99, 2, 3.5, 5, 5.01].map(s => isSeenAt(mark(), {}, at(s)))).toEqual([
      false,
      true,
      true,
      true,
      false,
    ]);
    expect(isSeenAt(mark(), {}, at(3, 0, 'g'))).toBe(false);
  });

  it('only at its freeze, whatever its times say', () => {
    const freezes = { z: { frameIndex: 90 } } as never;
    const one = mark({ freeze: 'z' as never });
    expect(isSeenAt(one, freezes, at(3, 90))).toBe(true);
    expect(isSeenAt(one, freezes, at(3, 91))).toBe(false);
  });

  it('begins where it is laid and ends after three seconds, or where the pictures are no longer tied', () => {
    const index = { timesS: Float64Array.from({ length: 300 }, (_, i) => i / 30), endS: 10, frameCount: 300 };
    const game = { tracks: {}, freezes: {} };
    const place = [{ atM: { xM: 0, yM: 0 } }];
    expect(whenSeen(place, game, at(2, 60), index, tie)).toEqual({ fromS: 2, toS: 5 });
    const short = { ...tie, fitAt: (frame: number) => (frame < 75 ? fit : undefined) };
    expect(whenSeen(place, game, at(2, 60), index, short)).toEqual({ fromS: 2, toS: 74 / 30 });
  });

  it('on a skater of a freeze it is seen while that stands: nobody knows where he goes', () => {
    const index = { timesS: Float64Array.from({ length: 300 }, (_, i) => i / 30), endS: 10, frameCount: 300 };
    const game = { tracks: {}, freezes: { z: { film: 'f', frameIndex: 60 } } } as never;
    const place = [{ atM: { xM: 0, yM: 0 }, placed: { freeze: 'z', placed: 'p' } }] as never;
    expect(whenSeen(place, game, at(2, 60), index, tie)).toEqual({ fromS: 2, toS: 2, freeze: 'z' });
  });
});

describe('where a mark is', () => {
  it('goes with a followed skater, straight between two looks, and is gone before and after them', () => {
    const track = followed([1, 1.5, 3]);
    fc.assert(
      fc.property(fc.double({ min: 1, max: 3, noNaN: true }), timeS => {
        const where = whereIs(track as never, timeS)!;
        expect(where.atM.xM).toBeCloseTo(3 * timeS, 9);
        expect(where.atM.yM).toBeCloseTo(-timeS, 9);
      }),
    );
    expect(whereIs(track as never, 0.9)).toBeUndefined();
    expect(whereIs(track as never, 3.1)).toBeUndefined();
    expect(whereIs({}, 2)).toBeUndefined();
  });

  it('is not drawn while its skater is not known', () => {
    const game = {
      marks: { m: mark({ at: [{ atM: { xM: 0, yM: 0 }, track: 't' as never }] }) },
      tracks: { t: followed([2, 3]) },
      freezes: {},
    } as never;
    expect(marksAt(game, at(2.5), tie, fit, team('metres'))[0]?.placesM).toEqual([{ xM: 7.5, yM: -2.5 }]);
    expect(marksAt(game, at(4), tie, fit, team('metres'))).toEqual([]);
  });

  it('stands where the feet of a freeze are placed', () => {
    const placeM = { xM: 4, yM: -3 };
    const game = {
      marks: { m: mark({ at: [{ atM: { xM: 0, yM: 0 }, placed: { freeze: 'z', placed: 'p' } as never }] }) },
      tracks: {},
      freezes: { z: { skaters: { p: { feet: filmFromIce(fit, placeM) } } } },
    } as never;
    const [seen] = marksAt(game, at(3), tie, fit, team('metres'));
    expect(seen!.placesM[0]!.xM).toBeCloseTo(4, 6);
    expect(seen!.placesM[0]!.yM).toBeCloseTo(-3, 6);
  });
});

describe('what a link says', () => {
  it('is the distance on the ice in the team’s lengths, with the 95 % ± of the tie', () => {
    const link = mark({ kind: 'link', at: [{ atM: { xM: 0, yM: 0 } }, { atM: { xM: 3, yM: 4 } }] });
    const game = { marks: { m: link }, tracks: {}, freezes: {} } as never;
    expect(marksAt(game, at(3), tie, fit, team('metres'))[0]!.figure).toMatch(/^5\.0 ± 0\.\d m$/);
    expect(marksAt(game, at(3), tie, fit, team('feet'))[0]!.figure).toMatch(/^16 ± \d ft$/);
  });

  it('adds the ± of two followed skaters as independent', () => {
    const a = { atM: { xM: 0, yM: 0 }, sdM: 0.3 };
    const b = { atM: { xM: 3, yM: 4 }, sdM: 0.4 };
    expect(lengthBetween(a, b, fit)).toEqual({ value: 5, sd: 0.5 });
  });
});

describe('moving by keys', () => {
  it('goes so far on the ice, the way the arrow points in the picture', () => {
    const arrow = fc.constantFrom([1, 0], [-1, 0], [0, 1], [0, -1]) as fc.Arbitrary<[number, number]>;
    fc.assert(
      fc.property(
        arrow,
        fc.integer({ min: -12, max: 12 }),
        fc.integer({ min: -6, max: 6 }),
        (way, xM, yM) => {
          const moved = movedOnIce(fit, { xM, yM }, way, 0.1);
          expect(Math.hypot(moved.xM - xM, moved.yM - yM)).toBeCloseTo(0.1, 6);
          const [from, to] = [filmFromIce(fit, { xM, yM })!, filmFromIce(fit, moved)!];
          const [dx, dy] = [to.xPx - from.xPx, to.yPx - from.yPx];
          expect((dx * way[0] + dy * way[1]) / Math.hypot(dx, dy)).toBeGreaterThan(0.999);
        },
      ),
    );
  });
});

describe('the strip under the picture', () => {
  it('holds the shown time, and stays while the film runs through it', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 4000, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (endS, share) => {
          const atS = share * endS;
          const { fromS, toS } = stripWindow(atS, endS);
          expect(fromS).toBeLessThanOrEqual(atS);
          expect(toS).toBeGreaterThanOrEqual(atS - 1e-9);
          expect(fromS).toBeGreaterThanOrEqual(0);
        },
      ),
    );
    expect(stripWindow(100, 3600)).toEqual(stripWindow(103, 3600));
  });
});
