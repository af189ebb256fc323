import { type Freeze, newId } from '@icewright/book';
import { type FoundPerson, filmFromIce, fitPins, iceFromFilm, type PinFit } from '@icewright/engine';
import { describe, expect, it } from 'vitest';
import { groupsOf, offeredOf } from './offered-people.ts';

// Ten pixels a metre, seen from above: places in the picture and on the ice can be told by heart.
const fit = (() => {
  const pins = [-20, 0, 20].flatMap(xM =>
    [-10, 10].map(yM => ({
      id: `${xM},${yM}`,
      iceM: { xM, yM },
      filmPx: { xPx: 400 + 10 * xM, yPx: 200 - 10 * yM },
    })),
  );
  const fitted = fitPins(pins, 1);
  if (fitted.kind !== 'fit') throw new Error('six exact pins hold the picture');
  return fitted.fit;
})();

const foundAt = (xM: number, yM: number, group: number | null): FoundPerson => {
  const feetPx = filmFromIce(fit, { xM, yM })!;
  const placement = iceFromFilm(fit, feetPx, { footSdPx: 3 });
  if (placement.kind === 'none') throw new Error('on the ice');
  return {
    feetPx,
    footSdPx: 3,
    placement,
    clearness: 0.8,
    group,
    dress: null,
    rgb: [0.1, 0.2, (group ?? 0) / 4],
  };
};

const placedAt = (xM: number, yM: number, feetSdPx?: number): Freeze['skaters'] => ({
  [newId<'placed'>()]: {
    side: 'us' as const,
    kind: 'skater' as const,
    role: 'F1',
    feet: filmFromIce(fit, { xM, yM })!,
    ...(feetSdPx === undefined ? {} : { feetSdPx }),
  },
});

const NOBODY: ReadonlySet<string> = new Set();
const idsOf = (found: readonly FoundPerson[], fit: PinFit, skaters: Freeze['skaters'], out = NOBODY) =>
  offeredOf(found, fit, skaters, out).map(({ atM }) => Math.round(10 * atM.xM) / 10);

describe('people who are offered', () => {
  const found = [foundAt(0, 0, 0), foundAt(0.8, 0, 1), foundAt(5, 5, 0), foundAt(9, -3, 2)];

  it('leaves out whoever a hand has placed already, within a metre', () => {
    expect(idsOf(found, fit, {})).toEqual([0, 0.8, 5, 9]);
    expect(idsOf(found, fit, placedAt(5.9, 5))).toEqual([0, 0.8, 9]);
    expect(idsOf(found, fit, placedAt(6.1, 5))).toEqual([0, 0.8, 5, 9]);
  });

  it('goes on offering the one beside him who was taken from the offer', () => {
    expect(idsOf(found, fit, placedAt(0, 0, 3))).toEqual([0.8, 5, 9]);
    // Moved by hand he is one like all others.
    expect(idsOf(found, fit, placedAt(0, 0))).toEqual([5, 9]);
  });

  it('does not offer who was left out, and groups the rest by what they wear', () => {
    expect(idsOf(found, fit, {}, new Set(['found2']))).toEqual([0, 0.8, 9]);
    const groups = groupsOf(offeredOf(found, fit, {}, NOBODY));
    expect(groups.map(({ letter, people }) => `${letter}${people.length}`)).toEqual(['a2', 'b1', 'c1']);
    expect(groups[0]!.colour).toBe('rgb(26 51 0)');
    const unclear = groupsOf(offeredOf([...found, foundAt(-4, 3, null)], fit, {}, NOBODY));
    expect(unclear.map(({ letter, people }) => `${letter}${people.length}`)).toEqual(['a2', 'b1', 'c1']);
  });

  it('says how well each is known: as the pins hold and as the feet were found', () => {
    const [one] = offeredOf(found, fit, {}, NOBODY);
    // Three pixels at ten a metre are 0.3 m; exact pins add next to nothing.
    expect(Math.sqrt(one!.covM2.xxM2)).toBeGreaterThan(0.29);
    expect(Math.sqrt(one!.covM2.xxM2)).toBeLessThan(0.36);
  });
});
