import {
  type Changed,
  changeText,
  type DocumentKind,
  type DocumentOf,
  type Entry,
  moveItem,
  newDocument,
  newId,
  type Path,
  removeAt,
  setAt,
  type Team,
  transact,
} from '@icewright/book';
import type { Id } from '@icewright/engine';
import { useSyncExternalStore } from 'react';
import { today } from '../parts/figures.ts';
import { mine, OpenDocument, type View } from './open-document.ts';
import { useTeams } from './teams.ts';

/** The documents, as every screen uses them. */

export type { View } from './open-document.ts';

const open = new Map<string, OpenDocument>();

export function documentOf(id: string): OpenDocument {
  const found = open.get(id);
  if (found !== undefined) return found;
  const made = new OpenDocument(id);
  open.set(id, made);
  watchEntry(made);
  return made;
}

/** The document as it stands now and at every change of it; parts that did not change keep their identity. */
export function useDocument<Kind extends DocumentKind>(kind: Kind, id: string): View<Kind> {
  const one = documentOf(id);
  const view = useSyncExternalStore(one.subscribe, one.view);
  if (view.state === 'ready' && view.value.kind !== kind) return { state: 'refused', issues: [] };
  return view as View<Kind>;
}

/** Several at once, by id; for the ledger and for lists that show what lies inside. */
export function useDocuments<Kind extends DocumentKind>(
  _kind: Kind,
  ids: readonly string[],
): ReadonlyMap<string, View<Kind>> {
  const memo = manyOf(ids);
  const views = useSyncExternalStore(memo.subscribe, memo.views);
  return views as ReadonlyMap<string, View<Kind>>;
}

export function useTeam(): View<'team'> & { readonly id: string } {
  const id = useTeams(teams => teams.teamId) ?? '';
  const view = useSyncExternalStore(
    id === '' ? subscribeToNothing : documentOf(id).subscribe,
    id === '' ? noTeam : documentOf(id).view,
  );
  return { ...(view as View<'team'>), id };
}

/** Changes of one document, each of which is one step of undo. A change that would not fit is refused and changes nothing. */
export interface Editing {
  readonly set: (path: Path, value: unknown) => Changed;
  readonly remove: (path: Path) => Changed;
  /** Words at `path`, long or short; long ones merge letter by letter with what others write. */
  readonly text: (path: Path, words: string) => Changed;
  /** Puts an item of a list at a place, 0 first. */
  readonly move: (list: Path, itemId: string, toIndex: number) => void;
  /** Everything in `fn` is one step of undo. */
  readonly transact: <Result>(fn: () => Result) => Result;
}

export function edit(id: string): Editing {
  const { ydoc } = documentOf(id);
  return {
    set: (path, value) => setAt(ydoc, path, value, mine),
    remove: path => removeAt(ydoc, path, mine),
    text: (path, words) => {
      const changed = changeText(ydoc, path, words, mine);
      return changed.kind === 'refused' && changed.issues[0]?.code === 'notAText'
        ? setAt(ydoc, path, words, mine)
        : changed;
    },
    move: (list, itemId, toIndex) => moveItem(ydoc, list, itemId, toIndex, mine),
    transact: fn => transact(ydoc, mine, fn),
  };
}

/** Keeps what was worked out from the document in it. It is no step of undo: taken back is what it was worked out from. */
export const keepWorkedOut = (id: string, path: Path, value: unknown): Changed =>
  setAt(documentOf(id).ydoc, path, value, 'follows');

/** Makes a document, and its line in the team's contents. `id` where others already name it by one. */
export function createDocument<Kind extends Entry['kind']>(
  kind: Kind,
  value: DocumentOf<Kind>,
  id = newId<'document'>(),
): Id<'document'> {
  const made = new OpenDocument(id, newDocument(kind, id, value));
  open.set(id, made);
  watchEntry(made);
  const { teamId } = useTeams.getState();
  if (teamId !== null) edit(teamId).set(['contents', id], entryOf(value));
  return id;
}

/** Takes a document out of the lists. It is not destroyed: undo, or a link to it, brings it back. */
export function setRemoved(id: string, removed: boolean): void {
  const { teamId } = useTeams.getState();
  if (teamId !== null) edit(teamId).set(['contents', id, 'removed'], removed);
}

