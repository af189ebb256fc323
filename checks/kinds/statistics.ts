import {
  cohenKappa,
  garwoodPer60,
  isNone,
  newcombeDifference,
  sampleSizePerGroup,
  wilsonInterval,
} from '@icewright/engine';
import type { Compare } from '../compare.ts';
import type { Fields } from '../fields.ts';
import type { Kind } from '../kind.ts';

/** `stats.json`: intervals of rates and counts, agreement, chances needed. */
export const STATISTICS_KINDS: readonly Kind[] = [
  {
    name: 'wilson',
    run: ({ input, expected, tolerance }, compare) => {
      const tally = { successCount: input.number('successCount'), trialCount: input.number('trialCount') };
      const found = wilsonInterval(tally, input.number('confidence'));
      if (isNone(found)) return compareNone(found.reason, expected, 'lowerRatio', compare);
      const allowed = tolerance.numberOr('absolute', 1e-6);
      for (const name of ['rateRatio', 'lowerRatio', 'upperRatio'] as const)
        compareIfGiven(name, found[name], expected, allowed, compare);
    },
  },
  {
    name: 'newcombe',
    run: ({ input, expected, tolerance }, compare) => {
      const found = newcombeDifference(
        { successCount: input.number('successCount1'), trialCount: input.number('trialCount1') },
        { successCount: input.number('successCount2'), trialCount: input.number('trialCount2') },
        input.number('confidence'),
      );
      if (isNone(found)) return compareNone(found.reason, expected, 'lowerRatio', compare);
      const allowed = tolerance.numberOr('absolute', 1e-6);
      for (const name of ['differenceRatio', 'lowerRatio', 'upperRatio'] as const)
        compareIfGiven(name, found[name], expected, allowed, compare);
    },
  },
  {
    name: 'garwood',
    run: ({ input, expected, tolerance }, compare) => {
      const found = garwoodPer60(
        input.number('eventCount'),
        input.number('exposureMin'),
        input.number('confidence'),
      );
      if (isNone(found)) return compareNone(found.reason, expected, 'upperPer60', compare);
      const allowed = tolerance.numberOr('per60Relative', 1e-6);
      for (const name of ['ratePer60', 'lowerPer60', 'upperPer60'] as const)
        if (expected.has(name)) compare.relative(name, found[name], expected.number(name), allowed, 1e-12);
    },
  },
  {
    name: 'kappa',
    run: ({ input, expected, tolerance }, compare) => {
      const found = cohenKappa(input.table('table'));
      if (isNone(found)) return compareNone(found.reason, expected, 'kappa', compare);
      const allowed = tolerance.numberOr('kappa', 1e-9);
      for (const name of ['kappa', 'observedAgreement', 'expectedAgreement'] as const)
        compareIfGiven(name, found[name], expected, allowed, compare);
      if (expected.has('standardError')) {
        const error = tolerance.numberOr('standardError', 1e-6);
        compare.number(
          'standardError',
          found.standardError,
          expected.numberOrNull('standardError'),
          error,
          '1',
        );
      }
    },
  },
  {
    name: 'sampleSize',
    run: ({ input, expected, tolerance }, compare) => {
      const found = sampleSizePerGroup({
        rate1: input.number('rate1'),
        rate2: input.number('rate2'),
        power: input.number('power'),
        alphaTwoSided: input.number('alphaTwoSided'),
      });
      if (isNone(found)) return compareNone(found.reason, expected, 'perGroup', compare);
      const allowed = tolerance.numberOr('perGroup', 1e-4);
      compare.number('perGroup', found, expected.numberOrNull('perGroup'), allowed, 'chances');
      if (expected.has('perGroupCeil'))
        compare.same('perGroupCeil', Math.ceil(found), expected.number('perGroupCeil'));
    },
  },
];

const compareIfGiven = (
  name: string,
  value: number,
  expected: Fields,
  allowed: number,
  compare: Compare,
): void => {
  if (expected.has(name)) compare.number(name, value, expected.numberOrNull(name), allowed, '1');
};

/** We have no answer: then the file must say null, and its reason, where it gives one, must be ours. */
const compareNone = (reason: string, expected: Fields, name: string, compare: Compare): void => {
  compare.same(name, null, expected.numberOrNull(name));
  if (expected.has('reason')) compare.same('reason', reason, expected.text('reason'));
};
