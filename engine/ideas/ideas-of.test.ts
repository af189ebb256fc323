import { describe, expect, it } from 'vitest';
import { at } from '../drill/drill-shorthand.reference.ts';
import { playableOf } from '../drill/playable.ts';
import type { FreezeScene, FreezeSkater } from '../drill/plan-from-freeze.ts';
import type { Standard } from '../habit/standard.ts';
import { rinkOf } from '../rink/rink-of.ts';
import { levelOf } from '../skater/level.ts';
import { isNone } from '../units/none.ts';
import { ideasOf, ranked } from './ideas-of.ts';
import type { Idea } from './play-idea.ts';
import { problemOf } from './problem-of.ts';

const RINK = rinkOf({ preset: '200x85ft' });
const SETTING = {
  rink: RINK,
  level: levelOf('collegeWomen'),
  seed: 11,
  flow: { roster: { skaters: 20, goalies: 2 }, minutes: 10, beyondLines: 'join' },
} as const;

const one = (id: string, side: 'us' | 'them', xM: number, yM: number): FreezeSkater => ({
  id,
  side,
  kind: 'skater',
  role: id,
  atM: at(xM, yM),
});

/** Theirs come over our line; our first forward is late. An invented picture. */
const RUSH: FreezeScene = {
  skaters: [
    one('X1', 'them', -8, 7),
    one('X2', 'them', -5, -3),
    one('D1', 'us', -11, 5),
    one('D2', 'us', -13, -2),
    one('F1', 'us', 1, 3),
    one('F2', 'us', 5, -6),
    { ...one('G', 'us', -25.5, 0), kind: 'goalie' },
  ],
  puck: { atM: at(-8.5, 6.5), carrier: 'X1' },
};
const LINE = { at: 'puckCrosses', line: 'blueLineMinusX' } as const;

const ids = () => {
  let next = 0;
  return () => `id-${next++}`;
};
const ideasFor = (standard: Standard, scene = RUSH, attacks: 'plusX' | 'minusX' = 'plusX'): Idea[] => {
  const problem = problemOf(scene, attacks, standard, RINK);
  if (isNone(problem)) throw new Error(problem.reason);
  return [...ideasOf(problem, SETTING, ids())];
};

const STANDARDS: readonly (readonly [string, Standard])[] = [
  ['first forward goal-side', { kind: 'goalSide', who: 'firstForwardBack', whom: 'puck', withinM: 1, when: LINE }],
  ['a defender within three metres', { kind: 'within', who: 'nearestDefender', whom: 'carrier', withinM: 3, when: LINE }],
  ['the nearest hunts', { kind: 'within', who: 'anyOfUs', whom: 'puck', withinM: 4, when: { at: 'weLoseThePuck' } }],
  ['two before the net', { kind: 'numbers', zone: 'house', atLeastCount: 2, when: { at: 'theyShoot' } }],
];

describe('ideas from a picture and a habit', () => {
  it.each(STANDARDS)('%s: three drills, each computed, each with a simpler and a harder one', (_, standard) => {
    const ideas = ideasFor(standard);
    console.log(JSON.stringify(ideas.map(i=>[i.shape,i.tuned.kind,i.rateRatio.toFixed(2),i.likeness?.distanceM.toFixed(1),i.likeness?.timeS,i.repsPerMinute.toFixed(1),i.movingRatio.toFixed(2),i.partCount,i.lookFindings.map(f=>f.kind).join('+'),i.scoreM.toFixed(1),i.simpler.kind==='version'?i.simpler.rateRatio.toFixed(2):i.simpler,i.harder.kind==='version'?i.harder.rateRatio.toFixed(2):i.harder]),null,0));
    expect(ideas.map(idea => idea.shape)).toEqual(['pair', 'started', 'picture']);
    for (const idea of ideas) {
      expect(playableOf(idea.plan, RINK, SETTING.level).kind).toBe('playable');
      expect(idea.terms.reduce((sum, term) => sum + term.valueM, 0)).toBeCloseTo(idea.scoreM, 9);
    }
  });
});
void ranked;
