import type { Game, Team } from '@icewright/book';
import { clockText } from './film-clock.ts';

/** The freezes of one film in order; they open where its pictures are here. */
export function FreezesOfFilm({
  game,
  partId,
  team,
  isBlind = false,
  onFreeze,
}: {
  readonly game: Pick<Game, 'freezes'>;
  readonly partId: string;
  readonly team: Pick<Team, 'habits'>;
  /** Somebody judges blind: what a freeze is called may tell what was thought of it. */
  readonly isBlind?: boolean;
  readonly onFreeze?: (id: string) => void;
}) {
  const freezes = Object.entries(game.freezes)
    .filter(([, one]) => one.film === partId)
    .sort(([, a], [, b]) => a.frameIndex - b.frameIndex);
  if (freezes.length === 0) return null;
  return (
    <section className="sec">
      <h2>
        Freezes <span className="q3">of this film</span>
      </h2>
      <ul className="freeze-list">
        {freezes.map(([id, one]) => (
          <li key={id}>
            {onFreeze ? (
              <button type="button" className="quiet" onClick={() => onFreeze(id)}>
                {clockText(one.filmTimeS, 1)}
              </button>
            ) : (
              <span className="num">{clockText(one.filmTimeS, 1)}</span>
            )}{' '}
            <span className="w">
              {(!isBlind && one.title) ||
                (one.habit && team.habits[one.habit]?.title) ||
                'not about a habit yet'}
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}
