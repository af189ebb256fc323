import { flowOf, isNone, MANY_STRIDE_HZ, manyRun, outcomesOf, runMemory } from '@icewright/engine';
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

describe('reps of the demo in long strides', () => {
  const memory = runMemory();
  const PAIRED = 100;
  const FEWEST_TIMES = 10;
  it.each(ids)('%s: come out as in short ones', { timeout: 60_000 }, id => {
    const drill = drills.get(id)!;
    const playable = playableFrom(drill);
    const outcomes = outcomesOf(drill);
    const talliedAt = (strideHz: number) =>
      manyRun(playable, { seed: 3, repCount: PAIRED, outcomes, memory, strideHz }).outcomes;
    const short = talliedAt(120);
    talliedAt(MANY_STRIDE_HZ).forEach((long, i) => {
      const said = JSON.stringify(long.outcome);
      // The same people and luck in both: what differs is the strides alone.
      const apartRatio = (long.yes.count - short[i]!.yes.count) / PAIRED;
      expect(Math.abs(apartRatio), said).toBeLessThanOrEqual(0.01);
      for (const verdict of ['yes', 'other'] as const) {
        const before = new Map(short[i]![verdict].samples.map(([, rep, , , ms]) => [rep, ms]));
        const laterMs = long[verdict].samples.flatMap(([, rep, , , ms]) =>
          before.has(rep) ? [ms - before.get(rep)!] : [],
        );
        const { meanMs, errorMs } = meanOf(laterMs);
        // Two close to each other wander by more than a stride either way, so a mean is known only so well, and that of a few not at all.
        if (laterMs.length >= FEWEST_TIMES) expect(Math.abs(meanMs) - 2 * errorMs, said).toBeLessThan(20);
      }
    });
  });
});

/** Mean and its standard error. */
const meanOf = (ms: readonly number[]): { readonly meanMs: number; readonly errorMs: number } => {
  const count = Math.max(1, ms.length);
  const meanMs = ms.reduce((sum, one) => sum + one, 0) / count;
  const squares = ms.reduce((sum, one) => sum + (one - meanMs) ** 2, 0);
  return { meanMs, errorMs: count > 1 ? Math.sqrt(squares / (count - 1) / count) : Number.POSITIVE_INFINITY };
};

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
