import type { DrillSpot } from '@icewright/book';

/** A disc has room for so many letters. */
const MOST_LETTERS = 3;

/** The role itself where it is free, else the next number of it: F1 → F2, LW → LW2. Goalies and coaches share theirs. */
export const freeRole = (spot: Pick<DrillSpot, 'role' | 'kind'>, taken: ReadonlySet<string>): string => {
  if (spot.kind !== 'skater' || !taken.has(spot.role)) return spot.role;
  const letters = spot.role.replace(/\d+$/, '') || 'F';
  for (let number = 2; ; number += 1) {
    const role = `${letters.slice(0, MOST_LETTERS - `${number}`.length)}${number}`;
    if (!taken.has(role)) return role;
  }
};
