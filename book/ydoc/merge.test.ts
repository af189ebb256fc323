import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as Y from 'yjs';
import type { Drill } from '../documents/drill.ts';
import { inOrder } from '../documents/order.ts';
import { changeText, removeAt, setAt } from './change.ts';
import { moveItem } from './move-item.ts';
import { newDocument } from './new-document.ts';
import { sampleAct, sampleDrill, sampleGame, sampleMoment, sampleSpot } from './sample-documents.ts';
import { readDocument } from './snapshot.ts';

const copyOf = (ydoc: Y.Doc): Y.Doc => {
  const copy = new Y.Doc({ guid: ydoc.guid });
  Y.applyUpdate(copy, Y.encodeStateAsUpdate(ydoc));
  return copy;
};
const meet = (a: Y.Doc, b: Y.Doc) => {
  const [fromA, fromB] = [Y.encodeStateAsUpdate(a), Y.encodeStateAsUpdate(b)];
  Y.applyUpdate(a, fromB);
  Y.applyUpdate(b, fromA);
};
const okValue = (ydoc: Y.Doc) => {
  const read = readDocument(ydoc);
  if (read.kind !== 'ok') throw new Error(JSON.stringify(read));
  expect(read.issues).toEqual([]);
  return read.value;
};

describe('two people edit the same document offline', () => {
  it('a drill: both come back equal and nothing is lost', () => {
    const a = newDocument('drill', 'd1', sampleDrill());
    const b = copyOf(a);
    setAt(a, ['spots', 's1', 'atM'], { xM: 5, yM: 5 }, 'a');
    setAt(a, ['spots', 's3'], sampleSpot(3), 'a');
    changeText(a, ['keyPoints'], 'Start at once, three strides\nStick down', 'a');
    setAt(a, ['spots', 's2', 'acts', 'aa'], sampleAct(1), 'a');
    setAt(b, ['spots', 's1', 'role'], 'D1', 'b');
    setAt(b, ['spots', 's4'], sampleSpot(4), 'b');
    changeText(b, ['keyPoints'], 'Start at once\nStick down on the ice', 'b');
    setAt(b, ['spots', 's2', 'acts', 'bb'], sampleAct(2), 'b');
    meet(a, b);
    expect(okValue(a)).toEqual(okValue(b));
    const drill = okValue(a) as Drill;
    const spots = drill.spots as Record<string, Drill['spots'][keyof Drill['spots']]>;
    expect(Object.keys(spots).sort()).toEqual(['s1', 's2', 's3', 's4']);
    expect(spots.s1).toMatchObject({ atM: { xM: 5, yM: 5 }, role: 'D1' });
    expect(Object.keys(spots.s2!.acts).sort()).toEqual(['aa', 'bb']);
    expect(drill.keyPoints).toBe('Start at once, three strides\nStick down on the ice');
  });

  it('moving the same item on both sides leaves it there once, in one order for both', () => {
    const a = newDocument('drill', 'd1', sampleDrill());
    setAt(a, ['spots', 's3'], sampleSpot(3), 'a');
    const b = copyOf(a);
    moveItem(a, ['spots'], 's1', 2, 'a');
    moveItem(b, ['spots'], 's1', 1, 'b');
    meet(a, b);
    const order = (ydoc: Y.Doc) => inOrder((okValue(ydoc) as Drill).spots).map(([id]) => id);
    expect(order(a)).toEqual(order(b));
    expect([...order(a)].sort()).toEqual(['s1', 's2', 's3']);
  });

  it('a point set by both is one of the two, never half of each', () => {
    const a = newDocument('drill', 'd1', sampleDrill());
    const b = copyOf(a);
    setAt(a, ['spots', 's1', 'atM', 'xM'], 5, 'a');
    setAt(b, ['spots', 's1', 'atM', 'yM'], 6, 'b');
    meet(a, b);
    const { atM } = Object.values((okValue(a) as Drill).spots)[0]!;
    expect([
      { xM: 5, yM: 0 },
      { xM: 0, yM: 6 },
    ]).toContainEqual(atM);
  });

  it('texts written full on both sides are shown up to the limit and kept whole', () => {
    const a = newDocument('drill', 'd1', sampleDrill());
    const b = copyOf(a);
    changeText(a, ['keyPoints'], 'a'.repeat(15_000), 'a');
    changeText(b, ['keyPoints'], 'b'.repeat(15_000), 'b');
    meet(a, b);
    const read = readDocument(a);
    if (read.kind !== 'ok') throw new Error('not read');
    expect((read.value as Drill).keyPoints).toHaveLength(20_000);
    expect(read.issues).toMatchObject([{ code: 'tooLong', path: ['keyPoints'] }]);
    changeText(a, ['keyPoints'], `!${(read.value as Drill).keyPoints}`.slice(0, 20_000), 'a');
    expect((a.getMap('doc').get('keyPoints') as Y.Text).length).toBeGreaterThanOrEqual(30_000);
  });
});

