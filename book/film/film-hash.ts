/** Reads `length` bytes from `offset` on: `blob.slice` in a browser, a file handle on a server. */
export type ReadChunk = (offset: number, length: number) => Promise<Uint8Array>;

const chunkBytes = 64 * 1024;
const chunkCount = 16;

/**
 * The name of a film by its content, `sampled-sha256:` and 64 hex digits: SHA-256 over the byte count (8 bytes, big
 * endian) and 16 chunks of 64 KiB — the first, the last and 14 evenly between them; all bytes of a file up to 1 MiB.
 * A film of 10 GB is named by reading 1 MiB, the same on every machine.
 * It does not detect a change outside the chunks that keeps the length: a damaged or altered middle goes unseen. It
 * tells films apart; it does not vouch for one. Needs `crypto.subtle`, which a browser has on a secure page only.
 */
export async function filmHashOf(readChunk: ReadChunk, byteCount: number): Promise<string> {
  const ranges = sampledRanges(byteCount);
  const sampled = new Uint8Array(8 + ranges.reduce((sum, range) => sum + range.length, 0));
  new DataView(sampled.buffer).setBigUint64(0, BigInt(byteCount));
  let at = 8;
  for (const { offset, length } of ranges) {
    const chunk = await readChunk(offset, length);
    if (chunk.length !== length)
      throw new Error(`filmHashOf: ${chunk.length} of ${length} bytes at ${offset}`);
    sampled.set(chunk, at);
    at += length;
  }
  const digest = new Uint8Array(await globalThis.crypto.subtle.digest('SHA-256', sampled));
  return `sampled-sha256:${Array.from(digest, byte => byte.toString(16).padStart(2, '0')).join('')}`;
}

/** True for a text that `filmHashOf` could have given. */
export const isFilmHash = (text: string): boolean => /^sampled-sha256:[0-9a-f]{64}$/.test(text);

function sampledRanges(byteCount: number): { offset: number; length: number }[] {
  if (byteCount <= chunkBytes * chunkCount) return byteCount === 0 ? [] : [{ offset: 0, length: byteCount }];
  return Array.from({ length: chunkCount }, (_, index) => ({
    offset: Math.floor((index * (byteCount - chunkBytes)) / (chunkCount - 1)),
    length: chunkBytes,
  }));
}
