import { type Game, inOrder, type Team } from '@icewright/book';
import type { Id } from '@icewright/engine';
import { named } from '../parts/named.ts';
import { FreezesOfFilm } from './freezes-of-film.tsx';

/** Beside the running film: the freezes of this film, and what a freeze is for. */
export function FilmMargin({
  game,
  partId,
  team,
  isBlind,
  onFreeze,
  onHabit,
}: {
  readonly game: Game;
  readonly partId: string;
  readonly team: Team;
  /** Somebody judges blind: what a freeze is called may tell what was thought of it. */
  readonly isBlind: boolean;
  readonly onFreeze: (id: string) => void;
  /** Marks a moment of it at the picture that is shown. */
  readonly onHabit: (id: Id<'habit'>) => void;
}) {
  const habits = inOrder(team.habits).filter(([, one]) => one.kept);
  return (
    <>
      <p className="w say">
        <span className="by-key">Press F on a picture</span>
        <span className="by-finger">Stop at a picture and press Freeze</span> to see it on the ice, in{' '}
        {team.lengths}.
      </p>
      <FreezesOfFilm {...{ game, partId, team, isBlind, onFreeze }} />
      <section className="sec">
        <h2>
          Habits{' '}
          <span className="q3">
            <span className="by-key">M, then the number, then D, X or C</span>
            <span className="by-finger">press “Mark a moment”, the habit, then what was seen</span>
          </span>
        </h2>
        <ol className="habit-keys">
          {habits.slice(0, 9).map(([id, one], i) => (
            <li key={id}>
              <button type="button" className="key-press" onClick={() => onHabit(id)}>
                <kbd>{i + 1}</kbd> <span className="w">{named(one.title, 'habit')}</span>
              </button>
            </li>
          ))}
        </ol>
      </section>
    </>
  );
}
