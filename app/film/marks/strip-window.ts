/**
 * The stretch of film that the strip of marks shows round a time: so long that a second can be grasped, and standing still while
 * the film runs through it. Whole steps of half of it, cut to the film.
 */
export const stripWindow = (atS: number, endS: number): { readonly fromS: number; readonly toS: number } => {
  if (endS <= LONG_S) return { fromS: 0, toS: Math.max(1, endS) };
  const half = LONG_S / 2;
  const fromS = Math.max(0, Math.min(endS - LONG_S, (Math.floor(atS / half) - 0.5) * half));
  return { fromS, toS: fromS + LONG_S };
};
const LONG_S = 16;
