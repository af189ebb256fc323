/**
 * Every so many frames a skater is looked for in a film of so many frames a second (> 0): as near to 30 looks a second as its frames allow, at least 1,
 * a count. Source: our choice; a skater's body moves 0.3 m at most from look to look then.
 */
export const lookStrideCount = (framesPerS: number): number =>
  Math.max(1, Math.round(framesPerS / LOOKS_PER_S));

const LOOKS_PER_S = 30;
