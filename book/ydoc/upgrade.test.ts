import { readFileSync } from 'node:fs';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as Y from 'yjs';
import type { Drill } from '../documents/drill.ts';
import { currentSchema } from '../documents/kinds.ts';
import { migrations } from '../migrate/migrations.ts';
import { bringBack } from './bring-back.ts';
import { changeText, removeAt, setAt, transact } from './change.ts';
import { moveItem } from './move-item.ts';
import { rootOf } from './root.ts';
import { readDocument } from './snapshot.ts';
import { undoOf } from './undo.ts';
import { upgrade } from './upgrade.ts';

const fixture = (name: string) => new URL(`../../fixtures/documents/${name}`, import.meta.url);

/** A drill written by the program of document version 1, on a device of its own. */
function oldDrill(): Y.Doc {
  const ydoc = new Y.Doc({ guid: 'drill-middle-first' });
  Y.applyUpdate(ydoc, readFileSync(fixture('drill-version-1.update')));
  return ydoc;
}

/** What that program read in it. */
const oldDrillValue = (): Record<string, unknown> =>
  JSON.parse(readFileSync(fixture('drill-version-1.json'), 'utf8'));

const drillIn = (ydoc: Y.Doc): Drill => {
  const read = readDocument(ydoc);
  if (read.kind !== 'ok' || read.value.kind !== 'drill') throw new Error(JSON.stringify(read));
  expect(read.issues).toEqual([]);
  return read.value;
};
const schemaIn = (ydoc: Y.Doc) => rootOf(ydoc).get('schema');
const meet = (a: Y.Doc, b: Y.Doc) => {
  const [fromA, fromB] = [Y.encodeStateAsUpdate(a), Y.encodeStateAsUpdate(b)];
  Y.applyUpdate(a, fromB);
  Y.applyUpdate(b, fromA);
};
const game = (rank: number) => ({
  rank,
  fromM: { xM: -5, yM: -5 },
  toM: { xM: 5, yM: 5 },
  usCount: 2,
  themCount: 2,
  nets: [],
  resets: 'coach' as const,
  shiftS: 30,
});

describe('a drill of document version 1', () => {
  it('is read whole, and reading writes nothing into it', () => {
    const ydoc = oldDrill();
    const before = Y.encodeStateAsUpdate(ydoc);
    expect(drillIn(ydoc)).toEqual({ ...oldDrillValue(), schema: 4, games: {} });
    expect(Y.encodeStateAsUpdate(ydoc)).toEqual(before);
    expect(schemaIn(ydoc)).toBe(1);
  });

  it.each([
    ['a field', (ydoc: Y.Doc) => setAt(ydoc, ['title'], 'New', 'me')],
    ['a list it had not', (ydoc: Y.Doc) => setAt(ydoc, ['games', 'g1'], game(1), 'me')],
    ['a text', (ydoc: Y.Doc) => changeText(ydoc, ['keyPoints'], 'One', 'me')],
    ['a removal', (ydoc: Y.Doc) => removeAt(ydoc, ['spots', 'spot-co'], 'me')],
    ['an order', (ydoc: Y.Doc) => moveItem(ydoc, ['spots'], 'spot-x1', 0, 'me')],
    ['an earlier version', (ydoc: Y.Doc) => bringBack(ydoc, { ...drillIn(ydoc), title: 'Was' }, 'me')],
    [
      'several in one',
      (ydoc: Y.Doc) =>
        transact(ydoc, 'me', () => [1, 2].map(n => setAt(ydoc, ['games', `g${n}`], game(n), 'me'))),
    ],
  ])('is brought up by the first write, %s, in one and the same change', (_, write) => {
    const ydoc = oldDrill();
    const changes: Uint8Array[] = [];
    ydoc.on('update', (update: Uint8Array) => changes.push(update));
    write(ydoc);
    expect(changes).toHaveLength(1);
    expect(schemaIn(ydoc)).toBe(4);
    expect(rootOf(ydoc).get('games')).toBeInstanceOf(Y.Map);
    drillIn(ydoc);
    const elsewhere = oldDrill();
    Y.applyUpdate(elsewhere, changes[0]!);
    expect(drillIn(elsewhere)).toEqual(drillIn(ydoc));
  });

  it.each([
    ['a value that does not fit', (ydoc: Y.Doc) => setAt(ydoc, ['minutes'], 600, 'me')],
    ['a place that is not there', (ydoc: Y.Doc) => setAt(ydoc, ['spots', 'none', 'role'], 'F9', 'me')],
    ['an item that is not there', (ydoc: Y.Doc) => moveItem(ydoc, ['spots'], 'none', 0, 'me')],
  ])('is left as it was by a write that is refused: %s', (_, write) => {
    const ydoc = oldDrill();
    const before = Y.encodeStateAsUpdate(ydoc);
    write(ydoc);
    expect(Y.encodeStateAsUpdate(ydoc)).toEqual(before);
  });

  it('once brought up it is refused with the reason by a program that knows version 1 only', () => {
    const older = { ...currentSchema, drill: 1 };
    const ydoc = oldDrill();
    expect(readDocument(ydoc, older)).not.toMatchObject({ reason: 'newer' });
    setAt(ydoc, ['says'], 'look twice', 'me');
    expect(readDocument(ydoc, older)).toMatchObject({
      kind: 'refused',
      reason: 'newer',
      issues: [
        {
          path: ['schema'],
          value: 4,
          message: 'Made by a newer Icewright: version 4, this one reads up to 1.',
        },
      ],
    });
  });

  it('undo takes back the change and not the step', () => {
    const ydoc = oldDrill();
    const undo = undoOf(ydoc, 'me');
    transact(ydoc, 'me', () => {
      setAt(ydoc, ['title'], 'New', 'me');
      setAt(ydoc, ['games', 'g1'], game(1), 'me');
    });
    undo.undo();
    expect(drillIn(ydoc)).toEqual({ ...oldDrillValue(), schema: 4, games: {} });
    expect(schemaIn(ydoc)).toBe(4);
    undo.redo();
    expect(drillIn(ydoc)).toMatchObject({ title: 'New', games: { g1: game(1) } });
  });

  it('what another wrote after the step stays when the one who took it undoes', () => {
    const a = oldDrill();
    const undo = undoOf(a, 'a');
    setAt(a, ['games', 'mine'], game(1), 'a');
    const b = oldDrill();
    meet(a, b);
    setAt(b, ['games', 'hers'], game(2), 'b');
    meet(a, b);
    undo.undo();
    meet(a, b);
    expect(drillIn(a).games).toEqual({ hers: game(2) });
    expect(drillIn(b)).toEqual(drillIn(a));
  });
});

