import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as Y from 'yjs';
import type { Drill } from '../documents/drill.ts';
import { setAt } from './change.ts';
import { newDocument } from './new-document.ts';
import { sampleDrill } from './sample-documents.ts';
import { readDocument } from './snapshot.ts';
import { undoOf } from './undo.ts';

/** Two people with the same drill, each with an undo of her own. Client numbers say whose value a document keeps of two. */
const two = (clients: readonly [number, number]) => {
  const start = Y.encodeStateAsUpdate(newDocument('drill', 'd1', sampleDrill()));
  return clients.map((clientID, who) => {
    const ydoc = new Y.Doc({ guid: 'd1' });
    ydoc.clientID = clientID;
    Y.applyUpdate(ydoc, start);
    const undo = undoOf(ydoc, who);
    return { ydoc, undo, write: (minutes: number) => setAt(ydoc, ['minutes'], minutes, who) };
  }) as unknown as readonly [Person, Person];
};

interface Person {
  readonly ydoc: Y.Doc;
  readonly undo: Y.UndoManager;
  readonly write: (minutes: number) => unknown;
}

const meet = (one: Person, other: Person) => {
  const [from, to] = [one, other].map(({ ydoc }) => Y.encodeStateAsUpdate(ydoc));
  Y.applyUpdate(other.ydoc, from!);
  Y.applyUpdate(one.ydoc, to!);
};

const minutesOf = ({ ydoc }: Person): number => {
  const read = readDocument(ydoc);
  if (read.kind !== 'ok') throw new Error(JSON.stringify(read));
  expect(read.issues).toEqual([]);
  return (read.value as Drill).minutes;
};

describe('undo of one of two people who wrote the same field apart', () => {
  it('leaves the value of the other, whoever of the two was kept, and redo brings the own one back', () => {
    for (const clients of [
      [101, 202],
      [202, 101],
    ] as const)
      for (const who of [0, 1] as const) {
        const people = two(clients);
        people[0].write(11);
        people[1].write(22);
        meet(...people);
        const kept = minutesOf(people[0]);
        expect(minutesOf(people[1])).toBe(kept);
        const me = people[who];
        const theirs = who === 0 ? 22 : 11;
        me.undo.undo();
        expect(minutesOf(me)).toBe(theirs);
        meet(...people);
        expect(people.map(minutesOf)).toEqual([theirs, theirs]);
        if (kept === theirs) continue;
        me.undo.redo();
        expect(minutesOf(me)).toBe(kept);
        meet(...people);
        expect(people.map(minutesOf)).toEqual([kept, kept]);
      }
  });

  it('never loses the field, and both come to the same, whatever they write, undo and redo in whatever order', () => {
    const deed = fc.record({
      who: fc.constantFrom(0, 1),
      what: fc.oneof(
        { weight: 3, arbitrary: fc.integer({ min: 1, max: 60 }) },
        { weight: 2, arbitrary: fc.constantFrom('undo', 'redo', 'meet') },
      ),
    });
    fc.assert(
      fc.property(
        fc.array(deed, { minLength: 3, maxLength: 24 }),
        fc.constantFrom([101, 202] as const, [202, 101] as const),
        (deeds, clients) => {
          const people = two(clients);
          const written = new Set([minutesOf(people[0])]);
          for (const { who, what } of deeds) {
            const me = people[who as 0 | 1];
            if (what === 'meet') meet(...people);
            else if (what === 'undo') me.undo.undo();
            else if (what === 'redo') me.undo.redo();
            else {
              me.undo.stopCapturing();
              me.write(what);
              written.add(what);
            }
            expect(written).toContain(minutesOf(me));
          }
          meet(...people);
          expect(minutesOf(people[0])).toBe(minutesOf(people[1]));
        },
      ),
      { numRuns: 300, seed: 11 },
    );
  });
});
