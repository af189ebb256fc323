import { ASKED_KEPT_RATIO, ASKED_LEAST_RATIO } from './many-rows.ts';

/** A value that was tried: of its reps, those that came to the question. */
interface Asked {
  readonly trialCount: number;
  readonly repCount: number;
}

/**
 * The share of reps (0 to 1) that must come to the question for its rate to be the rate of a drill: nearly that of the drill as it stands, or,
 * without a `now`, nearly the greatest of the curve; and never next to nothing. Always answers. Our own rule: rows.
 */
export const leastAskedRatio = (curve: readonly Asked[], now: Asked | undefined): number => {
  const reference = now ? askedRatioOf(now) : Math.max(0, ...curve.map(askedRatioOf));
  return Math.max(ASKED_LEAST_RATIO.value, ASKED_KEPT_RATIO.value * reference);
};

/** Those of the values (in their order) to which at least that share of reps (0 to 1) comes; empty when there is none. By definition. */
export const withRepsThatAsk = <Point extends Asked>(
  curve: readonly Point[],
  leastRatio: number,
): readonly Point[] => curve.filter(point => askedRatioOf(point) >= leastRatio);

/**
 * The values of an answer to which enough reps come, in their order; `afterGap` where values between one and the one before it had to be left
 * out. Empty when nowhere enough come. By `leastAskedRatio`, 0 to 1.
 */
export const goodPointsOf = <Point extends Asked>({
  curve,
  leastAskedRatio: least,
}: {
  readonly curve: readonly Point[];
  readonly leastAskedRatio: number;
}): readonly (Point & { readonly afterGap: boolean })[] => {
  const good = new Set(withRepsThatAsk(curve, least));
  let last = -1;
  return curve.flatMap((point, index) => {
    if (!good.has(point)) return [];
    const afterGap = last >= 0 && index > last + 1;
    last = index;
    return [{ ...point, afterGap }];
  });
};

const askedRatioOf = ({ trialCount, repCount }: Asked): number => trialCount / repCount;
