import type { CopyWindow } from './copy-window.ts';

/**
 * Where copies are kept: the browser's own store on this machine. They hold nothing that the film does not hold, are made
 * again when lost, and of those round moments the one that was not looked at for the longest goes when there is no room.
 */
export const findWindows = async (hash?: string): Promise<CopyWindow[]> => {
  const all = (await inStore('readonly', ({ windows }) => windows.getAll())) as CopyWindow[];
  return hash === undefined ? all : all.filter(one => one.hash === hash);
};

/** A handle on them: no more is read than is asked for. */
export const findBytes = async (id: string): Promise<Blob | undefined> =>
  (await inStore('readonly', ({ bytes }) => bytes.get(id))) as Blob | undefined;

/**
 * Keeps a window. One round a moment lets go of as many old ones of its kind as it takes to stay within their limit; one of a whole
 * film was asked for, and fails where the browser has no room. Gives the ids that went.
 */
export const keepWindow = async (made: CopyWindow, bytes: Uint8Array<ArrayBuffer>): Promise<string[]> => {
  if (made.isSmall) {
    await put(made, bytes);
    return [];
  }
  const limit = await limitBytes();
  const old = (await findWindows())
    .filter(one => one.id !== made.id && !one.isSmall)
    .sort((a, b) => a.usedAt - b.usedAt);
  const going: string[] = [];
  let sum = made.byteCount + old.reduce((all, one) => all + one.byteCount, 0);
  for (const one of old) {
    if (sum <= limit) break;
    going.push(one.id);
    sum -= one.byteCount;
  }
  if (sum > limit) return [made.id];
  await forgetWindows(going);
  await put(made, bytes);
  return going;
};

const put = (made: CopyWindow, bytes: Uint8Array<ArrayBuffer>): Promise<unknown> =>
  inStore('readwrite', ({ windows, bytes: store }) => {
    store.put(new Blob([bytes]), made.id);
    return windows.put(made, made.id);
  });

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

/** Whether the whole of a film is to be kept ready. */
export const findAsked = async (hash: string): Promise<boolean> =>
  (await inStore('readonly', ({ asked }) => asked.get(hash))) === true;

export const keepAsked = async (hash: string, isAsked: boolean): Promise<void> => {
  await inStore('readwrite', ({ asked }) => (isAsked ? asked.put(true, hash) : asked.delete(hash)));
};

/** What the browser grants this page still, of which half is left to everything else; undefined where it does not say. */
export const roomBytes = async (): Promise<number | undefined> => {
  const { quota, usage } = (await navigator.storage?.estimate?.()) ?? {};
  return quota === undefined ? undefined : (quota - (usage ?? 0)) / 2;
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
  /** By the hash of the film. */
  readonly asked: IDBObjectStore;
}

const inStore = (mode: IDBTransactionMode, work: (stores: Stores) => IDBRequest): Promise<unknown> =>
  new Promise((resolve, reject) => {
    const opening = indexedDB.open('icewright-film-copies', 2);
    opening.onupgradeneeded = () => {
      const { result } = opening;
      // Copies of another form are made again.
      for (const name of [...result.objectStoreNames]) result.deleteObjectStore(name);
      for (const name of STORES) result.createObjectStore(name);
    };
    opening.onerror = () => reject(opening.error);
    opening.onsuccess = () => {
      const db = opening.result;
      const going = db.transaction(STORES, mode);
      const [windows, bytes, asked] = STORES.map(name => going.objectStore(name)) as [
        IDBObjectStore,
        IDBObjectStore,
        IDBObjectStore,
      ];
      const request = work({ windows, bytes, asked });
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

const STORES = ['windows', 'bytes', 'asked'] as const;
