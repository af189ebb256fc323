import { exportTeam, importTeam, type Team } from '@icewright/book';
import { Refusal } from '../refusal.ts';
import type { DocumentStore } from '../store/document-store.ts';
import type { SyncLine } from '../sync/sync-line.ts';

export const teamFileLimitBytes = 64 * 2 ** 20;

/** One file with everything of a team: its own document and each that its list of contents names. */
export function teamFileOf(store: DocumentStore, line: SyncLine, id: string, team: Team): string {
  // A document that was listed on one device and has not arrived from it yet is not here to be written.
  const ids = [id, ...Object.keys(team.contents).filter(each => store.has(each))];
  return exportTeam(ids.map(each => ({ id: each, ydoc: line.current(each) })));
}

/** Takes in a whole team, or throws a refusal and changes nothing; gives the team's id. */
export function takeInTeam(store: DocumentStore, text: string): string {
  const imported = importTeam(text);
  if (imported.kind === 'refused') throw new Refusal(imported.sentence);
  const known = imported.docs.find(({ id }) => store.has(id) || store.isErased(id));
  if (known !== undefined) {
    const why = store.has(known.id) ? 'is here already' : 'was erased here for good';
    throw new Refusal(`The ${known.kind} ${known.id} of this file ${why}. Nothing was changed.`, {
      status: 409,
    });
  }
  store.appendAll(imported.docs);
  return imported.docs[0]!.id;
}
