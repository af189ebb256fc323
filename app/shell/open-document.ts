import { HocuspocusProvider } from '@hocuspocus/provider';
import {
  type ChangedTypes,
  type DocumentKind,
  type DocumentOf,
  type Issue,
  keptUndoOf,
  type Snapshot,
  snapshotOf,
} from '@icewright/book';
import { IndexeddbPersistence } from 'y-indexeddb';
import * as Y from 'yjs';
import { noteUnkept, socketOf, useConnection } from './connection.ts';
import { findSteps, keepStepsIn } from './kept-steps.ts';

export type View<Kind extends DocumentKind> =
  | { readonly state: 'loading'; readonly value?: undefined; readonly issues: readonly Issue[] }
  | { readonly state: 'ready'; readonly value: DocumentOf<Kind>; readonly issues: readonly Issue[] }
  /** Neither this machine nor the server has it. */
  | { readonly state: 'missing'; readonly value?: undefined; readonly issues: readonly Issue[] }
  /** It is there and cannot be read: newer than this program, or broken. Nothing is changed. */
  | { readonly state: 'refused'; readonly value?: undefined; readonly issues: readonly Issue[] };

/** Changes made in this window carry this origin; undo takes back these and nobody else's. */
export const mine = { from: 'this window' };

const UNREACHED_AFTER_MS = 2500;

/**
 * One document while it is open: in memory, in the browser's own store, and on the line to the server.
 * It stays open for as long as the page lives, so that going back to it costs nothing.
 */
export class OpenDocument {
  readonly ydoc: Y.Doc;
  readonly undoManager: Y.UndoManager;
  readonly id: string;
  readonly #listeners = new Set<() => void>();
  #snapshot: Snapshot | undefined;
  #view: View<DocumentKind> = { state: 'loading', issues: [] };
  #isStored = false;
  #isSynced = false;
  #isGivenUp = false;
  /** The server will not open it: its id is none, or it was erased. */
  #isTurnedAway = false;

  constructor(id: string, made?: Y.Doc) {
    this.id = id;
    this.ydoc = made ?? new Y.Doc({ guid: id });
    const undo = keptUndoOf(this.ydoc, mine);
    this.undoManager = undo.manager;
    // Told of each transaction in turn, so that what one changed is all that changed since the last look.
    this.ydoc.on('afterTransaction', ({ changedParentTypes }: Y.Transaction) =>
      this.#look(changedParentTypes),
    );
    const store = new IndexeddbPersistence(`icewright.${id}`, this.ydoc);
    void Promise.all([findSteps(store), store.whenSynced]).then(([steps]) => {
      undo.giveBack(steps);
      keepStepsIn(store, undo);
      this.#isStored = true;
      this.#look();
      this.#connect();
    });
    if (made !== undefined) this.#look();
    setTimeout(() => {
      this.#isGivenUp = true;
      this.#look();
    }, UNREACHED_AFTER_MS);
  }

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  readonly view = (): View<DocumentKind> => this.#view;

  #connect(): void {
    const provider = new HocuspocusProvider({
      websocketProvider: socketOf(),
      name: this.id,
      document: this.ydoc,
      onSynced: () => {
        this.#isSynced = true;
        this.#look();
      },
      onAuthenticationFailed: () => {
        this.#isTurnedAway = true;
        this.#look();
      },
      onUnsyncedChanges: ({ number }) => noteUnkept(this.id, number),
    });
    provider.attach();
  }

  #look(changed?: ChangedTypes): void {
    const before = this.#view;
    const snapshot = snapshotOf(this.ydoc, this.#snapshot, undefined, changed);
    if (snapshot !== this.#snapshot || before.state === 'loading' || before.state === 'missing') {
      this.#snapshot = snapshot;
      this.#view = this.#viewOf(snapshot);
    }
    if (this.#view.state !== before.state || this.#view.value !== before.value) {
      for (const listener of this.#listeners) listener();
    }
  }

  #viewOf({ raw, read }: Snapshot): View<DocumentKind> {
    if (Object.keys(raw).length === 0) {
      const isNowhere =
        this.#isStored &&
        (this.#isSynced || this.#isTurnedAway || (this.#isGivenUp && !useConnection.getState().isConnected));
      return { state: isNowhere ? 'missing' : 'loading', issues: [] };
    }
    return read.kind === 'ok'
      ? { state: 'ready', value: read.value, issues: read.issues }
      : { state: 'refused', issues: read.issues };
  }
}
