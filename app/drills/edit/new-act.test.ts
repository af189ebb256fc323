import type { DrillAct } from '@icewright/book';
import { levelOf, playableOf, rinkOf, runDrill, type SpotId } from '@icewright/engine';
import { expect, it } from 'vitest';
import { afterWrites } from '../write.ts';
import { drillWith } from './drill-of-tests.reference.ts';
import { newAct, newActWrite } from './new-act.ts';

const KINDS: readonly DrillAct['kind'][] = [
  'skate',
  'carry',
  'pass',
  'shoot',
  'hold',
  'chase',
  'gap',
  'pickUp',
  'leave',
  'steal',
  'screen',
  'stop',
  'turn',
  'pivot',
  'face',
];

it.each(KINDS)('%s, as it is added, can be run; the first act of a spot waits for the whistle', kind => {
  const drill = drillWith({ spots: ['f1', 'f2', 'f3'] });
  const act = newAct(drill, 'f1' as SpotId, kind)!;
  expect(act).toMatchObject({ kind, rank: 0, cue: { on: 'whistle' } });
  const after = afterWrites(drill, [newActWrite('f1' as SpotId, 'a' as never, act)]);
  const playable = playableOf(after, rinkOf(after.rink), levelOf(after.level));
  if (playable.kind !== 'playable') throw new Error(JSON.stringify(playable.issues));
  expect(runDrill(playable).sampleCount).toBeGreaterThan(0);
  expect(newAct(after, 'f1' as SpotId, kind)).toMatchObject({ rank: 1 });
});

it('an act that needs another is none when there is nobody else', () => {
  const alone = drillWith({ spots: ['f1'] });
  const made = KINDS.filter(kind => newAct(alone, 'f1' as SpotId, kind) === null);
  expect(made).toEqual(['pass', 'chase', 'gap', 'steal', 'screen']);
});
