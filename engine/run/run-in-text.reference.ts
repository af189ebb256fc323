import type { Run } from './run-result.ts';

/**
 * A run with every column of numbers as the text of its bytes, for tests that ask whether two runs are the same: number
 * by number, a comparison of two runs takes longer than both of them.
 */
export const inText = (run: Run): object => ({
  ...run,
  tracks: run.tracks.map(columnsInText),
  pucks: run.pucks.map(columnsInText),
});

const columnsInText = (track: object): object =>
  Object.fromEntries(
    Object.entries(track).map(([name, value]) => [name, ArrayBuffer.isView(value) ? textOf(value) : value]),
  );

const textOf = ({ buffer, byteOffset, byteLength }: ArrayBufferView): string => {
  let text = '';
  for (const unit of new Uint8Array(buffer, byteOffset, byteLength)) text += String.fromCharCode(unit);
  return text;
};
