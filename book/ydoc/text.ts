import type * as Y from 'yjs';

/**
 * Makes a text say `newText` by the smallest single replacement, so that what somebody else writes elsewhere in it at
 * the same time stays. `shownLength`: characters of it the writer has seen; what lies behind them is left alone.
 */
export function editText(text: Y.Text, newText: string, shownLength = Number.POSITIVE_INFINITY): void {
  const full = text.toString();
  const old = full.slice(0, shownLength);
  if (old === newText) return;
  const shorter = Math.min(old.length, newText.length);
  let start = 0;
  while (start < shorter && old[start] === newText[start]) start += 1;
  if (splitsPair(old, start) || splitsPair(newText, start)) start -= 1;
  let end = 0;
  while (end < shorter - start && old[old.length - 1 - end] === newText[newText.length - 1 - end]) end += 1;
  if (splitsPair(old, old.length - end) || splitsPair(newText, newText.length - end)) end -= 1;
  if (old.length - end > start) text.delete(start, old.length - end - start);
  if (newText.length - end > start) text.insert(start, newText.slice(start, newText.length - end));
}

/** True when a cut at `index` would part the two halves of one character. */
function splitsPair(text: string, index: number): boolean {
  return (
    index > 0 && index < text.length && isHigh(text.charCodeAt(index - 1)) && isLow(text.charCodeAt(index))
  );
}

const isHigh = (code: number) => code >= 0xd800 && code <= 0xdbff;
const isLow = (code: number) => code >= 0xdc00 && code <= 0xdfff;
