/** Length of a segment of the film's rule, and after how many of them a time is written, so that both can be read. */
export const ruleStepS = (
  endS: number,
  widthPx: number,
): { readonly stepS: number; readonly wordEvery: number } =>
  STEPS.find(({ stepS }) => endS / stepS <= widthPx / SEGMENT_PX) ?? STEPS[STEPS.length - 1]!;

const SEGMENT_PX = 13;

const STEPS = [
  { stepS: 1, wordEvery: 5 },
  { stepS: 5, wordEvery: 6 },
  { stepS: 15, wordEvery: 4 },
  { stepS: 60, wordEvery: 5 },
  { stepS: 120, wordEvery: 5 },
  { stepS: 300, wordEvery: 6 },
] as const;
