import fc from 'fast-check';
import { expect, it } from 'vitest';
import * as Y from 'yjs';
import { changeText, removeAt, setAt, transact } from './change.ts';
import { newDocument } from './new-document.ts';
import { sampleGame, sampleMoment } from './sample-documents.ts';
import { type Snapshot, snapshotOf } from './snapshot.ts';
import { undoOf } from './undo.ts';

const follow = { moment: 'm1', step: 'lost', filmTimeS: 2, frameIndex: 60 };
const step = fc.oneof(
  fc.record({
    kind: fc.constant('set' as const),
    id: fc.constantFrom('m1', 'm2', 'm3', 'm4'),
    cost: fc.nat(5),
  }),
  fc.record({ kind: fc.constant('field' as const), id: fc.constantFrom('m1', 'm2', 'm3'), cost: fc.nat(5) }),
  fc.record({
    kind: fc.constant('note' as const),
    id: fc.constantFrom('m1', 'm2'),
    words: fc.string({ maxLength: 5 }),
  }),
  fc.record({ kind: fc.constant('remove' as const), id: fc.constantFrom('m1', 'm2', 'm3') }),
  fc.record({ kind: fc.constant('together' as const), cost: fc.nat(5) }),
  fc.record({ kind: fc.constant('undo' as const) }),
  fc.record({ kind: fc.constant('theirs' as const), cost: fc.nat(5) }),
);

it('what is read of the changed parts alone is what a walk over everything reads', () => {
  fc.assert(
    fc.property(fc.array(step, { maxLength: 14 }), steps => {
      const ydoc = newDocument('game', 'g', sampleGame());
      const theirs = new Y.Doc({ guid: 'g' });
      Y.applyUpdate(theirs, Y.encodeStateAsUpdate(ydoc));
      const undo = undoOf(ydoc, 'me');
      let kept: Snapshot = snapshotOf(ydoc);
      ydoc.on('afterTransaction', ({ changedParentTypes }: Y.Transaction) => {
        kept = snapshotOf(ydoc, kept, undefined, changedParentTypes);
      });
      for (const one of steps) {
        const before = kept;
        if (one.kind === 'set')
          setAt(ydoc, ['moments', one.id], { ...sampleMoment('x'), costGoals: one.cost }, 'me');
        if (one.kind === 'field' && has(kept, one.id))
          setAt(ydoc, ['moments', one.id, 'costGoals'], one.cost, 'me');
        if (one.kind === 'note' && has(kept, one.id))
          changeText(ydoc, ['moments', one.id, 'note'], one.words, 'me');
        if (one.kind === 'remove') removeAt(ydoc, ['moments', one.id], 'me');
        if (one.kind === 'together')
          transact(ydoc, 'me', () => {
            setAt(ydoc, ['moments', 'm5'], { ...sampleMoment(), costGoals: one.cost }, 'me');
            setAt(ydoc, ['follows', 'w1'], follow, 'me');
          });
        if (one.kind === 'undo') undo.undo();
        if (one.kind === 'theirs') {
          Y.applyUpdate(theirs, Y.encodeStateAsUpdate(ydoc));
          setAt(theirs, ['moments', 'm6'], { ...sampleMoment(), costGoals: one.cost }, 'them');
          Y.applyUpdate(ydoc, Y.encodeStateAsUpdate(theirs));
        }
        expect(kept.raw).toEqual(snapshotOf(ydoc).raw);
        expect(kept.read).toEqual(snapshotOf(ydoc).read);
        // What nothing touched is the same object as before.
        expect(snapshotOf(ydoc, kept)).toBe(kept);
        if (before.raw.opinions !== undefined) expect(kept.raw.opinions).toBe(before.raw.opinions);
      }
    }),
    {
      numRuns: 300,
      // An undo puts another map in the old one's place, which the transaction does not call changed.
      examples: [[[{ kind: 'remove', id: 'm1' }, { kind: 'set', id: 'm1', cost: 0 }, { kind: 'undo' }]]],
    },
  );
});

const has = ({ raw }: Snapshot, id: string): boolean => id in (raw.moments as object);
