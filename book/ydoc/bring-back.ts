import type * as Y from 'yjs';
import type { AnyDocument } from '../documents/kinds.ts';
import { shapeOf } from '../documents/shape.ts';
import { type Changed, changed, removeAt, setAt } from './change.ts';

/** Makes a document say what an earlier version of it said, as one change that can be undone like any other. */
export function bringBack(ydoc: Y.Doc, earlier: AnyDocument, origin: unknown): Changed {
  return changed(ydoc, origin, on => {
    const value = earlier as unknown as Record<string, unknown>;
    for (const key of Object.keys(shapeOf(earlier.kind).fields ?? {})) {
      if (Object.hasOwn(value, key)) {
        const brought = setAt(on, [key], value[key], origin);
        if (brought.kind === 'refused') return brought;
      } else removeAt(on, [key], origin);
    }
    return { kind: 'done' };
  });
}
