import fc from 'fast-check';
import { expect, it } from 'vitest';
import { TEST_RINK } from '../film/pinned-view.reference.ts';
import { goalieAmong } from './goalie-among.ts';

// Goal lines lie 11 ft from the end boards of a 200 ft sheet (rink facts): 27.13 m from the middle.
it('takes the one in front of the net, not one behind it, nor one in the slot', () => {
  const behind = { xM: 28.2, yM: 0.2 };
  const inCrease = { xM: 26.2, yM: -0.3 };
  const slot = { xM: 22, yM: 0 };
  expect(goalieAmong([behind, slot, inCrease], TEST_RINK, 'plusX')).toBe(2);
  expect(goalieAmong([behind, slot], TEST_RINK, 'plusX')).toBe(-1);
  expect(goalieAmong([inCrease], TEST_RINK, 'minusX')).toBe(-1);
  expect(goalieAmong([], TEST_RINK, 'plusX')).toBe(-1);
});

it('finds the same one when the sheet is seen from its other end', () => {
  const place = fc.record({
    xM: fc.double({ min: 20, max: 30, noNaN: true }),
    yM: fc.double({ min: -5, max: 5, noNaN: true }),
  });
  fc.assert(
    fc.property(fc.array(place, { maxLength: 6 }), places => {
      const turned = places.map(({ xM, yM }) => ({ xM: -xM, yM: -yM }));
      expect(goalieAmong(turned, TEST_RINK, 'minusX')).toBe(goalieAmong(places, TEST_RINK, 'plusX'));
    }),
  );
});
