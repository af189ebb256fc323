import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { filmHashOf, isFilmHash } from './film-hash.ts';

const hashOf = (bytes: Uint8Array) =>
  filmHashOf(async (offset, length) => bytes.subarray(offset, offset + length), bytes.length);
const bytesOf = (count: number) =>
  Uint8Array.from({ length: count }, (_, index) => (index * 2654435761) >>> 24);

describe('the name of a film', () => {
  it('of a small file is SHA-256 over its length and all its bytes, as another library computes it', async () => {
    const bytes = bytesOf(1000);
    const expected = createHash('sha256')
      .update(Buffer.from([0, 0, 0, 0, 0, 0, 3, 232]))
      .update(bytes)
      .digest('hex');
    expect(await hashOf(bytes)).toBe(`sampled-sha256:${expected}`);
    expect(isFilmHash(await hashOf(new Uint8Array(0)))).toBe(true);
  });

  it('of a large file reads 1 MiB: first, last and what lies evenly between', async () => {
    const byteCount = 10 * 2 ** 30 + 123;
    const reads: number[] = [];
    await filmHashOf(async (offset, length) => {
      reads.push(offset);
      return new Uint8Array(length);
    }, byteCount);
    expect(reads).toHaveLength(16);
    expect(reads[0]).toBe(0);
    expect(reads[15]).toBe(byteCount - 65536);
    const steps = reads.slice(1).map((offset, index) => offset - reads[index]!);
    expect(Math.max(...steps) - Math.min(...steps)).toBeLessThanOrEqual(1);
  });

  it('changes with length, first and last byte; and, as said, not with a byte between the chunks', async () => {
    const bytes = bytesOf(4 * 2 ** 20);
    const name = await hashOf(bytes);
    const changed = (at: number) => {
      const copy = bytes.slice();
      copy[at] = copy[at]! ^ 1;
      return hashOf(copy);
    };
    expect(await changed(0)).not.toBe(name);
    expect(await changed(bytes.length - 1)).not.toBe(name);
    expect(await hashOf(bytes.subarray(1))).not.toBe(name);
    expect(await changed(100_000)).toBe(name);
  });
});
