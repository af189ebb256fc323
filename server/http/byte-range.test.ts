import { describe, expect, it } from 'vitest';
import { byteRangeOf } from './byte-range.ts';

// RFC 9110 §14.1.2 gives these examples for a representation of 10,000 bytes.
describe('a Range header', () => {
  it.each([
    ['bytes=0-499', { kind: 'part', first: 0, last: 499 }],
    ['bytes=500-999', { kind: 'part', first: 500, last: 999 }],
    ['bytes=-500', { kind: 'part', first: 9500, last: 9999 }],
    ['bytes=9500-', { kind: 'part', first: 9500, last: 9999 }],
    ['bytes=0-0', { kind: 'part', first: 0, last: 0 }],
    ['bytes=9999-20000', { kind: 'part', first: 9999, last: 9999 }],
    ['bytes=-20000', { kind: 'part', first: 0, last: 9999 }],
    ['bytes=10000-', { kind: 'outside' }],
    ['bytes=-0', { kind: 'outside' }],
    ['bytes=0-0,-1', { kind: 'whole' }],
    ['bytes=5-1', { kind: 'whole' }],
    ['bytes=-', { kind: 'whole' }],
    ['frames=0-1', { kind: 'whole' }],
    ['bytes=1e3-', { kind: 'whole' }],
    [undefined, { kind: 'whole' }],
  ])('%s', (header, range) => {
    expect(byteRangeOf(header, 10_000)).toEqual(range);
  });
});
