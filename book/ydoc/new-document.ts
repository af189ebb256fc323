import * as Y from 'yjs';
import type { DocumentKind, DocumentOf } from '../documents/kinds.ts';
import { shapeOf } from '../documents/shape.ts';
import { fill, type Plain } from './build.ts';
import { fitted } from './fit.ts';
import { ownCopy } from './plain.ts';
import { rootOf } from './root.ts';

/** A fresh Y.Doc holding `start`; its guid is the document's id. Throws on a value that breaks the schema: ours to prevent. */
export function newDocument<Kind extends DocumentKind>(
  kind: Kind,
  id: string,
  start: DocumentOf<Kind>,
): Y.Doc {
  const value = ownCopy(start) as unknown as Plain;
  const shape = shapeOf(kind);
  const { issues } = fitted(value, shape);
  if (issues.length > 0 || value.kind !== kind) {
    throw new Error(`newDocument: a ${kind} that does not fit: ${JSON.stringify(issues.slice(0, 3))}`);
  }
  const ydoc = new Y.Doc({ guid: id });
  ydoc.transact(() => fill(rootOf(ydoc), value, shape), 'birth');
  return ydoc;
}
