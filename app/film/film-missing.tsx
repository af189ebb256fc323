import type { FilmPart } from '@icewright/book';
import { useState } from 'react';
import { Act } from '../parts/act.tsx';
import { type FilmFile, hashOfFile, pickFilm } from './film-door.ts';
import { askRemembered, rememberFilm } from './film-hand.ts';
import { megabytes } from './megabytes.ts';

/** The film lies where this browser may not look by itself: on this machine perhaps, perhaps on another. The moments and freezes are here all the same; the file is known again by its content. */
export function FilmMissing({
  part,
  onFound,
  onOther,
}: {
  readonly part: FilmPart;
  readonly onFound: () => void;
  /** Another film than the one that was asked for: its own door decides. */
  readonly onOther: (film: FilmFile) => void;
}) {
  const [other, setOther] = useState<FilmFile>();
  const [busy, setBusy] = useState(false);
  const open = async () => {
    setOther(undefined);
    if (await askRemembered(part.hash)) return onFound();
    const film = await pickFilm();
    if (!film) return;
    setBusy(true);
    const hash = film.file.size === part.byteCount ? await hashOfFile(film.file) : undefined;
    setBusy(false);
    if (hash !== part.hash) return setOther(film);
    await rememberFilm(hash, film.file, film.handle);
    onFound();
  };
  return (
    <div className="film-state">
      <p className="w film-state-says">This browser has no way to the film now: open its file again.</p>
      <p className="q2">
        It was {part.fileName}, {megabytes(part.byteCount)}. Wherever it lies now and whatever it is called,
        it is known by its content. Its moments and freezes are kept.
      </p>
      <p>
        <Act lead working={busy} onPress={() => void open()}>
          Open it again
        </Act>
      </p>
      {other && (
        <p role="alert">
          <span className="warm">{other.file.name} is another film.</span>{' '}
          <Act onPress={() => onOther(other)}>Add it to this game</Act>
        </p>
      )}
    </div>
  );
}
