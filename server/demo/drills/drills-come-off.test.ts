import { flowOf, isNone, manyRun, runMemory } from '@icewright/engine';
import { describe, expect, it } from 'vitest';
import { ARE_FOR } from './drills-are-for.data.ts';
import { drills, playableFrom, runs } from './run-of-demo.data.ts';

const ids = [...drills.keys()];
const REPS = 40;
const HERE = { skaters: 20, goalies: 2 };

describe('the drills of the demo, many times', () => {
  const memory = runMemory();
  it.each(ids)('%s: what it is for comes now and then, and not always', id => {
    const { want, says } = ARE_FOR[id]!;
    const tally = manyRun(playableFrom(drills.get(id)!), {
      seed: 7,
      repCount: REPS,
      outcomes: [want],
      memory,
    });
    const rate = tally.outcomes[0]!.yes.count / REPS;
    expect(rate, `${says}: ${rate}`).toBeGreaterThanOrEqual(0.3);
    expect(rate, `${says}: ${rate}`).toBeLessThanOrEqual(0.95);
  });
});

describe('the drills of the demo as blocks of practice', () => {
  it.each(ids)('%s: nobody waits for ever, and no line stands in the way', id => {
    const drill = drills.get(id)!;
    const flow = flowOf(drill, runs.get(id)!, { roster: HERE, minutes: drill.minutes, beyondLines: 'join' });
    if (isNone(flow)) throw new Error(flow.reason);
    const said = `rest for a second of work ${flow.each.restRatio?.toFixed(1)}, moving ${(100 * flow.movingRatio).toFixed(0)} %`;
    expect(
      flow.findings.filter(one => one.weight === 'look').map(one => one.kind),
      said,
    ).toEqual([]);
    // Skaters here waited 2 to 20 times as long as they worked in drills with lines; common practice, no source.
    expect(flow.each.restRatio, said).toBeGreaterThan(1);
    expect(flow.each.restRatio, said).toBeLessThan(20);
    expect(flow.movingRatio, said).toBeGreaterThan(0.04);
    expect(flow.movingRatio, said).toBeLessThan(0.7);
    expect(flow.each.fewestGoes, said).toBeGreaterThanOrEqual(3);
  });
});
