import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Word, wordPlaces } from './word-places.ts';

const word = (key: string, x: number, y: number, text = 'F1'): Word => ({ key, text, x, y, size: 10 });
/** Ink of a word: half as wide as its letters, as high as a capital. */
const isOver = (a: Word, atA: { x: number; y: number }, b: Word, atB: { x: number; y: number }) =>
  Math.abs(atA.x - atB.x) < 2.5 * (a.text.length + b.text.length) && Math.abs(atA.y - atB.y) < 7;

describe('words that do not cover each other', () => {
  it('keeps a word where it belongs when there is room', () => {
    const places = wordPlaces([word('a', 0, 0), word('b', 100, 0)], [{ x: 50, y: 0, r: 5 }]);
    expect(places.get('a')).toEqual({ x: 0, y: 0 });
    expect(places.get('b')).toMatchObject({ x: 100, y: 0 });
  });

  it('moves the later of two that would cover each other, and one that would cover a disc', () => {
    const [name, measure] = [word('name', 0, 0), word('measure', 3, 2, '5.2 ± 0.3 m')];
    const places = wordPlaces([name, measure], [{ x: 0, y: 12, r: 4 }]);
    expect(places.get('name')).toEqual({ x: 0, y: 0 });
    expect(isOver(name, places.get('name')!, measure, places.get('measure')!)).toBe(false);
    expect(Math.abs(places.get('measure')!.y - 12)).toBeGreaterThan(4);
  });

  it('puts a name under the feet when above the head it would lie on somebody else', () => {
    const name = { ...word('front', 0, 0), else: { x: 0, y: 40 } };
    const behind = { key: 'behind', left: -5, right: 5, top: -20, bottom: 3 };
    expect(wordPlaces([name], [], [{ ...behind, key: 'front' }]).get('front')).toEqual({ x: 0, y: 0 });
    expect(wordPlaces([name], [], [behind]).get('front')).toEqual({ x: 0, y: 40 });
  });

  it('keeps a word whole inside the edges of the drawing, and counts a W as wide as it is', () => {
    const edges = { left: 0, top: 0, right: 200, bottom: 100 };
    for (const [x, y] of [
      [-3, 40],
      [199, 40],
      [60, 2],
      [60, 104],
    ] as const) {
      const at = wordPlaces([word('a', x, y, 'X1')], [], [], edges).get('a')!;
      // Half of two figures of the condensed face, and a capital above the line.
      expect(at.x).toBeGreaterThan(5);
      expect(at.x).toBeLessThan(195);
      expect(at.y).toBeGreaterThan(7);
      expect(at.y).toBeLessThan(99);
    }
    const [first, second] = [word('first', 0, 0, 'RW'), word('second', 12, 0, 'LW')];
    const moved = wordPlaces([first, second], []).get('second')!;
    expect(Math.abs(moved.x) > 13 || Math.abs(moved.y) > 8).toBe(true);
  });

  it('up to ten short words in one heap come apart, whatever the heap', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: -8, max: 8 }), fc.integer({ min: -8, max: 8 })), {
          minLength: 2,
          maxLength: 10,
        }),
        heap => {
          const words = heap.map(([x, y], i) => word(`w${i}`, x, y));
          const places = wordPlaces(words, []);
          for (const [i, a] of words.entries())
            for (const b of words.slice(i + 1))
              expect(isOver(a, places.get(a.key)!, b, places.get(b.key)!)).toBe(false);
        },
      ),
    );
  });
});
