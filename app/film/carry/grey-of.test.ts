import { describe, expect, it } from 'vitest';
import { shownGrey } from './grey-of.ts';

// 1 2 3
// 4 5 6
const CODED = { grey: Uint8Array.of(1, 2, 3, 4, 5, 6), width: 3, height: 2 };
const rowsOf = (deg: 0 | 90 | 180 | 270, flipped = false) => {
  const { grey, width, height } = shownGrey(CODED, deg, flipped);
  return Array.from({ length: height }, (_, y) => [...grey.subarray(y * width, (y + 1) * width)].join(''));
};

describe('a coded picture as it is shown', () => {
  it('is turned clockwise', () => {
    expect(rowsOf(0)).toEqual(['123', '456']);
    expect(rowsOf(90)).toEqual(['41', '52', '63']);
    expect(rowsOf(180)).toEqual(['654', '321']);
    expect(rowsOf(270)).toEqual(['36', '25', '14']);
  });

  it('is mirrored after that', () => {
    expect(rowsOf(0, true)).toEqual(['321', '654']);
    expect(rowsOf(90, true)).toEqual(['14', '25', '36']);
  });
});
