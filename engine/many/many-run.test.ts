import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drillOf, named, playableFrom } from '../run/drill-shorthand.reference.ts';
import { runMemory } from '../run/recorder.ts';
import { runDrill } from '../run/run-drill.ts';
import type { ActId } from '../units/ids.ts';
import { humanDraw } from './human-draw.ts';
import { manyRun } from './many-run.ts';
import { type ManyTally, mergeTallies } from './many-tally.ts';
import type { Outcome } from './outcome.ts';
import { contestRate } from './tally-rates.ts';
import { spreadOf } from './where-when.ts';

const playable = playableFrom(drillOf());
const OUTCOMES: readonly Outcome[] = [
  { kind: 'levelWithPuck', spot: named('F3'), atLine: 'blueLineMinusX', withinM: 0.5 },
  { kind: 'passArrives', spot: named('X2'), act: 'X2.0' as ActId },
  { kind: 'caughtBefore', spot: named('X1'), line: 'blueLineMinusX' },
  { kind: 'puckRegained', side: 'us', beforeLine: 'blueLineMinusX' },
  { kind: 'cueInTime', spot: named('D1'), act: 'D1.0' as ActId },
];
const part = (fromRep: number, repCount: number): ManyTally =>
  manyRun(playable, { seed: 11, fromRep, repCount, outcomes: OUTCOMES, memory: runMemory() });

describe('a many-run', () => {
  const whole = part(0, 120);

  it('gives the same bytes for the same seed, and others for another', () => {
    expect(JSON.stringify(part(0, 120))).toBe(JSON.stringify(whole));
    const other = manyRun(playable, { seed: 12, repCount: 120, outcomes: OUTCOMES });
    expect(JSON.stringify(other.outcomes)).not.toBe(JSON.stringify(whole.outcomes));
  });

  it('gives the same bytes however the reps are parted, and in whatever order the parts come together', () => {
    const parted = [part(70, 50), part(0, 3), part(3, 67)];
    expect(JSON.stringify(parted.reduce(mergeTallies))).toBe(JSON.stringify(whole));
    const single = Array.from({ length: 24 }, (_, rep) => part(rep, 1));
    const joined = JSON.stringify(part(0, 24));
    fc.assert(
      fc.property(fc.shuffledSubarray([...single.keys()], { minLength: 24 }), fc.nat(22), (order, at) => {
        const inOrder = order.map(rep => single[rep]!);
        const left = inOrder.slice(0, at + 1).reduce(mergeTallies);
        const right = inOrder.slice(at + 1).reduce(mergeTallies);
        expect(JSON.stringify(mergeTallies(right, left))).toBe(joined);
      }),
      { numRuns: 40, seed: 5 },
    );
  });

  it('counts every rep once and keeps its intervals and places within the sheet', () => {
    expect(whole.repCount).toBe(120);
    const [toX2, toX1] = whole.passes;
    for (const pass of [toX2!, toX1!]) {
      // The second is made by who has the first, and not every pass is brought under control.
      expect(pass.madeCount).toBe(pass === toX2 ? 120 : toX2!.received.count);
      expect(pass.received.count + pass.cutOff.count + pass.missed.count).toBeLessThanOrEqual(120);
    }
    const chase = whole.contests[0]!;
    expect(chase).toMatchObject({ spot: 'F3', whom: 'X1', kind: 'chase', startedCount: 120 });
    const rate = contestRate(chase)!;
    expect(rate.lowerRatio).toBeLessThanOrEqual(rate.rateRatio);
    const caught = spreadOf(chase.won)!;
    expect(caught.timeS.value).toBeGreaterThan(0.5);
    expect(Math.abs(caught.xM.value)).toBeLessThan(30);
    expect(chase.won.samples.length).toBe(Math.min(chase.won.count, 250));
  });

  it('judges as a plain reading of each rep does', () => {
    let level = 0;
    let arrived = 0;
    for (let rep = 0; rep < 40; rep++) {
      const run = runDrill(playable, humanDraw(playable, 11, rep));
      const over = run.events.find(event => event.kind === 'puckCrosses' && event.line === 'blueLineMinusX');
      const f3 = run.tracks.find(track => track.spot === named('F3'))!;
      if (over && f3.xM[Math.ceil(over.timeS * 120)]! <= over.atM.xM + 0.5) level++;
      if (run.events.some(event => event.kind === 'receive' && event.spot === named('X1'))) arrived++;
    }
    const forty = part(0, 40);
    expect(forty.outcomes[0]!.yes.count).toBe(level);
    expect(forty.outcomes[1]!.yes.count).toBe(arrived);
    expect(forty.lines.find(one => one.line === 'blueLineMinusX')!.levelCount[named('F3')] ?? 0).toBe(level);
  });

  it('an own timed skater takes the place of the level’s', () => {
    const slow = { ...playable.level.model, topSpeedMps: 3 };
    const tally = manyRun(playable, { seed: 11, repCount: 20, models: { [named('F3')]: slow } });
    const usual = part(0, 20);
    expect(spreadOf(tally.contests[0]!.won)?.timeS.value ?? 99).toBeGreaterThan(
      spreadOf(usual.contests[0]!.won)!.timeS.value,
    );
  });
});
