/** Which of the shown moments go into a reel, and in which order: as they are shown, until somebody moves or leaves out one. */
export interface ReelOrder {
  /** Those that were moved, by id, in their order; the others follow as they are shown. */
  readonly moved: readonly string[];
  readonly leftOut: ReadonlySet<string>;
}

export const AS_SHOWN: ReelOrder = { moved: [], leftOut: new Set() };

export const orderOf = (shown: readonly string[], { moved }: ReelOrder): string[] => {
  const there = moved.filter(id => shown.includes(id));
  return [...there, ...shown.filter(id => !there.includes(id))];
};

export const chosenOf = (shown: readonly string[], order: ReelOrder): string[] =>
  orderOf(shown, order).filter(id => !order.leftOut.has(id));

/** One place earlier (−1) or later (1). */
export const movedBy = (
  shown: readonly string[],
  order: ReelOrder,
  id: string,
  places: -1 | 1,
): ReelOrder => {
  const ids = orderOf(shown, order);
  const from = ids.indexOf(id);
  const to = from + places;
  if (from < 0 || to < 0 || to >= ids.length) return order;
  ids.splice(to, 0, ...ids.splice(from, 1));
  return { ...order, moved: ids };
};

export const withOrWithout = (order: ReelOrder, id: string): ReelOrder => {
  const leftOut = new Set(order.leftOut);
  if (!leftOut.delete(id)) leftOut.add(id);
  return { ...order, leftOut };
};