describe('two people bring it up at once, apart', () => {
  it('the step itself is the same change byte for byte', () => {
    const steps = [oldDrill(), oldDrill()].map(ydoc => {
      const before = Y.encodeStateVector(ydoc);
      ydoc.transact(() => upgrade(ydoc));
      return Y.encodeStateAsUpdate(ydoc, before);
    });
    expect(steps[0]).toEqual(steps[1]);
  });

  it('and both keep what each put into the new list', () => {
    const [a, b] = [oldDrill(), oldDrill()];
    setAt(a, ['games', 'a'], game(1), 'a');
    setAt(a, ['spots', 'spot-x1', 'role'], 'X9', 'a');
    setAt(b, ['games', 'b'], game(2), 'b');
    setAt(b, ['flow'], { next: { on: 'end' }, ends: 'both', pauseS: 5, goesTo: {} }, 'b');
    meet(a, b);
    expect(drillIn(a)).toEqual(drillIn(b));
    expect(drillIn(a)).toMatchObject({
      schema: 4,
      games: { a: game(1), b: game(2) },
      flow: { ends: 'both' },
      spots: { 'spot-x1': { role: 'X9' } },
    });
  });

  it('in whatever order three devices write, undo and meet, they end with the same valid drill', () => {
    const step = fc.record({
      who: fc.integer({ min: 0, max: 2 }),
      does: fc.constantFrom('game', 'words', 'undo', 'redo', 'meet'),
      what: fc.integer({ min: 0, max: 4 }),
      ends: fc.boolean(),
    });
    fc.assert(
      fc.property(fc.array(step, { maxLength: 25 }), steps => {
        const devices = [oldDrill(), oldDrill(), oldDrill()] as const;
        const undos = devices.map((ydoc, who) => undoOf(ydoc, who));
        for (const { who, does, what, ends } of steps) {
          const ydoc = devices[who as 0];
          // What is one step of undo is drawn, not left to how fast the machine is.
          undos[who]!.captureTimeout = 1e9;
          if (ends) undos[who]!.stopCapturing();
          if (does === 'game') setAt(ydoc, ['games', `g${what}`], game(who), who);
          // Each his own field: what undo does to a field that two have written at once is not the matter here.
          if (does === 'words') setAt(ydoc, [['title'], ['says'], ['keyPoints']][who]!, `Words ${what}`, who);
          if (does === 'undo') undos[who]!.undo();
          if (does === 'redo') undos[who]!.redo();
          if (does === 'meet') meet(ydoc, devices[((who + 1) % 3) as 0]);
        }
        meet(devices[0], devices[1]);
        meet(devices[1], devices[2]);
        meet(devices[0], devices[1]);
        const values = devices.map(drillIn);
        expect(values[1]).toEqual(values[0]);
        expect(values[2]).toEqual(values[0]);
        const isWritten = steps.some(({ does }) => does === 'game' || does === 'words');
        expect(devices.map(schemaIn)).toEqual(Array(3).fill(isWritten ? 4 : 1));
      }),
      { numRuns: 150, seed: 20261128 },
    );
  });
});

describe('a step that rewrites what stood there', () => {
  it('is written too, as an ordinary change', () => {
    const steps = {
      ...migrations,
      drill: [
        ...migrations.drill,
        (drill: Record<string, unknown>) => ({ ...drill, minutes: 2 * (drill.minutes as number) }),
      ],
    };
    const ydoc = oldDrill();
    ydoc.transact(() => upgrade(ydoc, steps));
    expect(rootOf(ydoc).toJSON()).toMatchObject({ schema: 5, minutes: 22, games: {} });
  });
});
