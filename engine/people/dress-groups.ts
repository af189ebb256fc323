/** What somebody wears: the shares of red, green and blue in it, and how light it is; 0 to 1. */
export type Dress = readonly [red: number, green: number, blue: number, light: number];

/** So many kinds of people are on the ice: two teams and the officials. */
export const DRESS_GROUPS = 3;

/**
 * Parts people by what they wear into at most three groups, the largest first: for each its group. Source: k-means begun with
 * the farthest apart (Gonzalez 1985, Lloyd 1982, from memory).
 */
export const dressGroupsOf = (dresses: readonly Dress[]): number[] => {
  if (dresses.length === 0) return [];
  let middles = farthestApart(dresses);
  let groups: number[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    groups = dresses.map(dress => nearestTo(middles, dress));
    middles = middles.map((middle, group) => meanOf(dresses.filter((_, i) => groups[i] === group)) ?? middle);
  }
  const sizes = middles.map((_, group) => groups.filter(one => one === group).length);
  const order = middles.map((_, group) => group).sort((a, b) => sizes[b]! - sizes[a]!);
  return groups.map(group => order.indexOf(group));
};
const ROUNDS = 12;

/** The first is who is least like the mean of all, so that nothing hangs on an order. */
const farthestApart = (dresses: readonly Dress[]): Dress[] => {
  const middle = meanOf(dresses)!;
  const chosen: Dress[] = [];
  while (chosen.length < Math.min(DRESS_GROUPS, dresses.length)) {
    const from = chosen.length === 0 ? [middle] : chosen;
    const away = (dress: Dress) => Math.min(...from.map(one => apart(one, dress)));
    chosen.push(dresses.reduce((best, dress) => (away(dress) > away(best) ? dress : best)));
  }
  return chosen;
};

const nearestTo = (middles: readonly Dress[], dress: Dress): number =>
  middles.reduce((best, middle, i) => (apart(middle, dress) < apart(middles[best]!, dress) ? i : best), 0);

const apart = (a: Dress, b: Dress): number => Math.hypot(...a.map((value, i) => value - b[i]!));

const meanOf = (dresses: readonly Dress[]): Dress | undefined =>
  dresses.length === 0
    ? undefined
    : (([0, 1, 2, 3] as const).map(
        k => dresses.reduce((sum, dress) => sum + dress[k], 0) / dresses.length,
      ) as unknown as Dress);
