import * as Y from 'yjs';
import { rootOf } from './root.ts';

/** Undo of one person's changes: those made with this `origin` (any object that is theirs alone), nobody else's. */
export const undoOf = (ydoc: Y.Doc, origin: unknown): Y.UndoManager =>
  new Y.UndoManager(rootOf(ydoc), { trackedOrigins: new Set([origin]), captureTimeout: 300 });
