import { type FilmPart, filmHashOf } from '@icewright/book';
import { type FolderFilm, filmAddressOf } from '../shell/server.ts';
import { rememberFilm } from './film-hand.ts';
import { type Refusal, refusalOf } from './film-refusal.ts';
import { leaveOpened } from './just-opened.ts';
import { type OpenFilm, openFilm } from './open-film.ts';

/** A film file that came in by the picker or by a drop; the handle lets the browser find it again tomorrow. */
export interface FilmFile {
  readonly file: File;
  readonly handle?: FileSystemFileHandle;
}

/** A film that cannot be decoded here: by its file in the browser's hand, or by its hash in the film folder. */
export type UnreadFilm = { readonly fileName: string } & (
  | { readonly file: File }
  | { readonly hash: string }
);

export type TakenFilm =
  | { readonly kind: 'taken'; readonly part: Omit<FilmPart, 'rank' | 'label'> }
  | RefusedFilm;
export type RefusedFilm = Refusal & { readonly film: UnreadFilm };

/** Looks a file through and gives what a game's document keeps of it. Nothing is written anywhere when it is refused. */
export const takeFilm = async ({ file, handle }: FilmFile): Promise<TakenFilm> => {
  try {
    const film = await openFilm({ file });
    if (film.kind === 'refused') return { ...film, film: { file, fileName: file.name } };
    const hash = await hashOfFile(file);
    await rememberFilm(hash, file, handle);
    leaveOpened(hash, film);
    return { kind: 'taken', part: partOf(hash, file.name, file.size, film) };
  } catch {
    return { ...refusalOf('unreadable'), film: { file, fileName: file.name } };
  }
};

/** The same for a film of the server's folder, which is known by its hash already. */
export const takeFolderFilm = async ({ hash, fileName, byteCount }: FolderFilm): Promise<TakenFilm> => {
  try {
    const film = await openFilm({ url: new URL(filmAddressOf(hash), location.href).href });
    if (film.kind === 'refused') return { ...film, film: { hash, fileName } };
    leaveOpened(hash, film);
    return { kind: 'taken', part: partOf(hash, fileName, byteCount, film) };
  } catch {
    return { ...refusalOf('unreadable'), film: { hash, fileName } };
  }
};

const partOf = (hash: string, fileName: string, byteCount: number, film: OpenFilm) => ({
  hash,
  fileName: fileName.slice(0, 200),
  byteCount,
  durationS: film.durationS,
  // Of a long film that is still being looked through: as many as its length holds at the rate so far.
  frameCount: film.isWhole()
    ? film.index.frameCount
    : Math.round((film.index.frameCount * film.durationS) / Math.max(1e-3, film.index.endS)),
});

export const hashOfFile = (file: Blob): Promise<string> =>
  filmHashOf(
    async (offset, length) => new Uint8Array(await file.slice(offset, offset + length).arrayBuffer()),
    file.size,
  );

/** Lets the person choose one file. Undefined when they change their mind. */
export const pickFilm = async (): Promise<FilmFile | undefined> => {
  if ('showOpenFilePicker' in window) {
    try {
      const [handle] = await (window as unknown as FilePicking).showOpenFilePicker({ multiple: false });
      return handle && { file: await handle.getFile(), handle };
    } catch (error) {
      if (error instanceof DOMException && error.name === 'AbortError') return undefined;
      throw error;
    }
  }
  return pickByField();
};

/** Browsers without handles: a plain file field. The film must then be opened again after a reload. */
const pickByField = (): Promise<FilmFile | undefined> =>
  new Promise(resolve => {
    const field = document.createElement('input');
    field.type = 'file';
    field.hidden = true;
    const done = (answer: FilmFile | undefined) => {
      field.remove();
      resolve(answer);
    };
    field.addEventListener('change', () => {
      const file = field.files?.[0];
      done(file && { file });
    });
    field.addEventListener('cancel', () => done(undefined));
    document.body.append(field);
    field.click();
  });

export const droppedFilm = async (transfer: DataTransfer): Promise<FilmFile | undefined> => {
  const item = [...transfer.items].find(one => one.kind === 'file');
  const file = transfer.files[0];
  if (!file) return undefined;
  // The handle must be asked for before the first await: a drop's data is gone after it.
  const asked = (item as HandleItem | undefined)?.getAsFileSystemHandle?.();
  const handle = await asked?.catch(() => undefined);
  return handle?.kind === 'file' ? { file, handle: handle as FileSystemFileHandle } : { file };
};

interface FilePicking {
  showOpenFilePicker(options: { multiple: boolean }): Promise<FileSystemFileHandle[]>;
}
interface HandleItem {
  getAsFileSystemHandle?(): Promise<FileSystemHandle>;
}
