/** A full side without its goalie: forwards, defenders. Fewer placed means somebody may be out of the picture. */
export const FULL_SIDE = { forwards: 3, defenders: 2 } as const;
