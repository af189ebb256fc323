import type * as Y from 'yjs';
import { type DocumentKind, isDocumentKind } from '../documents/kinds.ts';

export const rootName = 'doc';

export const rootOf = (ydoc: Y.Doc): Y.Map<unknown> => ydoc.getMap(rootName);

export function findKind(ydoc: Y.Doc): DocumentKind | null {
  const kind = rootOf(ydoc).get('kind');
  return isDocumentKind(kind) ? kind : null;
}

/** The id a document was made with; it is also its name on the sync line. */
export const documentIdOf = (ydoc: Y.Doc): string => ydoc.guid;
