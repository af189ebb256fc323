import { describe, expect, it } from 'vitest';
import type { DrillPlan } from '../drill/drill.ts';
import { boardsDistanceAt } from '../drill/in-boards.ts';
import { puckModelOf } from '../puck/puck-model.ts';
import { slideStopDistance, slowingOf } from '../puck/slide.ts';
import { at, named, planOf, playableFrom, skate } from './drill-shorthand.reference.ts';
import { findingSentence } from './finding-sentence.ts';
import { runDrill } from './run-drill.ts';

const bankPass = (
  fromM: { xM: number; yM: number },
  toM: { xM: number; yM: number },
  speedMps: number,
): DrillPlan =>
  planOf([
    {
      role: 'F1',
      atM: fromM,
      puck: true,
      acts: [
        { kind: 'pass', toSpot: named('F2'), way: 'bank', speedMps, cue: { on: 'after', seconds: 0.5 } },
      ],
    },
    {
      role: 'F2',
      atM: toM,
      acts: [skate([at(toM.xM / 2, toM.yM), at(0, toM.yM / 2)], { effortRatio: 0.6 })],
    },
  ]);

describe('a pass off the boards that is not there', () => {
  const plan = bankPass(at(0, 0), at(8, 0), 2);
  const playable = playableFrom(plan);
  const run = runDrill(playable);

  it('is one that stops before it gets to any boards', () => {
    const stopM = slideStopDistance(slowingOf(puckModelOf()), 2);
    expect(stopM).toBeLessThan(boardsDistanceAt(playable.rink.boards, 1, 0) - 1);
  });

  it('is a finding, and the passer keeps the puck', () => {
    const finding = run.findings.find(one => one.kind === 'noBankPass')!;
    expect(finding).toMatchObject({
      weight: 'look',
      spots: ['F1', 'F2'],
      act: 'F1.0',
      value: 0,
      threshold: 1,
    });
    expect(finding.timeS).toBeCloseTo(0.5, 9);
    expect(findingSentence(finding, plan)).toBe(
      'No way off the boards from F1 to F2 at this speed, with one bounce or with two.',
    );
    expect(run.events.some(event => event.kind === 'pass')).toBe(false);
    expect(run.pucks[0]!.owner[run.sampleCount - 1]).toBe(0);
  });

  it('is no finding at a speed that gets there', () => {
    const hard = runDrill(playableFrom(bankPass(at(0, 0), at(8, 0), 16)));
    expect(hard.findings.map(one => one.kind)).not.toContain('noBankPass');
    expect(hard.events.some(event => event.kind === 'pass')).toBe(true);
  });
});
