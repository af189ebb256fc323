/** The middle one of some values, the upper of two; not a number when there are none. Sorts them in place: thousands are asked for a picture. */
export const middleOf = (values: number[]): number => {
  values.sort((a, b) => a - b);
  return values[values.length >> 1] ?? Number.NaN;
};
