/**
 * One store of this browser for what was worked out of films and can be worked out again: numbers only, and not without end. Where the
 * browser refuses, nothing is kept and nothing is found.
 */
export interface FilmStore {
  find(key: string): Promise<unknown>;
  all(): Promise<unknown[]>;
  keep(key: string, value: unknown): Promise<void>;
}

export const filmStore = (database: string, name: string, mostKept: number): FilmStore => {
  const within = (mode: IDBTransactionMode, work: (store: IDBObjectStore) => IDBRequest): Promise<unknown> =>
    new Promise((resolve, reject) => {
      const opening = indexedDB.open(database, 1);
      opening.onupgradeneeded = () => opening.result.createObjectStore(name);
      opening.onerror = () => reject(opening.error);
      opening.onsuccess = () => {
        const going = opening.result.transaction(name, mode);
        const request = work(going.objectStore(name));
        going.oncomplete = () => {
          opening.result.close();
          resolve(request.result);
        };
        going.onabort = () => {
          opening.result.close();
          reject(going.error);
        };
      };
    });
  return {
    find: key => within('readonly', store => store.get(key)).catch(() => undefined),
    all: () => within('readonly', store => store.getAll()).catch(() => []) as Promise<unknown[]>,
    keep: async (key, value) => {
      await within('readwrite', store => {
        dropSome(store, mostKept);
        return store.put(value, key);
      }).catch(() => undefined);
    },
  };
};

/** Which ones go matters little; that not all stay does. */
const dropSome = (store: IDBObjectStore, mostKept: number): void => {
  const all = store.getAllKeys();
  all.onsuccess = () => {
    for (const key of all.result.slice(0, Math.max(0, all.result.length - mostKept))) store.delete(key);
  };
};
