/** Length of a segment of the film's rule, and after how many of them a time is written, for about sixty segments. */
export const ruleStepS = (endS: number): { readonly stepS: number; readonly wordEvery: number } =>
  STEPS.find(({ stepS }) => endS / stepS <= 62) ?? STEPS[STEPS.length - 1]!;

const STEPS = [
  { stepS: 1, wordEvery: 5 },
  { stepS: 5, wordEvery: 6 },
  { stepS: 15, wordEvery: 4 },
  { stepS: 60, wordEvery: 5 },
  { stepS: 120, wordEvery: 5 },
  { stepS: 300, wordEvery: 6 },
] as const;
