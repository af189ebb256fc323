import type { Game, Team } from '@icewright/book';
import type { Id } from '@icewright/engine';
import { useState } from 'react';
import { FreezesOfFilm } from '../freezes-of-film.tsx';
import type { MomentFilter } from './filter-moments.ts';
import { momentsOf } from './moments-of.ts';
import { MomentsPanel } from './moments-panel.tsx';

/** The moments and freezes of a film whose pictures are not here: moments can be read and changed all the same. */
export function MomentsAlone({
  gameId,
  game,
  team,
  partId,
}: {
  readonly gameId: string;
  readonly game: Game;
  readonly team: Team;
  readonly partId: Id<'film'>;
}) {
  const [chosen, choose] = useState<string>();
  const [filter, setFilter] = useState<MomentFilter>({});
  const moments = momentsOf(game, partId);
  return (
    <div className="film-room moments-alone">
      <div className="film-below">
        {moments.length > 0 && (
          <MomentsPanel
            game={game}
            filter={filter}
            onFilter={setFilter}
            gameId={gameId}
            moments={moments}
            team={team}
            chosen={chosen}
            onChoose={id => choose(id === chosen ? undefined : id)}
            onGone={() => choose(undefined)}
          />
        )}
        <FreezesOfFilm game={game} partId={partId} team={team} />
      </div>
    </div>
  );
}
