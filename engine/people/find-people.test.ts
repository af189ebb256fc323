import { describe, expect, it } from 'vitest';
import { drawnAt, filmFromIceOf } from '../film/camera.reference.ts';
import { TEST_RINK } from '../film/pinned-view.reference.ts';
import { randomOf } from '../random/random.ts';
import type { IcePoint } from '../units/points.ts';
import { type DrawnPerson, drawnPeople, WIDE_CAMERA } from './drawn-people.reference.ts';
import { type FoundPerson, findPeople } from './find-people.ts';

const NAVY = [25, 35, 90] as const;
const TEAL = [10, 120, 115] as const;
const BLACK = [30, 30, 30] as const;

/** So many people in the middle of the sheet, none hiding another, by turns in three dresses. */
const someFewApart = (seed: number, count: number): DrawnPerson[] => {
  const random = randomOf(seed);
  const people: DrawnPerson[] = [];
  while (people.length < count) {
    const atM = { xM: -14 + 28 * random.uniform(), yM: -8 + 19 * random.uniform() };
    const isFree = people.every(one => Math.hypot(one.atM.xM - atM.xM, (one.atM.yM - atM.yM) / 3) > 1.6);
    if (isFree) people.push({ atM, wears: [NAVY, TEAL, BLACK][people.length % 3]! });
  }
  return people;
};

const foundIn = (
  seed: number,
  people: readonly DrawnPerson[],
  figures: Parameters<typeof drawnPeople>[2] = [],
) => {
  const { picture, fit } = drawnPeople(WIDE_CAMERA, people, figures, randomOf(seed));
  const found = findPeople(picture, fit, TEST_RINK);
  if ('kind' in found) throw new Error(`nothing looked at: ${found.reason}`);
  return found;
};

const apartM = (a: IcePoint, b: IcePoint) => Math.hypot(a.xM - b.xM, a.yM - b.yM);
const nearestTo = (found: readonly FoundPerson[], atM: IcePoint): FoundPerson =>
  found.reduce((best, one) =>
    apartM(one.placement.atM, atM) < apartM(best.placement.atM, atM) ? one : best,
  );

describe('people found by what is not ice', () => {
  // The bodies are drawn through the pinhole itself, by points of space; nothing of how they are looked for is used.
  it.each([1, 2, 3, 4])(
    'finds all of a drawn picture and nobody else, and parts them by what they wear (%i)',
    seed => {
      const people = someFewApart(seed, 9);
      const found = foundIn(seed, people);
      expect(found.length).toBe(people.length);
      const groupOf = new Map<unknown, number | null>();
      for (const { atM, wears } of people) {
        const one = nearestTo(found, atM);
        expect(apartM(one.placement.atM, atM)).toBeLessThan(0.6);
        expect(one.group).toBe(groupOf.get(wears) ?? one.group);
        groupOf.set(wears, one.group);
      }
      expect(new Set(groupOf.values()).size).toBe(3);
    },
  );

  it('finds nobody on bare ice, nor in its paint, nor in letters and badges that lie flat', () => {
    expect(foundIn(1, [])).toEqual([]);
    const letters = [-8, -6.5, -5, -3.5].map(xM => ({
      atM: { xM, yM: 5 },
      halfM: 0.5,
      ink: [150, 120, 200] as const,
    }));
    const badge = { atM: { xM: 4, yM: 0 }, halfM: 3.5, ink: [70, 90, 140] as const };
    expect(foundIn(1, [], [...letters, badge])).toEqual([]);
  });

  it('finds who skates over a badge in other colours', () => {
    const badge = { atM: { xM: 4, yM: 0 }, halfM: 3.5, ink: [70, 90, 140] as const };
    const person = { atM: { xM: 4.3, yM: 0.4 }, wears: TEAL };
    const found = foundIn(2, [person], [badge]);
    expect(found.length).toBe(1);
    expect(apartM(found[0]!.placement.atM, person.atM)).toBeLessThan(0.6);
  });

  it('offers nobody whose feet the near boards hide', () => {
    expect(foundIn(3, [{ atM: { xM: 2, yM: -12.8 }, wears: NAVY }])).toEqual([]);
    const cut = drawnAt(filmFromIceOf(WIDE_CAMERA), { xM: 2, yM: -12.8 })!;
    expect(cut.yPx).toBeLessThan(WIDE_CAMERA.heightPx + 200);
  });

  it('says so when the picture holds hardly any ice', () => {
    const { picture, fit } = drawnPeople(WIDE_CAMERA, [], [], randomOf(1));
    const m = fit.iceFromFilm;
    const above = {
      ...fit,
      iceFromFilm: [m[0], m[1], m[2], m[3], m[4], m[5], m[6], m[7], -1e9] as unknown as typeof m,
    };
    expect(findPeople(picture, above, TEST_RINK)).toEqual({ kind: 'none', reason: 'noIce' });
  });
});
