import type { Game, Team } from '@icewright/book';
import { Act, ActLink } from '../parts/act.tsx';
import { daySaid } from '../parts/figures.ts';
import { setRemoved } from '../shell/book.ts';
import { gameTitle } from './game-words.ts';
import { useLeftEmpty } from './leave-empty.ts';

/** A film that was opened belongs to a game already: there, or to another game all the same. */
export function KnownFilm({
  gameId,
  game,
  onMake,
  onLeave,
}: {
  readonly gameId: string;
  readonly game: Game | undefined;
  readonly onMake: () => void;
  readonly onLeave: () => void;
}) {
  if (!game) return null;
  return (
    <p className="undone" role="status">
      <span>
        This film is in <b className="w">{gameTitle(game)}</b>, {daySaid(game.day)}: go there?
      </span>
      <ActLink to={`/film/${gameId}`}>Go there</ActLink>{' '}
      <Act onPress={onMake}>Make another game all the same</Act>{' '}
      <Act bare onPress={onLeave}>
        Cancel
      </Act>
    </p>
  );
}

/** A game that was begun and left with nothing in it. */
export function LeftEmpty({ team }: { readonly team: Team }) {
  const left = useLeftEmpty();
  if (left === undefined || !team.contents[left as keyof Team['contents']]?.removed) return null;
  return (
    <p className="undone" role="status">
      The game that was begun has no film, no moment and no name, and is not kept.
      <Act onPress={() => setRemoved(left, false)}>Keep it all the same</Act>
    </p>
  );
}
