import { type Game, inOrder } from '@icewright/book';
import type { Id } from '@icewright/engine';
import { Act } from '../parts/act.tsx';
import { KeepCopy } from './keep-copy.tsx';

/** The files of a game, when there are several; where the open one lies; and the way to add one. */
export function FilmParts({
  game,
  partId,
  lies,
  busy,
  onPart,
  onAdd,
}: {
  readonly game: Game;
  readonly partId: Id<'film'>;
  readonly lies: 'hand' | 'server' | undefined;
  readonly busy: boolean;
  readonly onPart: (id: Id<'film'>) => void;
  readonly onAdd: () => void;
}) {
  const parts = inOrder(game.films);
  const part = game.films[partId];
  return (
    <p className="film-parts">
      {parts.length > 1 &&
        parts.map(([id, one]) => (
          <Act key={id} isOn={id === partId} onPress={() => onPart(id)}>
            {one.label}
          </Act>
        ))}
      <span className="q3">
        {part?.fileName}
        {lies === 'server' ? ', in the film folder' : lies === 'hand' ? ', where it lies' : ''}
      </span>
      {part && lies === 'hand' && <KeepCopy key={part.hash} part={part} />}
      <Act bare working={busy} onPress={onAdd}>
        Add another part
      </Act>
    </p>
  );
}
