import type { Game } from '@icewright/book';
import type { Id } from '@icewright/engine';
import { useId, useState } from 'react';
import { Act } from '../parts/act.tsx';
import { edit, endStep } from '../shell/book.ts';
import { isTaken } from './part-label.ts';

/** Another name for the film that is open, among those of its game. */
export function RenamePart({
  gameId,
  films,
  partId,
}: {
  readonly gameId: string;
  readonly films: Game['films'];
  readonly partId: Id<'film'>;
}) {
  const [name, setName] = useState<string>();
  const id = useId();
  const label = films[partId]?.label ?? '';
  if (name === undefined) {
    return (
      <Act bare onPress={() => setName(label)}>
        Rename {label}
      </Act>
    );
  }
  const waits =
    name.trim() === ''
      ? 'a name is wanted'
      : isTaken(films, partId, name)
        ? 'another film of this game is called so'
        : undefined;
  const keep = () => {
    if (waits) return;
    endStep(gameId);
    edit(gameId).set(['films', partId, 'label'], name.trim());
    endStep(gameId);
    setName(undefined);
  };
  return (
    <span className="rename-part">
      <label htmlFor={id} className="q2">
        Name of this film
      </label>{' '}
      <input
        id={id}
        className="entry"
        value={name}
        maxLength={60}
        // biome-ignore lint/a11y/noAutofocus: it was asked for by a press
        autoFocus
        onChange={event => setName(event.target.value)}
        onKeyDown={event => {
          if (event.key === 'Enter') keep();
          if (event.key === 'Escape') setName(undefined);
        }}
      />{' '}
      <Act onPress={keep} notNow={waits}>
        Keep the name
      </Act>{' '}
      <Act bare onPress={() => setName(undefined)}>
        Cancel
      </Act>
      {waits && (
        <span className="q3" role="status">
          {' '}
          {waits}
        </span>
      )}
    </span>
  );
}
