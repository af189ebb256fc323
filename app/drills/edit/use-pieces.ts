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

/** The children of `root` are those of `before`, one each; afterwards those of `after`. What is the same stays the same element. */
function writeOver(root: SVGGElement, before: readonly string[], after: readonly string[]): void {
  if (before.length === after.length && writeInPlaces(root, before, after)) return;
  const shorter = Math.min(before.length, after.length);
  let start = 0;
  while (start < shorter && before[start] === after[start]) start++;
  let same = 0;
  while (same < shorter - start && before[before.length - 1 - same] === after[after.length - 1 - same])
    same++;
  const old = [...root.children].slice(start, before.length - same);
  const next = root.children[before.length - same] ?? null;
  const kept = new Map<string, Element[]>();
  old.forEach((element, at) => {
    const piece = before[start + at]!;
    kept.set(piece, [...(kept.get(piece) ?? []), element]);
  });
  const wanted = after.slice(start, after.length - same);
  const found = wanted.map(piece => kept.get(piece)?.shift());
  const fresh = elementsOf(
    root,
    wanted.filter((_, at) => found[at] === undefined),
  );
  for (const left of kept.values()) for (const element of left) element.remove();
  let cursor: Element | null = old.find(element => element.parentNode === root) ?? next;
  for (const one of found) {
    const element = one ?? fresh.shift()!;
    if (element === cursor) cursor = element.nextElementSibling;
    else root.insertBefore(element, cursor);
  }
}

/** Mostly every piece has its place as before: writes those that differ anew. False, and nothing done, when so many differ that some may only have moved. */
function writeInPlaces(root: SVGGElement, before: readonly string[], after: readonly string[]): boolean {
  const places: number[] = [];
  for (let at = 0; at < after.length; at++) if (before[at] !== after[at]) places.push(at);
  if (places.length > MOST_IN_PLACE) return false;
  const old = places.map(at => root.children[at]!);
  const fresh = elementsOf(
    root,
    places.map(at => after[at]!),
  );
  for (const [nth, element] of old.entries()) element.replaceWith(fresh[nth]!);
  return true;
}

const MOST_IN_PLACE = 60;

function elementsOf(root: SVGGElement, pieces: readonly string[]): Element[] {
  const read = document.createElementNS(root.namespaceURI, 'g');
  // Markup of our own pen, with all words escaped there.
  read.innerHTML = pieces.join('');
  const elements = [...read.children];
  if (elements.length !== pieces.length)
    throw new Error(`${pieces.length} pieces of a drawing made ${elements.length} elements`);
  return elements;
}
