import { findSmallGame, rinkOf, runDrill } from '@icewright/engine';
import { describe, expect, it } from 'vitest';
import { ARE_FOR } from './drills-are-for.data.ts';
import { eventsOf } from './in-run.data.ts';
import { drills, playableFrom, runs, team } from './run-of-demo.data.ts';

const ids = [...drills.keys()];

/** Findings to look at that a drill is meant to have, with the reason. */
const MEANT: Readonly<Record<string, readonly string[]>> = {};

describe('the drills of the demo, run', () => {
  it('are twenty, each with what it is for, key points and at most one drill it is a version of', () => {
    expect(ids).toHaveLength(20);
    expect(Object.keys(ARE_FOR).sort()).toEqual([...ids].sort());
    for (const drill of drills.values()) {
      expect(drill.keyPoints.split('\n').length, drill.title).toBeGreaterThanOrEqual(2);
      if (drill.variantOf) expect(ids).toContain(drill.variantOf.drill);
    }
  });

  it.each(ids)('%s has nothing to look at', id => {
    const found = [
      ...runs.get(id)!.findings,
      ...findSmallGame(drills.get(id)!, rinkOf(drills.get(id)!.rink), 20),
    ];
    expect(
      found.filter(one => one.weight === 'look').map(one => `${one.kind} ${one.spots.join(' ')}`),
    ).toEqual(MEANT[id] ?? []);
  });

  it.each(ids)('%s: every act starts, and every pass comes to whom it is for', id => {
    const run = runs.get(id)!;
    const acts = Object.values(drills.get(id)!.spots).flatMap(spot => Object.values(spot.acts));
    expect(eventsOf(run, 'actStarts')).toHaveLength(acts.length);
    for (const pass of eventsOf(run, 'pass'))
      expect(
        eventsOf(run, 'receive').some(one => one.from === pass.spot && one.spot === pass.to),
        `${pass.spot} to ${pass.to}`,
      ).toBe(true);
  });

  it.each(ids)('%s: what is asked of its reps is what it is for', id => {
    const { wanted, habits } = drills.get(id)!;
    const asked = wanted ?? {
      kind: 'standardHeld',
      standard: Object.entries(team.habits).find(([one]) => one === habits[0])?.[1].standard,
    };
    expect(asked).toEqual(ARE_FOR[id]!.want);
  });

  it.each(ids.map(id => [id, ARE_FOR[id]!.says]))('%s: %s', id => {
    expect(ARE_FOR[id]!.shows(runs.get(id)!)).toBe(true);
  });

  it.each([
    ['drill-off-the-boards', 'spot-d1'],
    ['drill-over-the-stick', 'spot-d1'],
  ])('%s: flat and straight, the same pass is cut off', (id, passer) => {
    const drill = structuredClone(drills.get(id)!);
    const spot = Object.entries(drill.spots).find(([name]) => name === passer)![1];
    for (const act of Object.values(spot.acts))
      if (act.kind === 'pass') Object.assign(act, { way: 'direct' });
    expect(eventsOf(runDrill(playableFrom(drill)), 'intercept')).toHaveLength(1);
  });

  it('past the stick: passed at once, it is cut off', () => {
    const drill = structuredClone(drills.get('drill-past-the-stick')!);
    const spot = Object.entries(drill.spots).find(([name]) => name === 'spot-f1')![1];
    for (const act of Object.values(spot.acts))
      if (act.kind === 'pass') Object.assign(act, { cue: { on: 'after', seconds: 0.3 } });
    expect(eventsOf(runDrill(playableFrom(drill)), 'intercept')).toHaveLength(1);
  });

  it('between them use what the studio can do', () => {
    const acts = [...drills.values()].flatMap(drill =>
      Object.values(drill.spots).flatMap(spot => Object.values(spot.acts)),
    );
    const kinds = new Set(acts.map(act => act.kind));
    for (const kind of [
      'pickUp',
      'leave',
      'steal',
      'screen',
      'stop',
      'turn',
      'pivot',
      'face',
      'gap',
      'chase',
    ] as const)
      expect(kinds).toContain(kind);
    const ways = new Set(acts.flatMap(act => (act.kind === 'pass' ? [act.way] : [])));
    expect([...ways].sort()).toEqual(['bank', 'direct', 'drop', 'rim', 'saucer']);
    const cues = new Set(acts.flatMap(act => act.cue?.on ?? []));
    for (const cue of [
      'whistle',
      'after',
      'receive',
      'shot',
      'losesPuck',
      'caught',
      'spotCrosses',
      'reaches',
    ] as const)
      expect(cues).toContain(cue);
    const all = [...drills.values()];
    expect(
      all
        .filter(drill => drill.variantOf)
        .map(drill => drill.variantOf!.as)
        .sort(),
    ).toEqual(['fewer', 'halfIce', 'harder', 'harder', 'simpler']);
    expect(all.filter(drill => Object.keys(drill.games).length > 0)).toHaveLength(1);
    expect(new Set(all.map(drill => drill.rink.preset))).toEqual(
      new Set(['200x85ft', 'halfIce', 'crossIce']),
    );
  });
});
