/** One foot in metres, exact by the international definition of 1959. */
export const METRES_PER_FOOT = 0.3048;
const INCHES_PER_FOOT = 12;

/**
 * Metres of a length printed in feet and inches, as the rule books of feet-type rinks print it.
 * Used in rule tables and where a person types feet; everything else is in metres. Any finite length; one foot is 0.3048
 * m by definition.
 */
export const metresOf = (feet: number, inches = 0): number =>
  (feet + inches / INCHES_PER_FOOT) * METRES_PER_FOOT;

/** Feet of a length in metres, for showing. Inverse of `metresOf`. Any finite length. */
export const feetOf = (lengthM: number): number => lengthM / METRES_PER_FOOT;
