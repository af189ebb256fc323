import type * as Y from 'yjs';
import type { AnyDocument } from '../documents/kinds.ts';
import { readDocument } from '../ydoc/snapshot.ts';
import { historyOf } from './document-history.ts';
import { stableJson } from './stable-json.ts';

/** Version of the file; the documents in it carry their own. */
export const teamFileVersion = 1;
export const teamFileFormat = 'icewright-team';

export interface TeamFileDocument {
  readonly id: string;
  readonly value: AnyDocument;
  /** The changes it was made of, so that a team that has the document too can bring both together. Who writes a file by hand leaves it out. */
  readonly history?: string;
  /** Values that did not fit when the file was written: not imported, but not lost. */
  readonly leftOut?: readonly { readonly path: readonly string[]; readonly value: unknown }[];
}

/**
 * A whole team as one JSON text: its document and every one of its games, drills and practices. The same content gives
 * the same bytes, but for the histories: documents by id, keys by name. Film is not in it; games name their films by content.
 * Throws on a document that cannot be read: a file that silently lacks one would be a trap.
 */
export function exportTeam(
  docs: readonly { readonly id: string; readonly ydoc: Y.Doc }[],
  histories: 'withHistories' | 'valuesAlone' = 'valuesAlone',
): string {
  const documents = docs.map(({ id, ydoc }): TeamFileDocument => {
    const read = readDocument(ydoc);
    if (read.kind === 'refused') throw new Error(`exportTeam: ${id} is ${read.reason}`);
    const leftOut = read.issues.map(({ path, value }) => ({ path, value }));
    return {
      id,
      value: read.value,
      ...(histories === 'withHistories' ? { history: historyOf(ydoc) } : {}),
      ...(leftOut.length === 0 ? {} : { leftOut }),
    };
  });
  documents.sort((a, b) => (a.id < b.id ? -1 : 1));
  return stableJson({ format: teamFileFormat, version: teamFileVersion, documents });
}