/** The document whose undo the page speaks of: the one in the address, else the team. */
export function openedId(path: string): string | null {
  const [, place, first, second] = path.split('/');
  const id = place === 'film' && first === 'meeting' ? second : first;
  if (id !== undefined && ['film', 'drills', 'practices'].includes(place ?? '')) return id;
  return useTeams.getState().teamId;
}

export const undo = (id: string | null): boolean => id !== null && documentOf(id).undoManager.undo() !== null;

export const redo = (id: string | null): boolean => id !== null && documentOf(id).undoManager.redo() !== null;

/** Ends the step of undo that is being gathered, so that the next change is a step of its own. */
export const endStep = (id: string): void => documentOf(id).undoManager.stopCapturing();

/** What can be undone and redone here, for the two acts. */
export function useUndo(id: string | null): { readonly canUndo: boolean; readonly canRedo: boolean } {
  const said = useSyncExternalStore(
    listener => {
      if (id === null) return () => {};
      const { undoManager } = documentOf(id);
      // Steps of before a reload are laid on later than the page is drawn, and told of as an update.
      const events = [
        'stack-item-added',
        'stack-item-updated',
        'stack-item-popped',
        'stack-cleared',
      ] as const;
      for (const event of events) undoManager.on(event, listener);
      return () => {
        for (const event of events) undoManager.off(event, listener);
      };
    },
    () => {
      if (id === null) return '';
      const { undoManager } = documentOf(id);
      return `${undoManager.canUndo() ? 'u' : ''}${undoManager.canRedo() ? 'r' : ''}`;
    },
  );
  return { canUndo: said.includes('u'), canRedo: said.includes('r') };
}

function entryOf(value: DocumentOf<Entry['kind']>): Entry {
  const [title, day] =
    value.kind === 'game'
      ? [gameTitle(value), value.day]
      : value.kind === 'practice' || value.kind === 'meeting'
        ? [value.title, value.day]
        : [value.title, value.madeAt.slice(0, 10)];
  return { kind: value.kind, title, day: day === '' ? today() : day, removed: false };
}

const gameTitle = ({ opponent, place }: DocumentOf<'game'>) =>
  `${opponent === '' ? 'Game without a name' : opponent}${{ home: ', at home', away: ', away', neutral: '' }[place]}`;

/** The team's list shows titles and days without opening each document, so a change made here is written there too. */
function watchEntry(one: OpenDocument): void {
  one.ydoc.on('afterTransaction', ({ origin }: { origin: unknown }) => {
    if (origin !== mine && origin !== one.undoManager) return;
    const { teamId } = useTeams.getState();
    const view = one.view();
    if (teamId === null || one.id === teamId || view.state !== 'ready' || view.value.kind === 'team') return;
    const team = documentOf(teamId);
    const listed = (team.view().value as Team | undefined)?.contents[one.id as Id<'document'>];
    if (listed === undefined) return;
    const { title, day } = entryOf(view.value);
    // Not `mine`: undo in the team must not take back what follows from a change elsewhere.
    if (listed.title !== title) setAt(team.ydoc, ['contents', one.id, 'title'], title, 'follows');
    if (listed.day !== day) setAt(team.ydoc, ['contents', one.id, 'day'], day, 'follows');
  });
}

interface Many {
  readonly subscribe: (listener: () => void) => () => void;
  readonly views: () => ReadonlyMap<string, View<DocumentKind>>;
}

const manies = new Map<string, Many>();

function manyOf(ids: readonly string[]): Many {
  const key = ids.join(' ');
  const found = manies.get(key);
  if (found !== undefined) return found;
  let views: ReadonlyMap<string, View<DocumentKind>> = new Map();
  const many: Many = {
    subscribe: listener => {
      const stops = ids.map(id => documentOf(id).subscribe(listener));
      return () => {
        for (const stop of stops) stop();
      };
    },
    views: () => {
      const isSame = views.size === ids.length && ids.every(id => views.get(id) === documentOf(id).view());
      if (!isSame) views = new Map(ids.map(id => [id, documentOf(id).view()]));
      return views;
    },
  };
  manies.set(key, many);
  return many;
}

const subscribeToNothing = () => () => {};
const noView: View<DocumentKind> = { state: 'loading', issues: [] };
const noTeam = () => noView;
