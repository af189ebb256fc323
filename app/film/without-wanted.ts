import type { Freeze, Placed } from '@icewright/book';

/** The freeze as it was before anybody said where somebody should have been. */
export const withoutWanted = (freeze: Freeze): Freeze => ({
  ...freeze,
  skaters: Object.fromEntries(
    Object.entries(freeze.skaters).map(([id, { ghostM: _, ...placed }]) => [id, placed satisfies Placed]),
  ) as Freeze['skaters'],
});
