import { describe, expect, it } from 'vitest';
import * as Y from 'yjs';
import type { Drill } from '../documents/drill.ts';
import { inOrder } from '../documents/order.ts';
import { changeText, removeAt, setAt } from './change.ts';
import { moveItem } from './move-item.ts';
import { newDocument } from './new-document.ts';
import { sampleAct, sampleDrill, sampleSpot } from './sample-documents.ts';
import { readDocument, snapshotOf } from './snapshot.ts';
import { undoOf } from './undo.ts';

const me = { who: 'me' };
const drillIn = (ydoc: Y.Doc): Drill => {
  const read = readDocument(ydoc);
  if (read.kind !== 'ok' || read.value.kind !== 'drill') throw new Error(JSON.stringify(read));
  expect(read.issues).toEqual([]);
  return read.value;
};
const fresh = () => newDocument('drill', 'drill-1', sampleDrill());

describe('changing a document', () => {
  it('gives back what was put in', () => {
    expect(drillIn(fresh())).toEqual(sampleDrill());
  });

  it('sets fields, inner parts, items and lists', () => {
    const ydoc = fresh();
    expect(setAt(ydoc, ['title'], 'Level with the puck', me)).toEqual({ kind: 'done' });
    setAt(ydoc, ['spots', 's1', 'atM', 'xM'], -4.5, me);
    setAt(ydoc, ['spots', 's1', 'acts', 'a2'], { ...sampleAct(2), effortRatio: 1 }, me);
    setAt(ydoc, ['spots', 's1', 'acts', 'a1', 'throughM', '0', 'yM'], 7, me);
    setAt(ydoc, ['spots', 's1', 'acts', 'a1', 'cue'], { on: 'after', seconds: 2 }, me);
    setAt(ydoc, ['gear'], { g1: { kind: 'pylon', atM: { xM: 1, yM: 1 }, facingRad: 0 } }, me);
    const drill = drillIn(ydoc) as unknown as Record<string, never> & Drill;
    const spots = drill.spots as Record<string, Drill['spots'][keyof Drill['spots']]>;
    expect(drill.title).toBe('Level with the puck');
    expect(spots.s1!.atM).toEqual({ xM: -4.5, yM: 0 });
    expect(spots.s1!.acts).toEqual({
      a1: { ...sampleAct(1), throughM: [{ xM: 1, yM: 7 }], cue: { on: 'after', seconds: 2 } },
      a2: { ...sampleAct(2), effortRatio: 1 },
    });
    expect(Object.keys(drill.gear)).toEqual(['g1']);
  });

  it.each([
    ['a number out of its range', ['spots', 's1', 'acts', 'a1', 'effortRatio'], 1.2],
    ['a field nobody knows', ['colour'], 'red'],
    ['an item that is not there', ['spots', 'gone', 'role'], 'F2'],
    ['an item that lacks a field', ['spots', 's9'], { rank: 1 }],
    ['a point outside', ['spots', 's1', 'atM'], { xM: 1e6, yM: 0 }],
    ['not a number', ['spots', 's1', 'rank'], Number.NaN],
    ['another kind', ['kind'], 'game'],
    ['nothing in a required field', ['title'], undefined],
    ['a way to the prototype', ['__proto__', 'x'], 1],
    ['an item named for the prototype', ['spots', '__proto__'], sampleSpot(3)],
  ] as const)('refuses %s and changes nothing', (_, path, value) => {
    const ydoc = fresh();
    const before = Y.encodeStateAsUpdate(ydoc);
    const changed = setAt(ydoc, path, value, me);
    expect(changed.kind).toBe('refused');
    expect(Y.encodeStateAsUpdate(ydoc)).toEqual(before);
  });

  it('names the place of a refused value', () => {
    const changed = setAt(fresh(), ['spots', 's1', 'acts', 'a1', 'effortRatio'], 1.2, me);
    expect(changed.kind === 'refused' && changed.issues[0]!.path.join('.')).toBe(
      'spots.s1.acts.a1.effortRatio',
    );
    const whole = setAt(fresh(), ['spots', 's9'], { ...sampleSpot(1), waitingCount: -1 }, me);
    expect(whole.kind === 'refused' && whole.issues[0]!.path.join('.')).toBe('spots.s9.waitingCount');
  });

  it('removes items and optional fields only', () => {
    const ydoc = fresh();
    setAt(ydoc, ['spots', 's1', 'acts', 'a1', 'cue'], { on: 'whistle' }, me);
    expect(removeAt(ydoc, ['spots', 's1', 'acts', 'a1', 'cue'], me)).toEqual({ kind: 'done' });
    expect(removeAt(ydoc, ['spots', 's1', 'acts', 'a1', 'stops'], me).kind).toBe('refused');
    expect(removeAt(ydoc, ['title'], me).kind).toBe('refused');
    expect(removeAt(ydoc, ['spots', 's2'], me)).toEqual({ kind: 'done' });
    expect(Object.keys(drillIn(ydoc).spots)).toEqual(['s1']);
  });

  it('a whole new item in the place of one of another kind is taken as it is', () => {
    const ydoc = fresh();
    setAt(ydoc, ['spots', 's1', 'acts', 'a1'], { kind: 'hold', rank: 1, seconds: 3 }, me);
    expect(Object.values(drillIn(ydoc).spots)[0]!.acts).toEqual({
      a1: { kind: 'hold', rank: 1, seconds: 3 },
    });
  });

  it('changes of a text touch only what differs', () => {
    const ydoc = fresh();
    changeText(ydoc, ['keyPoints'], 'Start at once!\nStick down 🏒', me);
    changeText(ydoc, ['keyPoints'], 'Start at once!\nStick down 🏑', me);
    expect(drillIn(ydoc).keyPoints).toBe('Start at once!\nStick down 🏑');
    expect(changeText(ydoc, ['title'], 'x', me).kind).toBe('refused');
    expect(changeText(ydoc, ['keyPoints'], 'x'.repeat(20_001), me).kind).toBe('refused');
  });

  it('undo takes back one person’s steps and brings a removed item back', () => {
    const ydoc = fresh();
    const other = { who: 'other' };
    const undo = undoOf(ydoc, me);
    removeAt(ydoc, ['spots', 's1'], me);
    setAt(ydoc, ['title'], 'Theirs', other);
    undo.undo();
    expect(drillIn(ydoc)).toEqual({ ...sampleDrill(), title: 'Theirs' });
    undo.redo();
    expect(Object.keys(drillIn(ydoc).spots)).toEqual(['s2']);
  });

  it('moves an item by its rank, also where no number fits between its neighbours', () => {
    const ydoc = fresh();
    setAt(ydoc, ['spots', 's3'], sampleSpot(2), me);
    const order = () => inOrder(drillIn(ydoc).spots).map(([id]) => id as string);
    expect(order()).toEqual(['s1', 's2', 's3']);
    moveItem(ydoc, ['spots'], 's1', 1, me);
    expect(order()).toEqual(['s2', 's1', 's3']);
    moveItem(ydoc, ['spots'], 's3', 0, me);
    expect(order()).toEqual(['s3', 's2', 's1']);
  });

  it('a caller that changes its object later does not change the document', () => {
    const ydoc = fresh();
    const spot = sampleSpot(3);
    setAt(ydoc, ['spots', 's3'], spot, me);
    (spot.atM as { xM: number }).xM = 9e9;
    expect(setAt(ydoc, ['spots', 's3'], spot, me).kind).toBe('refused');
    expect(Object.values(drillIn(ydoc).spots)[2]!.atM.xM).toBe(0);
  });
});

describe('snapshots', () => {
  it('keep the identity of what did not change', () => {
    const ydoc = fresh();
    const first = snapshotOf(ydoc);
    expect(snapshotOf(ydoc, first)).toBe(first);
    setAt(ydoc, ['spots', 's1', 'role'], 'D1', me);
    const second = snapshotOf(ydoc, first);
    if (first.read.kind !== 'ok' || second.read.kind !== 'ok') throw new Error('not read');
    const [a, b] = [first.read.value as Drill, second.read.value as Drill];
    const spot = (drill: Drill, id: string) => (drill.spots as Record<string, unknown>)[id];
    expect(b).not.toBe(a);
    expect(spot(b, 's1')).not.toBe(spot(a, 's1'));
    expect(spot(b, 's2')).toBe(spot(a, 's2'));
    expect(b.gear).toBe(a.gear);
  });
});
