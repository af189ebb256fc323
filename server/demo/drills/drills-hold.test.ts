import type { Drill } from '@icewright/book';
import { levelOf, playableOf, type Run, rinkOf, runDrill } from '@icewright/engine';
import { describe, expect, it } from 'vitest';
import { demoValues } from '../demo-values.ts';

const film = { hash: 'sampled-sha256:0', byteCount: 1 };
const values = demoValues({ hunt: film, join: film }, { today: '2026-11-25', at: '2026-11-25T12:00:00Z' });

const runOf = (drill: Drill): Run => {
  const playable = playableOf(drill, rinkOf(drill.rink), levelOf(drill.level));
  if (playable.kind !== 'playable') throw new Error(`${drill.title}: ${JSON.stringify(playable.issues)}`);
  return runDrill(playable);
};

const runs = new Map(
  values.flatMap(({ id, value }) => (value.kind === 'drill' ? [[id, runOf(value)] as const] : [])),
);

describe('the drills of the demo, run', () => {
  it('hold: one crossing to look at over all eight, nobody skates into anybody, every gap is kept', () => {
    expect(runs.size).toBe(8);
    const said = [...runs].flatMap(([id, run]) => run.findings.map(finding => `${id}: ${finding.kind}`));
    expect(said).toEqual(['drill-five-together: pathsCrossTooFast']);
  });

  it('three on the heels: two of the three are on the carrier within a stick of the red line', () => {
    const caught = runs.get('drill-three-on-the-heels')!.events.filter(event => event.kind === 'caught');
    expect(caught).toHaveLength(3);
    expect(caught.filter(event => Math.abs(event.atM.xM) < 1.5)).toHaveLength(2);
  });
});
