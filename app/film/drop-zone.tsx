import { type ReactNode, useState } from 'react';
import { droppedFilm, type FilmFile } from './film-door.ts';

/** The whole place takes a film that is dropped on it. */
export function DropZone({
  onFilm,
  children,
}: {
  readonly onFilm: (film: Promise<FilmFile | undefined>) => void;
  readonly children: ReactNode;
}) {
  const [over, setOver] = useState(false);
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: dropping is a second way; the act "Open a film" is the first
    <div
      className={over ? 'drop-zone over' : 'drop-zone'}
      onDragOver={event => {
        if (!event.dataTransfer.types.includes('Files')) return;
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={event => {
        if (event.currentTarget === event.target) setOver(false);
      }}
      onDrop={event => {
        event.preventDefault();
        setOver(false);
        onFilm(droppedFilm(event.dataTransfer));
      }}
    >
      {children}
      {over && <p className="drop-says w">Let go to open this film.</p>}
    </div>
  );
}
