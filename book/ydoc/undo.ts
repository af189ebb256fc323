import * as Y from 'yjs';
import { currentSchema } from '../documents/kinds.ts';
import { type Overruled, overruledIn } from './overruled.ts';
import { rootOf } from './root.ts';
import { stepWriterOf } from './upgrade.ts';

/** Undo of one person's changes: those made with this `origin` (any object that is theirs alone), nobody else's. */
export function undoOf(
  ydoc: Y.Doc,
  origin: unknown,
  overruled: Pick<Overruled, 'giveBack'> = overruledIn(ydoc),
): Y.UndoManager {
  const undo = new Y.UndoManager(rootOf(ydoc), {
    trackedOrigins: new Set([origin]),
    captureTimeout: 300,
    deleteFilter: item => {
      overruled.giveBack(item);
      return true;
    },
  });
  undo.on('stack-item-added', ({ stackItem }) => keepSteps(stackItem.insertions.clients));
  undo.on('stack-item-updated', ({ stackItem }) => keepSteps(stackItem.insertions.clients));
  return undo;
}

const newest = Math.max(...Object.values(currentSchema));

/** The step that brought a document up stays, as others may have written in it since: only the change is taken back. */
function keepSteps(insertions: Map<number, unknown>): void {
  for (let schema = 2; schema <= newest; schema += 1) insertions.delete(stepWriterOf(schema));
}
