import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { randomOf } from '../random/random.ts';
import { rinkOf } from '../rink/rink-of.ts';
import { pickedOf } from './pinned-view.reference.ts';
import { type NamedPin, sheetThatFits } from './sheet-that-fits.ts';

/** Drawn plays on a 200 × 85 ft sheet with known positions: fixtures/film-truth/README.md. */
const { frames } = JSON.parse(
  readFileSync(new URL('../../fixtures/film-truth/A.json', import.meta.url), 'utf8'),
) as { frames: { landmarks: Record<string, [number, number]> }[] };

const ON_EVERY_SHEET = /^(centreSpot|centreLine\.|blueLine|neutralSpot|endSpot|goalLine)/;
const pinsOf = (seed: number, count: number, noisePx = 0.7): NamedPin[] => {
  const random = randomOf(seed);
  const { landmarks } = frames[seed % frames.length]!;
  const ids = Object.keys(landmarks).filter(id => ON_EVERY_SHEET.test(id));
  return pickedOf(random, ids, Math.min(count, ids.length)).map(id => ({
    id,
    landmark: id,
    filmPx: {
      xPx: landmarks[id]![0] + noisePx * random.normal(),
      yPx: landmarks[id]![1] + noisePx * random.normal(),
    },
  }));
};

describe('another sheet that the pins fit', () => {
  it.each(['60x30m', '60x26m', 'college200x100ft'] as const)(
    'names 200 × 85 ft when its pins are put on a %s sheet, in most views, and never another',
    preset => {
      const answers = Array.from({ length: 40 }, (_, seed) =>
        sheetThatFits(pinsOf(seed, 10), rinkOf({ preset }), 1),
      );
      const named = answers.flatMap(one => (one.kind === 'other' ? [one.sheet] : []));
      expect(new Set(named)).toEqual(new Set(['200x85ft']));
      expect(named.length).toBeGreaterThan(30);
    },
  );

  it('names none when the pins lie on their own sheet', () => {
    for (let seed = 0; seed < 40; seed++) {
      const answer = sheetThatFits(pinsOf(seed, 10), rinkOf({ preset: '200x85ft' }), 1);
      expect(answer.kind).toBe('none');
    }
  });

  it('names none for one wrong pin on the right sheet: no sheet explains it', () => {
    const pins = pinsOf(3, 10);
    const [first] = pins;
    const wrong = [
      { ...first!, filmPx: { xPx: first!.filmPx.xPx + 60, yPx: first!.filmPx.yPx } },
      ...pins.slice(1),
    ];
    expect(sheetThatFits(wrong, rinkOf({ preset: '200x85ft' }), 1)).toEqual({
      kind: 'none',
      reason: 'noneFarBetter',
    });
  });

  it('four pins fit any sheet', () => {
    expect(sheetThatFits(pinsOf(3, 4), rinkOf({ preset: '60x30m' }), 1)).toEqual({
      kind: 'none',
      reason: 'tooFew',
    });
  });
});
