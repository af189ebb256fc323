import type { CopyWindow } from './copy-window.ts';

/**
 * Where copies are kept: the browser's own store on this machine. They hold nothing that the film does not hold, are made
 * again when lost, and the one that was not looked at for the longest goes when there is no room.
 */
export const findWindows = async (hash?: string): Promise<CopyWindow[]> => {
  const all = (await inStore('readonly', ({ windows }) => windows.getAll())) as CopyWindow[];
  return hash === undefined ? all : all.filter(one => one.hash === hash);
};

/** A handle on them: no more is read than is asked for. */
export const findBytes = async (id: string): Promise<Blob | undefined> =>
  (await inStore('readonly', ({ bytes }) => bytes.get(id))) as Blob | undefined;

/** Keeps a window, and lets go of as many old ones as it takes to stay within the limit. Gives the ids that went. */
export const keepWindow = async (made: CopyWindow, bytes: Uint8Array<ArrayBuffer>): Promise<string[]> => {
  const limit = await limitBytes();
  const old = (await findWindows()).filter(one => one.id !== made.id).sort((a, b) => a.usedAt - b.usedAt);
  const going: string[] = [];
  let sum = made.byteCount + old.reduce((all, one) => all + one.byteCount, 0);
  for (const one of old) {
    if (sum <= limit) break;
    going.push(one.id);
    sum -= one.byteCount;
  }
  if (sum > limit) return [made.id];
  await forgetWindows(going);
  await inStore('readwrite', ({ windows, bytes: store }) => {
    store.put(new Blob([bytes]), made.id);
    return windows.put(made, made.id);
  });
  return going;
};

export const touchWindow = async (window: CopyWindow): Promise<void> => {
  await inStore('readwrite', ({ windows }) => windows.put({ ...window, usedAt: Date.now() }, window.id));
};

export const forgetWindows = async (ids: readonly string[]): Promise<void> => {
  if (ids.length === 0) return;
  await inStore('readwrite', ({ windows, bytes }) => {
    let last: IDBRequest | undefined;
    for (const id of ids) {
      bytes.delete(id);
      last = windows.delete(id);
    }
    return last!;
  });
};

/** Never more than a tenth of what the browser grants the page. */
const limitBytes = async (): Promise<number> => {
  const { quota } = (await navigator.storage?.estimate?.()) ?? {};
  return Math.min(MOST_BYTES, quota === undefined ? MOST_BYTES : quota / 10);
};
const MOST_BYTES = 800e6;

interface Stores {
  readonly windows: IDBObjectStore;
  readonly bytes: IDBObjectStore;
}

const inStore = (mode: IDBTransactionMode, work: (stores: Stores) => IDBRequest): Promise<unknown> =>
  new Promise((resolve, reject) => {
    const opening = indexedDB.open('icewright-film-copies', 1);
    opening.onupgradeneeded = () => {
      opening.result.createObjectStore('windows');
      opening.result.createObjectStore('bytes');
    };
    opening.onerror = () => reject(opening.error);
    opening.onsuccess = () => {
      const db = opening.result;
      const going = db.transaction(['windows', 'bytes'], mode);
      const request = work({ windows: going.objectStore('windows'), bytes: going.objectStore('bytes') });
      going.oncomplete = () => {
        db.close();
        resolve(request.result);
      };
      going.onabort = () => {
        db.close();
        reject(going.error);
      };
    };
  });
