import { type Drill, drillPartText, readDrillPart } from '@icewright/book';
import type { SpotId } from '@icewright/engine';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { afterWrites } from '../write.ts';
import { copied } from './copied.ts';
import { at, bareDrill, drillWith } from './drill-of-tests.reference.ts';
import { halfTurned } from './laid-elsewhere.ts';
import { pasted } from './pasted.ts';
import { movedBy } from './place-map.ts';
import { anyDrill } from './random-drill.reference.ts';
import { everything, pickedAct, pickedSpot } from './selection.ts';
import { duplicatedToOtherEnd } from './to-other-end.ts';

const HERE = movedBy(at(0, 0));

describe('copy and paste', () => {
  it('the whole drill pasted on bare ice is the same up to its ids', () => {
    fc.assert(
      fc.property(anyDrill(), drill => {
        const read = readDrillPart(drillPartText(copied(drill, everything(drill))));
        if (read.kind !== 'part') throw new Error(read.said);
        const made = pasted(bareDrill(), read.part, HERE);
        expect(made.said).toEqual([]);
        expect(withoutIds(afterWrites(bareDrill(), made.writes))).toEqual(
          withoutIds({ ...drill, flow: undefined }),
        );
      }),
      { numRuns: 300, seed: 11 },
    );
  });

  it('duplicated to the other end is the half turn, beside what was there, with roles of its own', () => {
    fc.assert(
      fc.property(anyDrill(), drill => {
        const made = duplicatedToOtherEnd(drill, everything(drill));
        const both = afterWrites(drill, made.writes);
        const copies = new Set<string>(made.spotIds.values());
        const only = (keep: boolean) => ({
          ...both,
          spots: Object.fromEntries(Object.entries(both.spots).filter(([id]) => copies.has(id) === keep)),
        });
        expect(only(false).spots).toEqual(drill.spots);
        const turned = afterWrites(drill, halfTurned(drill, everything(drill)));
        const shapeOf = (plan: object) =>
          withoutRoles(withoutIds({ ...plan, pucks: {}, gear: {}, games: {}, flow: undefined }));
        expect(shapeOf(only(true))).toEqual(shapeOf(turned));
        const roles = Object.values(both.spots).flatMap(spot => (spot.kind === 'skater' ? [spot.role] : []));
        expect(new Set(roles).size).toBe(roles.length);
        expect(Object.keys(both.pucks).length).toBe(2 * Object.keys(drill.pucks).length);
      }),
      { numRuns: 200, seed: 12 },
    );
  });

  it('an act whose other is missing stays behind, and says who is missing', () => {
    const drill = afterWrites(drillWith({ spots: ['f1', 'f2'] }), [
      {
        path: ['spots', 'f1', 'acts', 'a'],
        value: { rank: 0, kind: 'pass', toSpot: 'f2', way: 'direct', speedMps: 12 },
      },
      {
        path: ['spots', 'f1', 'acts', 'b'],
        value: { rank: 1, kind: 'hold', seconds: 1, cue: { on: 'receive', spot: 'f2' } },
      },
    ]);
    const part = copied(drill, [pickedSpot('f1' as SpotId)]);
    const made = pasted(bareDrill(), part, HERE);
    expect(made.said).toEqual([
      'An act of F1 stayed behind: F2 is not in this drill.',
      'F1 no longer waits for F2, who is not in this drill.',
    ]);
    const [spot] = Object.values(afterWrites(bareDrill(), made.writes).spots);
    expect(Object.values(spot!.acts)).toEqual([{ rank: 1, kind: 'hold', seconds: 1 }]);
    // In the drill it came from the other is there, and the copy names the same one.
    expect(pasted(drill, part, HERE).said).toEqual([]);
  });

  it('acts alone go to who is selected, after all that is done already, and nobody passes to himself', () => {
    const drill = afterWrites(drillWith({ spots: ['f1', 'f2'] }), [
      {
        path: ['spots', 'f1', 'acts', 'a'],
        value: { rank: 0, kind: 'pass', toSpot: 'f2', way: 'direct', speedMps: 12 },
      },
      { path: ['spots', 'f2', 'acts', 'c'], value: { rank: 4, kind: 'hold', seconds: 1 } },
    ]);
    const part = copied(drill, [pickedAct('f1' as SpotId, 'a' as never)]);
    expect(part.spots).toEqual({});
    expect(pasted(drill, part, HERE, 'f2' as SpotId).writes).toEqual([]);
    expect(pasted(drill, part, HERE, 'f2' as SpotId).said).toHaveLength(1);
    expect(pasted(drill, part, HERE).said).toEqual(['Select who shall do it, then paste.']);
    const hold = copied(drill, [pickedAct('f2' as SpotId, 'c' as never)]);
    const after = afterWrites(drill, pasted(drill, hold, HERE, 'f1' as SpotId).writes);
    expect(Object.values(after.spots['f1' as SpotId]!.acts)).toContainEqual({
      rank: 1,
      kind: 'hold',
      seconds: 1,
    });
  });

  it('more spots than a drill has room for are refused', () => {
    const drill = drillWith({ spots: Array.from({ length: 40 }, (_, i) => `f${i}`) });
    const made = pasted(drill, copied(drill, everything(drill)), HERE);
    expect(made.writes).toEqual([]);
    expect(made.said).toEqual(['A drill has room for 60 spots.']);
  });
});

/** The drill with every id said by what it stands for: the rank of a spot, the place in the list for the rest. */
const withoutIds = (drill: object): unknown => {
  const plan = drill as Drill;
  const names = new Map<string, string>();
  const byRank = Object.entries(plan.spots).sort(([, a], [, b]) => a.rank - b.rank);
  for (const [place, [id]] of byRank.entries()) names.set(id, `spot ${place}`);
  for (const [place, id] of Object.keys(plan.gear).entries()) names.set(id, `gear ${place}`);
  const spots = byRank.map(([, { rank: _rank, ...spot }]) => ({
    ...spot,
    acts: Object.values(spot.acts).sort((a, b) => a.rank - b.rank),
  }));
  const said = {
    spots,
    pucks: Object.values(plan.pucks),
    gear: Object.values(plan.gear),
    games: Object.values(plan.games),
  };
  return JSON.parse(JSON.stringify(said), (_, each) =>
    typeof each === 'string'
      ? (names.get(each) ?? each)
      : typeof each === 'number'
        ? Math.round(each * 1e9) / 1e9 + 0
        : each,
  );
};

const withoutRoles = (said: unknown): unknown =>
  JSON.parse(JSON.stringify(said), (key, each) => (key === 'role' ? '' : each));
