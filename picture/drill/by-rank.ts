/** The items of a record in the order a coach put them; ids break ties, so that two devices agree. */
export const byRank = <Key extends string, Item extends { readonly rank: number }>(
  record: Readonly<Record<Key, Item>>,
): readonly (readonly [Key, Item])[] =>
  (Object.entries(record) as [Key, Item][]).sort(
    ([oneId, one], [otherId, other]) => one.rank - other.rank || (oneId < otherId ? -1 : 1),
  );
