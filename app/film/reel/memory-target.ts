import type { ReelTarget } from './reel-target.ts';

/** Keeps a short film in memory, for a page that carries it along. */
export const memoryTarget = (): Pick<ReelTarget, 'writable'> & { readonly whole: (type: string) => Blob } => {
  let bytes = new Uint8Array(1 << 20);
  let length = 0;
  return {
    // The writer goes back to fill in lengths that it did not know before.
    writable: new WritableStream<{ readonly data: Uint8Array; readonly position: number }>({
      write: ({ data, position }) => {
        const end = position + data.byteLength;
        if (end > bytes.length) {
          const longer = new Uint8Array(Math.max(end, 2 * bytes.length));
          longer.set(bytes);
          bytes = longer;
        }
        bytes.set(data, position);
        length = Math.max(length, end);
      },
    }),
    whole: type => new Blob([bytes.subarray(0, length)], { type }),
  };
};
