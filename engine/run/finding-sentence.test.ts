import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { DrillPlan } from '../drill/drill.ts';
import { findingSentence } from './finding-sentence.ts';
import type { Finding } from './run-result.ts';

const plan: DrillPlan = { spots: {}, pucks: {}, gear: {} };
const inTheWay = (value: number): Finding => ({
  kind: 'lineInTheWay',
  weight: 'look',
  timeS: 1,
  atM: { xM: 0, yM: 0 },
  spots: [],
  value,
  threshold: 1.5,
  unit: 'm',
  status: 'estimate',
  source: 'invented',
});

it('never rounds a value onto its limit: one digit more parts them', () => {
  expect(findingSentence(inTheWay(1.46), plan)).toContain('1.46 m from it, 1.50 m is the least');
  expect(findingSentence(inTheWay(1.2), plan)).toContain('1.2 m from it, 1.5 m is the least');
  expect(findingSentence(inTheWay(1.46), plan, 'feet')).toContain('4.8 ft from it, 4.9 ft is the least');
});

it('whatever the value: what is printed lies on the side of the limit where it is', () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 1.499, noNaN: true }), value => {
      const [is, least] = [...findingSentence(inTheWay(value), plan).matchAll(/([\d.]+) m/g)].map(one =>
        Number(one[1]),
      );
      expect(is).toBeLessThan(least!);
    }),
    { seed: 3 },
  );
});
