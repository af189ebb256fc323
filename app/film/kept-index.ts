import type { FrameIndex } from './frame-index.ts';

/**
 * Indexes of films that took long to look through, kept in this browser by the film's hash: the film opens at once the next
 * time. They are numbers only; when lost, the film is looked through again.
 */
export const findIndex = async (hash: string): Promise<FrameIndex | undefined> => {
  const kept = (await inStore('readonly', store => store.get(hash)).catch(() => undefined)) as
    | (FrameIndex & { keptAt: number })
    | undefined;
  return (
    kept && { timesS: kept.timesS, endS: kept.endS, frameCount: kept.frameCount, ticksPerS: kept.ticksPerS }
  );
};

export const keepIndex = async (hash: string, index: FrameIndex): Promise<void> => {
  // A view into a longer array would be kept with all that lies behind it.
  const timesS = index.timesS.slice();
  await inStore('readwrite', store => {
    void dropOldest(store);
    return store.put({ ...index, timesS, keptAt: Date.now() }, hash);
  }).catch(() => undefined);
};

const dropOldest = (store: IDBObjectStore): void => {
  const all = store.getAllKeys();
  all.onsuccess = () => {
    // Which ones go matters little; that not all stay does.
    for (const key of all.result.slice(0, Math.max(0, all.result.length - MOST_KEPT))) store.delete(key);
  };
};
/** A long film's index takes two or three megabytes. */
const MOST_KEPT = 40;

const inStore = (mode: IDBTransactionMode, work: (store: IDBObjectStore) => IDBRequest): Promise<unknown> =>
  new Promise((resolve, reject) => {
    const opening = indexedDB.open('icewright-film-indexes', 1);
    opening.onupgradeneeded = () => opening.result.createObjectStore('indexes');
    opening.onerror = () => reject(opening.error);
    opening.onsuccess = () => {
      const going = opening.result.transaction('indexes', mode);
      const request = work(going.objectStore('indexes'));
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
