import type { ReactNode } from 'react';
import { DropHere } from '../parts/drop-here.tsx';
import { droppedFilm, type FilmFile } from './film-door.ts';

/** The whole place takes a film that is dropped on it. */
export function DropZone({
  onFilm,
  children,
}: {
  readonly onFilm: (film: Promise<FilmFile | undefined>) => void;
  readonly children: ReactNode;
}) {
  return (
    <DropHere
      className="drop-zone"
      says="Let go to open this film."
      onDrop={files => onFilm(droppedFilm(files))}
    >
      {children}
    </DropHere>
  );
}
