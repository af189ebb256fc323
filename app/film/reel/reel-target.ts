import { saveFile } from '../../parts/save-file.ts';
import type { ReelKind } from './reel-kinds.ts';

/** Where a reel is written while it is made: never whole in memory. */
export interface ReelTarget {
  readonly writable: WritableStream;
  /** It is whole: the browser's own copy is handed out as a download. Gives its size. */
  keep(): Promise<number>;
  /** It was called off or failed: nothing is left of it. */
  drop(): Promise<void>;
}

const TYPES = { mp4: 'video/mp4', webm: 'video/webm' } as const;

/**
 * A file that the user chooses, where the browser lets him; else one of the browser's own, handed out at the end. Undefined when
 * he chose none. Must be called from a press.
 */
export const openReelTarget = async (fileName: string, kind: ReelKind): Promise<ReelTarget | undefined> => {
  if (!('showSaveFilePicker' in window)) return ownTarget(fileName);
  try {
    const handle = await (window as unknown as FileSaving).showSaveFilePicker({
      suggestedName: fileName,
      types: [{ description: 'Film', accept: { [TYPES[kind]]: [`.${kind}`] } }],
    });
    const writable = await handle.createWritable();
    return {
      writable,
      keep: async () => (await handle.getFile()).size,
      drop: () => writable.abort().catch(() => undefined),
    };
  } catch (error) {
    if ((error as DOMException).name === 'AbortError') return undefined;
    throw error;
  }
};

/** Not in the types of the page's library yet. */
interface FileSaving {
  showSaveFilePicker(options: {
    suggestedName: string;
    types: { description: string; accept: Record<string, string[]> }[];
  }): Promise<FileSystemFileHandle>;
}

const ownTarget = async (fileName: string): Promise<ReelTarget> => {
  const folder = await (await navigator.storage.getDirectory()).getDirectoryHandle(FOLDER, { create: true });
  // What was handed out before has been copied by now.
  for await (const name of folder.keys()) await folder.removeEntry(name).catch(() => undefined);
  const handle = await folder.getFileHandle(`${crypto.randomUUID()}`, { create: true });
  const writable = await handle.createWritable();
  const remove = () => folder.removeEntry(handle.name).catch(() => undefined);
  return {
    writable,
    keep: async () => {
      const file = await handle.getFile();
      saveFile(file, fileName);
      return file.size;
    },
    drop: async () => {
      await writable.abort().catch(() => undefined);
      await remove();
    },
  };
};
const FOLDER = 'reels';
