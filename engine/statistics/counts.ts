import { type None, noneBecause } from '../units/none.ts';
import { gammaQuantile } from './gamma.ts';
import { DEFAULT_CONFIDENCE } from './rates.ts';

/** Events per 60 minutes with their interval. */
export interface Per60Interval {
  readonly ratePer60: number;
  readonly lowerPer60: number;
  readonly upperPer60: number;
}

const PER_MIN = 60;

/**
 * Exact Poisson interval of a count in `exposureMin` minutes, per 60 minutes. None without time.
 * Source: Garwood 1936, Biometrika 28:437; chi-squared quantiles as twice gamma quantiles. `count` a whole number ≥ 0.
 */
export const garwoodPer60 = (
  eventCount: number,
  exposureMin: number,
  confidence = DEFAULT_CONFIDENCE,
): Per60Interval | None<'noTime'> => {
  if (exposureMin <= 0) return noneBecause('noTime');
  const tail = (1 - confidence) / 2;
  const scale = PER_MIN / exposureMin;
  return {
    ratePer60: eventCount * scale,
    lowerPer60: eventCount <= 0 ? 0 : gammaQuantile(eventCount, tail) * scale,
    upperPer60: gammaQuantile(eventCount + 1, 1 - tail) * scale,
  };
};
