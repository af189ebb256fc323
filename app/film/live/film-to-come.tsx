import type { Game } from '@icewright/book';
import type { ReactNode } from 'react';
import { isLive } from './live-part.ts';

/** What ties the moments of a live clock to a film, which may be here by now. */
export function FilmToCome({
  films,
  children,
}: {
  readonly films: Game['films'];
  readonly children: ReactNode;
}) {
  const isHere = Object.values(films).some(one => !isLive(one));
  return (
    <div className="live-film">
      <p className="q2">
        {isHere
          ? 'The film is here: in it, one moment that both show ties all of them to it.'
          : 'When the film is here, open it: one moment that both show ties all of them to it.'}
      </p>
      {children}
    </div>
  );
}
