import { useEffect, useState } from 'react';
import { Act } from '../parts/act.tsx';
import { useDocuments } from '../shell/book.ts';
import { type FolderFilm, findFilms } from '../shell/server.ts';
import { megabytes } from './megabytes.ts';

/** Films that lie in this machine's film folder and belong to no game yet. */
export function FilmFolder({
  gameIds,
  isDemo,
  onFilm,
}: {
  readonly gameIds: readonly string[];
  /** The demo team's own films are offered to it alone. */
  readonly isDemo: boolean;
  readonly onFilm: (film: FolderFilm) => void;
}) {
  const [films, setFilms] = useState<readonly FolderFilm[]>([]);
  const games = useDocuments('game', gameIds);
  useEffect(() => {
    void findFilms().then(answer => answer.kind === 'ok' && setFilms(answer.value));
  }, []);
  const isRead = gameIds.every(id => games.get(id)?.state === 'ready');
  const known = new Set(
    [...games.values()].flatMap(view => Object.values(view.value?.films ?? {}).map(part => part.hash)),
  );
  const free = films.filter(film => !known.has(film.hash) && (isDemo || !film.demo));
  if (!isRead || free.length === 0) return null;
  return (
    <section className="sec film-folder">
      <h2>
        In the film folder <span className="q3">of this machine, in no game of this team yet</span>
      </h2>
      <ul>
        {free.map(film => (
          <li key={film.hash}>
            <span>{film.fileName}</span> <span className="q3">{megabytes(film.byteCount)}</span>
            <Act onPress={() => onFilm(film)} label={`Open ${film.fileName}`}>
              Open
            </Act>
          </li>
        ))}
      </ul>
    </section>
  );
}
