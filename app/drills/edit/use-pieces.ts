import { type RefObject, useLayoutEffect, useRef } from 'react';

/**
 * Keeps a drawing of our own pen in `root`, one element a piece, and writes anew only the pieces that are not as they were: under
 * a hand that moves one spot most of a full drill stays in the page untouched.
 */
export function usePieces(root: RefObject<SVGGElement | null>, pieces: readonly string[]): void {
  const there = useRef<readonly string[]>([]);
  useLayoutEffect(() => {
    if (root.current === null) return;
    writeOver(root.current, there.current, pieces);
    there.current = pieces;
  }, [root, pieces]);
}

/** The children of `root` are those of `before`, one each; afterwards those of `after`. */
function writeOver(root: SVGGElement, before: readonly string[], after: readonly string[]): void {
  const shorter = Math.min(before.length, after.length);
  let start = 0;
  while (start < shorter && before[start] === after[start]) start++;
  let same = 0;
  while (same < shorter - start && before[before.length - 1 - same] === after[after.length - 1 - same])
    same++;
  const isEven = before.length === after.length;
  const changed = Array.from({ length: after.length - same - start }, (_, at) => start + at).filter(
    index => !isEven || after[index] !== before[index],
  );
  const read = document.createElementNS(root.namespaceURI, 'g');
  // Markup of our own pen, with all words escaped there.
  read.innerHTML = changed.map(index => after[index]).join('');
  const fresh = [...read.children];
  if (fresh.length !== changed.length)
    throw new Error(`${changed.length} pieces of a drawing made ${fresh.length} elements`);
  const old = [...root.children];
  const next = old[before.length - same] ?? null;
  if (!isEven) for (const one of old.slice(start, before.length - same)) one.remove();
  for (const [at, index] of changed.entries()) {
    if (isEven) old[index]?.replaceWith(fresh[at]!);
    else root.insertBefore(fresh[at]!, next);
  }
}
