import type { TeamLine } from './server.ts';

export interface KeptTeams {
  readonly teams: readonly TeamLine[];
  readonly teamId: string | null;
}

/**
 * Which teams there are, kept where the documents are kept. `localStorage` is read at once but written late: a browser
 * that is killed may never have written it, and would then ask at the front door as if nothing were here.
 */
export async function findKeptTeams(): Promise<KeptTeams | null> {
  const found = await withStore('readonly', store => store.get(ONLY)).catch(() => null);
  return (found as KeptTeams | undefined) ?? null;
}

export async function keepTeams(kept: KeptTeams): Promise<void> {
  // A browser that keeps nothing, as in a private window, still has the server.
  await withStore('readwrite', store => store.put(kept, ONLY)).catch(() => undefined);
}

const ONLY = 'teams';

const withStore = (mode: IDBTransactionMode, work: (store: IDBObjectStore) => IDBRequest): Promise<unknown> =>
  new Promise((resolve, reject) => {
    const opening = indexedDB.open('icewright-teams', 1);
    opening.onupgradeneeded = () => opening.result.createObjectStore('kept');
    opening.onerror = () => reject(opening.error);
    opening.onsuccess = () => {
      const transaction = opening.result.transaction('kept', mode);
      const request = work(transaction.objectStore('kept'));
      transaction.oncomplete = () => {
        opening.result.close();
        resolve(request.result);
      };
      transaction.onerror = () => reject(transaction.error);
    };
  });
