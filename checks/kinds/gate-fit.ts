import { fitSprint, isNone, type SprintFit } from '@icewright/engine';
import type { Compare } from '../compare.ts';
import type { Fields } from '../fields.ts';
import type { Kind, KindCase } from '../kind.ts';

/** Below this a standard error or a sum of squares is nothing but rounding: compared absolutely. */
const NOTHING = 1e-6;

const hasGateTimes = (input: Fields): boolean => input.has('distancesM') && input.has('timesS');

/** `fit.json`: top speed, τ and start offset from gate times. Fits of film pins are told apart by their input. */
export const GATE_FIT_KINDS: readonly Kind[] = [
  {
    name: 'fit',
    fits: hasGateTimes,
    run: (check, compare) => {
      const fit = fitSprint(check.input.numbers('distancesM'), check.input.numbers('timesS'));
      if (isNone(fit)) return compare.same('fit', fit.reason, 'a fit');
      compareFit(fit, check, compare);
    },
  },
  {
    name: 'refuse',
    fits: hasGateTimes,
    run: ({ input, expected }, compare) => {
      const fit = fitSprint(input.numbers('distancesM'), input.numbers('timesS'));
      compare.same('refuse', isNone(fit), expected.flag('refuse'));
      if (expected.has('reason'))
        compare.same('reason', isNone(fit) ? fit.reason : '', expected.text('reason'));
    },
  },
];

const compareFit = (fit: SprintFit, { expected, tolerance }: KindCase, compare: Compare): void => {
  for (const [name, unit] of [
    ['topSpeedMps', 'm/s'],
    ['tauS', 's'],
    ['offsetS', 's'],
  ] as const) {
    compare.number(name, fit[name], expected.number(name), tolerance.numberOr(name, 1e-4), unit);
  }
  if (expected.has('residualSumSquaresS2')) {
    compare.relative(
      'residualSumSquaresS2',
      fit.residualSumSquaresS2,
      expected.number('residualSumSquaresS2'),
      tolerance.numberOr('residualSumSquaresRelative', 1e-4),
      NOTHING ** 2,
    );
  }
  if (!expected.has('standardErrors')) return;
  const allowed = tolerance.numberOr('standardErrorRelative', 1e-3);
  expected.numbersOrNulls('standardErrors').forEach((wanted, i) => {
    const computed = fit.standardErrors?.[i] ?? null;
    const what = `standardErrors[${i}]`;
    if (computed === null || wanted === null) compare.number(what, computed, wanted, allowed, 'relative');
    else compare.relative(what, computed, wanted, allowed, NOTHING);
  });
};
