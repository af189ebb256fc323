import type { DrillAct } from '@icewright/book';
import { levelOf, playableOf, rinkOf, runDrill, type SpotId } from '@icewright/engine';
import { expect, it } from 'vitest';
import { afterWrites } from '../write.ts';
import { at, drillWith } from './drill-of-tests.reference.ts';
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

/** Three of ours with the puck on F2, against two who stand each by another of them; F1 was set down first. */
const threeOnTwo = () => {
  const places = { f1: at(-10, 12), f2: at(-5, 0), f3: at(-10, -12), x1: at(5, -1), x2: at(4, -8) };
  const drill = drillWith({ spots: Object.keys(places) });
  return afterWrites(drill, [
    ...Object.entries(places).map(([name, atM]) => ({ path: ['spots', name, 'atM'], value: atM })),
    ...['x1', 'x2'].map(name => ({ path: ['spots', name, 'side'], value: 'them' })),
    { path: ['pucks', 'p'], value: { atM: at(-4.5, 0), count: 1, ownerSpot: 'f2' } },
  ]);
};

it('a gap is kept to the nearest whom no mate keeps already, whoever was set down first', () => {
  const drill = threeOnTwo();
  const first = newAct(drill, 'x1' as SpotId, 'gap')!;
  expect(first).toMatchObject({ whom: 'f2' });
  const after = afterWrites(drill, [newActWrite('x1' as SpotId, 'a' as never, first)]);
  expect(newAct(after, 'x2' as SpotId, 'gap')).toMatchObject({ whom: 'f3' });
});

it('who has the puck is chased, gone for and shut off', () => {
  const drill = threeOnTwo();
  expect(newAct(drill, 'x2' as SpotId, 'chase')).toMatchObject({ whom: 'f2' });
  expect(newAct(drill, 'x2' as SpotId, 'steal')).toMatchObject({ whom: 'f2' });
  expect(newAct(drill, 'x2' as SpotId, 'screen')).toMatchObject({ from: 'f2', to: 'f3' });
});
