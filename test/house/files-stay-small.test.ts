import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { ROOM_ARROWS } from './arrows.data.ts';
import { sourcesUnder } from './imports-of.ts';

describe('one idea a file', () => {
  const lines = Object.keys(ROOM_ARROWS)
    .flatMap(sourcesUnder)
    .map(file => ({ file, count: readFileSync(file, 'utf8').split('\n').length }));

  it('no file is over 500 lines', () => {
    expect(lines.filter(each => each.count > 500)).toEqual([]);
  });

  it('three in four are at most 200 lines', () => {
    const small = lines.filter(each => each.count <= 200).length;
    expect(small / lines.length).toBeGreaterThanOrEqual(0.75);
  });
});
