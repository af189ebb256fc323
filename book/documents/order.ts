/** The items of a list in the order of their ranks; equal ranks by id, so that every device shows the same order. */
export function inOrder<Key extends string, Item extends { readonly rank: number }>(
  list: Readonly<Record<Key, Item>>,
): [Key, Item][] {
  return (Object.entries(list) as [Key, Item][]).sort(
    ([idA, a], [idB, b]) => a.rank - b.rank || (idA < idB ? -1 : 1),
  );
}

/** The rank that puts a new item at the end of a list. */
export function rankAtEnd(list: Readonly<Record<string, { readonly rank: number }>>): number {
  return Math.max(0, ...Object.values(list).map(item => item.rank)) + 1;
}

/** A rank between two neighbours (none: the start or end of the list), or null where no number fits between. */
export function findRankBetween(before: number | undefined, after: number | undefined): number | null {
  if (before === undefined) return after === undefined ? 1 : after - 1;
  if (after === undefined) return before + 1;
  const middle = before + (after - before) / 2;
  return middle > before && middle < after ? middle : null;
}
