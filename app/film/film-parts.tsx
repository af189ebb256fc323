import { type Game, inOrder } from '@icewright/book';
import type { Id } from '@icewright/engine';
import { Act } from '../parts/act.tsx';
import { KeepCopy } from './keep-copy.tsx';
import { isLive } from './live/live-part.ts';
import { RenamePart } from './rename-part.tsx';

/** The files of a game, when there are several; where the open one lies; and the way to add one. */
export function FilmParts({
  gameId,
  game,
  partId,
  lies,
  busy,
  onPart,
  onAdd,
}: {
  readonly gameId: string;
  readonly game: Game;
  readonly partId: Id<'film'>;
  readonly lies: 'hand' | 'server' | undefined;
  readonly busy: boolean;
  readonly onPart: (id: Id<'film'>) => void;
  readonly onAdd: (as: 'part' | 'camera') => void;
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
      {part && parts.length > 1 && (
        <RenamePart key={partId} gameId={gameId} films={game.films} partId={partId} />
      )}
      <Act bare working={busy} onPress={() => onAdd('part')}>
        Add another part
      </Act>
      {part && !isLive(part) && (
        <Act bare onPress={() => onAdd('camera')}>
          Add another camera
        </Act>
      )}
    </p>
  );
}
