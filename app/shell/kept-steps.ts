import type { KeptSteps, KeptUndo } from '@icewright/book';
import type { IndexeddbPersistence } from 'y-indexeddb';
import { windowNumber } from './window-number.ts';

/** Undo steps of this window, beside the document's own changes in the browser's store. */

type Store = Pick<IndexeddbPersistence, 'get' | 'set'>;

const WRITE_EVERY_MS = 250;

export async function findSteps(store: Store): Promise<KeptSteps | undefined> {
  const found = await store.get(nameOf(await windowNumber())).catch(() => undefined);
  return found as KeptSteps | undefined;
}

/** Keeps the steps from now on. A drag makes many changes of one step, so they are not written at each. */
export function keepStepsIn(store: Store, undo: Pick<KeptUndo, 'kept' | 'onChange'>): void {
  let waiting: ReturnType<typeof setTimeout> | undefined;
  const write = async () => {
    clearTimeout(waiting);
    waiting = undefined;
    // The store takes any plain value; its types speak of fewer.
    await store.set(nameOf(await windowNumber()), undo.kept() as never).catch(() => undefined);
  };
  undo.onChange(() => {
    waiting ??= setTimeout(write, WRITE_EVERY_MS);
  });
  addEventListener('pagehide', () => {
    if (waiting !== undefined) void write();
  });
}

const nameOf = (window: number) => `undo ${window}`;
