import { describe, expect, it } from 'vitest';
import { fillHoles } from './fill-holes.ts';

const maskOf = (rows: readonly string[]) => Uint8Array.from(rows.join(''), one => (one === '#' ? 1 : 0));
const rowsOf = (mask: Uint8Array, width: number) =>
  Array.from({ length: mask.length / width }, (_, y) =>
    [...mask.subarray(y * width, (y + 1) * width)].map(one => (one === 1 ? '#' : '.')).join(''),
  );

describe('holes of a mask', () => {
  it('fills what is shut in, not what is open to the edge, and nothing outside of its box', () => {
    const mask = maskOf(['.######', '.#..#.#', '.#..###', '.####..', '.#..#..', '.#..#..']);
    fillHoles(mask, 7, { left: 0, right: 5, top: 0, bottom: 6 });
    expect(rowsOf(mask, 7)).toEqual(['.######', '.####.#', '.######', '.####..', '.#..#..', '.#..#..']);
  });
});
