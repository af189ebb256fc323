/**
 * Which films this browser can put its hand on: those opened in this window, and handles kept for the next visit.
 * A film is never copied into the browser's own store; short stretches round its moments are, see `copies/`.
 */
const inHand = new Map<string, File>();

export const rememberFilm = async (
  hash: string,
  file: File,
  handle?: FileSystemFileHandle,
): Promise<void> => {
  inHand.set(hash, file);
  if (!handle) return;
  await withStore('readwrite', store => store.put(handle, hash)).catch(() => undefined);
};

export const filmInHand = (hash: string): File | undefined => inHand.get(hash);

/** A film remembered by its handle, when the browser still lets us read it without asking. */
export const findRemembered = async (hash: string): Promise<File | undefined> => {
  const held = inHand.get(hash);
  if (held) return held;
  const handle = await findHandle(hash);
  if (!handle || (await handle.queryPermission?.({ mode: 'read' })) !== 'granted') return undefined;
  return readHandle(hash, handle);
};

/** Asks to read a remembered film again; must be called from a press. Undefined when there is none, or the answer is no. */
export const askRemembered = async (hash: string): Promise<File | undefined> => {
  const handle = await findHandle(hash);
  if (!handle || (await handle.requestPermission?.({ mode: 'read' })) !== 'granted') return undefined;
  return readHandle(hash, handle);
};

const readHandle = async (hash: string, handle: FileSystemFileHandle): Promise<File | undefined> => {
  try {
    const file = await handle.getFile();
    inHand.set(hash, file);
    return file;
  } catch {
    // Moved, renamed or on a disc that is not plugged in.
    return undefined;
  }
};

const findHandle = (hash: string): Promise<AskingHandle | undefined> =>
  withStore('readonly', store => store.get(hash)).catch(() => undefined) as Promise<AskingHandle | undefined>;

const withStore = (mode: IDBTransactionMode, work: (store: IDBObjectStore) => IDBRequest): Promise<unknown> =>
  new Promise((resolve, reject) => {
    const opening = indexedDB.open('icewright-films', 1);
    opening.onupgradeneeded = () => opening.result.createObjectStore('handles');
    opening.onerror = () => reject(opening.error);
    opening.onsuccess = () => {
      const request = work(opening.result.transaction('handles', mode).objectStore('handles'));
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    };
  });

interface AskingHandle extends FileSystemFileHandle {
  queryPermission?(options: { mode: 'read' }): Promise<PermissionState>;
  requestPermission?(options: { mode: 'read' }): Promise<PermissionState>;
}
