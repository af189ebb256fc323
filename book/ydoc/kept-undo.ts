import * as Y from 'yjs';
import { type OverruledValue, overruledIn } from './overruled.ts';
import { undoOf } from './undo.ts';

/** Undo that lives on when the document is opened again: what a person's steps are made of, as plain values to be stored. */
export interface KeptSteps {
  /** The oldest first, as they lie on each other. */
  readonly undo: readonly KeptStep[];
  readonly redo: readonly KeptStep[];
  /** What was taken back and stands again as another change: a step speaks of the first and means the second. */
  readonly standsAgain: readonly StandsAgain[];
  readonly overruled: readonly OverruledValue[];
}

/** Changes by writer, from a place in the writer's own list of changes, so many of them. */
type Stretch = readonly [client: number, clock: number, length: number];
type StandsAgain = readonly [...Stretch, asClient: number, asClock: number];

interface KeptStep {
  readonly inserted: readonly Stretch[];
  readonly deleted: readonly Stretch[];
}

export interface KeptUndo {
  readonly manager: Y.UndoManager;
  readonly kept: () => KeptSteps;
  /**
   * To be called once, when the document has been read from where it is kept and before it meets others: until then nothing
   * that was deleted is forgotten, since a step may bring it back. Steps that no longer fit the document are left out.
   */
  readonly giveBack: (kept: KeptSteps | undefined) => void;
  /** Tells of each time there is something else to keep. */
  readonly onChange: (listener: () => void) => void;
}

/** So many steps live on, the newest; what older ones deleted may then be forgotten. */
export const KEPT_STEPS = 100;
const KEPT_STANDS_AGAIN = 5000;

export function keptUndoOf(ydoc: Y.Doc, origin: unknown): KeptUndo {
  const overruled = overruledIn(ydoc);
  const manager = undoOf(ydoc, origin, overruled);
  const standsAgain: StandsAgain[] = [];
  ydoc.gc = false;
  manager.on('stack-item-popped', ({ stackItem }) => {
    standsAgain.push(...findStandingAgain(ydoc, stackItem.deletions));
    standsAgain.splice(0, standsAgain.length - KEPT_STANDS_AGAIN);
  });
  return {
    manager,
    kept: () => ({
      undo: manager.undoStack.slice(-KEPT_STEPS).map(keptStepOf),
      redo: manager.redoStack.slice(-KEPT_STEPS).map(keptStepOf),
      standsAgain: [...standsAgain],
      overruled: overruled.noted(),
    }),
    giveBack: kept => {
      // What was noted while it was read is all that was ever overwritten, and no news.
      overruled.noteOnly(kept?.overruled ?? []);
      standsAgain.unshift(...(kept?.standsAgain ?? []));
      ydoc.transact(transaction => {
        if (kept !== undefined) layOn(transaction, manager, kept);
        // In here, while what is kept and what is not are still apart: a change that is joined to a kept one is kept with it.
        ydoc.gc = true;
        Y.tryGc(Y.createDeleteSetFromStructStore(ydoc.store), ydoc.store, ydoc.gcFilter);
      });
    },
    onChange: listener => {
      for (const event of ['stack-item-added', 'stack-item-updated', 'stack-item-popped'] as const)
        manager.on(event, listener);
      manager.on('stack-cleared', listener);
      overruled.onNoted(listener);
    },
  };
}

type Step = Y.UndoManager['undoStack'][number];
type Changes = Step['insertions'];

function layOn(transaction: Y.Transaction, manager: Y.UndoManager, kept: KeptSteps): void {
  const { doc } = transaction;
  for (const [client, clock, length, asClient, asClock] of kept.standsAgain) {
    if (!isKnown(doc, [client, clock, length]) || !isKnown(doc, [asClient, asClock, 1])) continue;
    Y.iterateDeletedStructs(transaction, changesOf([[client, clock, length]]), struct => {
      if (struct instanceof Y.Item) struct.redone = Y.createID(asClient, asClock + struct.id.clock - clock);
    });
  }
  const undo = fitting(transaction, kept.undo);
  // A step since would have let go of what could be done again.
  const redo = manager.undoStack.length > 0 ? [] : fitting(transaction, kept.redo);
  for (const { deletions } of [...undo, ...redo]) keepWhatItDeleted(transaction, deletions);
  manager.undoStack.unshift(...undo);
  manager.redoStack.unshift(...redo);
  const [stackItem] = [...undo, ...redo];
  if (stackItem === undefined) return;
  const said = { stackItem, origin: null, type: 'undo', changedParentTypes: new Map() } as const;
  manager.emit('stack-item-updated', [said, manager]);
}

/**
 * The newest steps that the document can still take back. A step whose changes never came into the document, as the browser
 * died between the two, is left out; one whose deleted things are forgotten is left out with all before it, as those before it
 * were meant to come after it.
 */
function fitting(transaction: Y.Transaction, steps: readonly KeptStep[]): Step[] {
  const found: Step[] = [];
  for (const step of [...steps].reverse()) {
    if (![...step.inserted, ...step.deleted].every(stretch => isKnown(transaction.doc, stretch))) {
      if (found.length > 0) break;
      continue;
    }
    const [insertions, deletions] = [changesOf(step.inserted), changesOf(step.deleted)];
    if (isForgotten(transaction, deletions, insertions)) break;
    found.unshift({ insertions, deletions, meta: new Map() });
  }
  return found;
}

const isKnown = (ydoc: Y.Doc, [client, clock, length]: Stretch): boolean =>
  clock + length <= Y.getState(ydoc.store, client);

function isForgotten(transaction: Y.Transaction, deletions: Changes, insertions: Changes): boolean {
  let isGone = false;
  Y.iterateDeletedStructs(transaction, deletions, struct => {
    const hasContent = struct instanceof Y.Item && !(struct.content instanceof Y.ContentDeleted);
    if (!hasContent && !Y.isDeleted(insertions, struct.id)) isGone = true;
  });
  return isGone;
}

function keepWhatItDeleted(transaction: Y.Transaction, deletions: Changes): void {
  Y.iterateDeletedStructs(transaction, deletions, struct => {
    // What holds it is kept with it, as the undo of the library does.
    for (let item = struct instanceof Y.Item ? struct : null; item !== null && !item.keep; ) {
      item.keep = true;
      item = item.parent instanceof Y.AbstractType ? item.parent._item : null;
    }
  });
}

function findStandingAgain(ydoc: Y.Doc, deletions: Changes): StandsAgain[] {
  const found: StandsAgain[] = [];
  ydoc.transact(transaction => {
    Y.iterateDeletedStructs(transaction, deletions, struct => {
      if (struct instanceof Y.Item && struct.redone !== null) {
        const { id, length, redone } = struct;
        found.push([id.client, id.clock, length, redone.client, redone.clock]);
      }
    });
  });
  return found;
}

const keptStepOf = ({ insertions, deletions }: Step): KeptStep => ({
  inserted: stretchesOf(insertions),
  deleted: stretchesOf(deletions),
});

const stretchesOf = ({ clients }: Changes): Stretch[] =>
  [...clients].flatMap(([client, items]) => items.map(({ clock, len }) => [client, clock, len] as const));

function changesOf(stretches: readonly Stretch[]): Changes {
  const changes = Y.createDeleteSet();
  for (const [client, clock, len] of stretches) {
    const items = changes.clients.get(client) ?? [];
    items.push({ clock, len });
    changes.clients.set(client, items);
  }
  return changes;
}
