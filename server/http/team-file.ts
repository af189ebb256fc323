import { exportTeam, type ImportedDocument, importTeam, readDocument, type Team } from '@icewright/book';
import { Refusal } from '../refusal.ts';
import type { DocumentStore } from '../store/document-store.ts';
import type { SyncLine } from '../sync/sync-line.ts';

export const teamFileLimitBytes = 64 * 2 ** 20;

/** One file with everything of a team: its own document and each that its list of contents names. */
export function teamFileOf(store: DocumentStore, line: SyncLine, id: string, team: Team): string {
  // A document that was listed on one device and has not arrived from it yet is not here to be written.
  const ids = [id, ...Object.keys(team.contents).filter(each => store.has(each))];
  const docs = ids.map(each => ({ id: each, ydoc: line.current(each) }));
  for (const { id: each, ydoc } of docs) {
    const read = readDocument(ydoc);
    if (read.kind === 'ok') continue;
    const what = team.contents[each as keyof Team['contents']]?.title ?? each;
    const why = read.reason === 'newer' ? 'was written by a newer Icewright' : 'cannot be read';
    throw new Refusal(`“${what}” ${why}; a file without it would be half a team.`, { status: 409 });
  }
  return exportTeam(docs);
}

/** Takes in a whole team, or throws a refusal and changes nothing; gives the team's id. */
export function takeInTeam(store: DocumentStore, text: string): string {
  const imported = importTeam(text);
  if (imported.kind === 'refused') throw new Refusal(`${imported.sentence} Nothing was changed.`);
  const known = imported.docs.find(({ id }) => store.has(id) || store.isErased(id));
  if (known !== undefined) {
    const why = store.has(known.id)
      ? 'is here already: a file brings in a team that is not here yet'
      : 'was erased here for good';
    throw new Refusal(
      `The ${known.kind} “${titleOf(known.id, imported.docs)}” of this file ${why}. Nothing was changed.`,
      { status: 409 },
    );
  }
  store.appendAll(imported.docs);
  return imported.docs[0]!.id;
}

/** What the coach calls a document of a file; its id where the file has no name for it. The team stands first. */
const titleOf = (id: string, [team]: readonly ImportedDocument[]): string => {
  const read = team && readDocument(team.ydoc);
  if (read?.kind !== 'ok' || read.value.kind !== 'team') return id;
  return (id === team!.id ? read.value.name : read.value.contents[id as keyof Team['contents']]?.title) || id;
};