const id = fc.constantFrom('s1', 's2', 's3', 's4', 'm1', 'm2');
const metres = fc.double({ min: -40, max: 40, noNaN: true });
const drillEdit = fc.oneof(
  fc.record({ do: fc.constant('move' as const), id, xM: metres }),
  fc.record({ do: fc.constant('add' as const), id, rank: fc.integer({ min: 0, max: 9 }) }),
  fc.record({ do: fc.constant('remove' as const), id }),
  fc.record({ do: fc.constant('act' as const), id, effort: fc.double({ min: 0, max: 1, noNaN: true }) }),
  fc.record({ do: fc.constant('hold' as const), id }),
  fc.record({ do: fc.constant('reorder' as const), id, to: fc.integer({ min: 0, max: 3 }) }),
  fc.record({ do: fc.constant('text' as const), text: fc.string({ unit: 'grapheme', maxLength: 30 }) }),
  fc.record({ do: fc.constant('whole' as const), id, minutes: fc.integer({ min: 1, max: 60 }) }),
);
type Edit = typeof drillEdit extends fc.Arbitrary<infer Value> ? Value : never;

function apply(ydoc: Y.Doc, edit: Edit): void {
  if (edit.do === 'move') setAt(ydoc, ['spots', edit.id, 'atM', 'xM'], edit.xM, 'x');
  if (edit.do === 'add') setAt(ydoc, ['spots', edit.id], sampleSpot(edit.rank, { a1: sampleAct(1) }), 'x');
  if (edit.do === 'remove') removeAt(ydoc, ['spots', edit.id], 'x');
  if (edit.do === 'act')
    setAt(ydoc, ['spots', edit.id, 'acts', 'a1'], { ...sampleAct(1), effortRatio: edit.effort }, 'x');
  if (edit.do === 'hold')
    setAt(ydoc, ['spots', edit.id, 'acts', 'a1'], { kind: 'hold', rank: 1, seconds: 2 }, 'x');
  if (edit.do === 'reorder') moveItem(ydoc, ['spots'], edit.id, edit.to, 'x');
  if (edit.do === 'text') changeText(ydoc, ['keyPoints'], edit.text, 'x');
  if (edit.do === 'whole') setAt(ydoc, ['minutes'], edit.minutes, 'x');
}

describe('any edits at all', () => {
  it('three devices that meet in any order read the same valid document', () => {
    const edits = fc.array(fc.tuple(fc.integer({ min: 0, max: 2 }), fc.oneof(drillEdit, fc.constant(null))), {
      maxLength: 40,
    });
    fc.assert(
      fc.property(edits, steps => {
        const first = newDocument('drill', 'd1', sampleDrill());
        const devices = [first, copyOf(first), copyOf(first)] as const;
        for (const [who, edit] of steps) {
          if (edit === null) meet(devices[who]!, devices[(who + 1) % 3]!);
          else apply(devices[who]!, edit);
        }
        meet(devices[0], devices[1]);
        meet(devices[1], devices[2]);
        meet(devices[0], devices[1]);
        const values = devices.map(okValue);
        expect(values[1]).toEqual(values[0]);
        expect(values[2]).toEqual(values[0]);
      }),
      { numRuns: 200, seed: 20261125 },
    );
  });

  it('whatever another program writes into a game, it reads as a valid game or is refused with a reason', () => {
    const junk = fc.oneof(
      fc.integer(),
      fc.string(),
      fc.boolean(),
      fc.constant(null),
      fc.array(fc.integer()),
      fc.dictionary(fc.string(), fc.integer(), { noNullPrototype: true }),
    );
    const key = fc.constantFrom(
      'opponent',
      'day',
      'place',
      'score',
      'note',
      'films',
      'moments',
      'freezes',
      'other',
    );
    const inner = fc.constantFrom('habit', 'verdict', 'skater', 'costGoals', 'note', 'taggedAt');
    fc.assert(
      fc.property(fc.array(fc.tuple(key, inner, junk, fc.boolean()), { maxLength: 8 }), writes => {
        const ydoc = newDocument('game', 'g1', sampleGame());
        const root = ydoc.getMap('doc');
        for (const [at, field, value, deep] of writes) {
          const moments = root.get('moments');
          const moment = moments instanceof Y.Map ? moments.get('m1') : undefined;
          if (deep && moment instanceof Y.Map) moment.set(field, value);
          else root.set(at, value);
        }
        const read = readDocument(ydoc);
        if (read.kind === 'refused') {
          expect(read.issues.length).toBeGreaterThan(0);
          return;
        }
        // A valid value can be made into a document, which checks it strictly.
        expect(readDocument(newDocument('game', 'g2', read.value as never))).toMatchObject({
          kind: 'ok',
          issues: [],
        });
      }),
      { numRuns: 300, seed: 20261125 },
    );
  });

  it('moments added by two people are all there', () => {
    const a = newDocument('game', 'g1', sampleGame());
    const b = copyOf(a);
    for (let index = 0; index < 50; index += 1) {
      setAt(a, ['moments', `a${index}`], sampleMoment('from a'), 'a');
      setAt(b, ['moments', `b${index}`], sampleMoment('from b'), 'b');
    }
    meet(a, b);
    expect(okValue(a)).toEqual(okValue(b));
    expect(Object.keys((okValue(a) as { moments: object }).moments)).toHaveLength(102);
  });
});
