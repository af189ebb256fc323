import type * as Y from 'yjs';
import type { AnyDocument } from '../documents/kinds.ts';
import { shapeOf } from '../documents/shape.ts';
import { type Changed, removeAt, setAt } from './change.ts';

/** Makes a document say what an earlier version of it said, as one change that can be undone like any other. */
export function bringBack(ydoc: Y.Doc, earlier: AnyDocument, origin: unknown): Changed {
  return ydoc.transact((): Changed => {
    const value = earlier as unknown as Record<string, unknown>;
    for (const key of Object.keys(shapeOf(earlier.kind).fields ?? {})) {
      if (Object.hasOwn(value, key)) {
        const changed = setAt(ydoc, [key], value[key], origin);
        if (changed.kind === 'refused') return changed;
      } else removeAt(ydoc, [key], origin);
    }
    return { kind: 'done' };
  }, origin);
}
