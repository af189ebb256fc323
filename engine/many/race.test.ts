import { jStat } from 'jstat';
import { describe, expect, it } from 'vitest';
import { BLADE_AHEAD_M } from '../drill/drill-rows.ts';
import { rinkOf } from '../rink/rink-of.ts';
import { at, named, planOf, playableFrom, skate } from '../run/drill-shorthand.reference.ts';
import { runMemory } from '../run/recorder.ts';
import { levelOf } from '../skater/level.ts';
import { wilsonInterval } from '../statistics/rates.ts';
import { freeQuantitiesOf } from './free-quantity.ts';
import { manyRun } from './many-run.ts';
import type { Outcome } from './outcome.ts';
import { raceShare } from './race.reference.ts';
import { tune } from './tune.ts';

const rink = rinkOf({ preset: '200x85ft' });
const level = levelOf('collegeWomen');
const lineXM = rink.lines.blueLineMinusX.centreXM;
const CARRIER_XM = 10;
const WITHIN_M = 0.5;

/** X1 carries down one side, F3 races down the other; both start from rest at the whistle, looking the way they go. */
const raceFrom = (chaserXM: number) =>
  planOf([
    {
      role: 'X1',
      side: 'them',
      atM: at(CARRIER_XM, 8),
      facingRad: Math.PI,
      puck: true,
      acts: [skate([at(0, 8), at(-24, 8)], { kind: 'carry' })],
    },
    {
      role: 'F3',
      atM: at(chaserXM, -8),
      facingRad: Math.PI,
      acts: [skate([at(0, -8), at(-24, -8)])],
    },
  ]);

const outcome: Outcome = {
  kind: 'levelWithPuck',
  spot: named('F3'),
  atLine: 'blueLineMinusX',
  withinM: WITHIN_M,
};

const shareFrom = (chaserXM: number): number =>
  raceShare({
    model: level.model,
    carrierM: CARRIER_XM - BLADE_AHEAD_M.value - lineXM,
    chaserM: chaserXM - lineXM - WITHIN_M,
    normalBelow: z => jStat.normal.cdf(z, 0, 1),
  });

describe('a race whose odds can be integrated', () => {
  // An interval that a right run leaves once in 2000 times; the seed is fixed.
  const REPS = 600;
  for (const chaserXM of [9.3, 10.6]) {
    it(`from ${chaserXM} m comes out as the normal integral says`, () => {
      const playable = playableFrom(raceFrom(chaserXM));
      const tally = manyRun(playable, {
        seed: 2,
        repCount: REPS,
        outcomes: [outcome],
        memory: runMemory(),
      });
      const seen = tally.outcomes[0]!.yes.count;
      const interval = wilsonInterval({ successCount: seen, trialCount: REPS }, 0.9995);
      if ('kind' in interval) throw new Error(interval.reason);
      const share = shareFrom(chaserXM);
      expect(share).toBeGreaterThan(interval.lowerRatio);
      expect(share).toBeLessThan(interval.upperRatio);
    });
  }

  it('is tuned to 6 in 10 where the integral has 6 in 10', () => {
    const plan = raceFrom(12);
    const free = freeQuantitiesOf(plan, named('F3'))[0]!;
    const answer = tune({ plan, rink, level, free, outcome, seed: 4 }, 0.6, {
      scanReps: 60,
      repCount: 400,
    });
    if (answer.kind !== 'reached') throw new Error(answer.kind);
    let low = 5;
    let high = 15;
    for (let i = 0; i < 40; i++) {
      const middle = (low + high) / 2;
      if (shareFrom(middle) > 0.6) low = middle;
      else high = middle;
    }
    expect(Math.abs(answer.value - low)).toBeLessThan(2 * answer.plusMinus);
    expect(answer.plusMinus).toBeLessThan(0.5);
    expect(answer.rate.lowerRatio).toBeLessThan(0.6);
    expect(answer.rate.upperRatio).toBeGreaterThan(0.6);
  });
});
