import {
  exportTeam,
  hasNews,
  type ImportedDocument,
  importTeam,
  planTeamFile,
  readDocument,
  setAt,
  type Team,
  type TeamFilePlan,
  teamFileSentence,
} from '@icewright/book';
import * as Y from 'yjs';
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
  return exportTeam(docs, 'withHistories');
}

/** What taking in a file would do, in one sentence; nothing is done yet. */
export function toldOfTeamFile(store: DocumentStore, line: SyncLine, text: string): TeamFileTold {
  const plan = planOf(store, line, text);
  return { isHere: plan.way !== 'fresh', hasNews: hasNews(plan), said: teamFileSentence(plan) };
}

export interface TeamFileTold {
  /** Something of it is here, so that it is asked first. */
  readonly isHere: boolean;
  readonly hasNews: boolean;
  readonly said: string;
}

/** Takes in a whole team, or throws a refusal and changes nothing; gives the team's id. */
export async function takeInTeam(store: DocumentStore, line: SyncLine, text: string): Promise<string> {
  const { teamId, added, merged, beside } = planOf(store, line, text);
  store.appendAll([...added, ...beside.map(({ document }) => document)]);
  for (const { id, update } of merged)
    await line.change(id, ydoc => {
      // What stood here before is a version to go back to.
      store.keepVersion(id, ydoc);
      Y.applyUpdate(ydoc, update);
    });
  if (beside.length > 0)
    await line.change(teamId, ydoc => {
      for (const { document, entry } of beside)
        if (entry !== undefined) setAt(ydoc, ['contents', document.id], entry, 'team file');
    });
  return teamId;
}

function planOf(store: DocumentStore, line: SyncLine, text: string): TeamFilePlan {
  const imported = importTeam(text);
  if (imported.kind === 'refused') throw new Refusal(`${imported.sentence} Nothing was changed.`);
  const erased = imported.docs.find(({ id }) => store.isErased(id));
  if (erased !== undefined) {
    const title = titleOf(erased.id, imported.docs);
    throw new Refusal(
      `The ${erased.kind} “${title}” of this file was erased here for good. Nothing was changed.`,
      { status: 409 },
    );
  }
  return planTeamFile(imported.docs, id => (store.has(id) ? line.current(id) : undefined));
}

/** What the coach calls a document of a file; its id where the file has no name for it. The team stands first. */
const titleOf = (id: string, [team]: readonly ImportedDocument[]): string => {
  const read = team && readDocument(team.ydoc);
  if (read?.kind !== 'ok' || read.value.kind !== 'team') return id;
  return (id === team!.id ? read.value.name : read.value.contents[id as keyof Team['contents']]?.title) || id;
};
