import type { Game, Team } from '@icewright/book';
import type { Id } from '@icewright/engine';
import { useState } from 'react';
import { Act } from '../parts/act.tsx';
import { edit, endStep, undo } from '../shell/book.ts';
import { MomentList } from './moment-list.tsx';
import { momentsOf } from './moments-of.ts';
import { keep } from './who-marks.ts';

/** The moments of a film whose pictures are not here: they can be read and changed all the same. */
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
  const [removed, setRemoved] = useState(false);
  const moments = momentsOf(game, partId);
  return (
    <div className="film-room moments-alone">
      <div className="film-below">
        {removed && (
          <p className="undone" role="status">
            The moment is taken out.{' '}
            <Act
              onPress={() => {
                undo(gameId);
                setRemoved(false);
              }}
            >
              Put it back
            </Act>
          </p>
        )}
        {moments.length > 0 && (
          <MomentList
            gameId={gameId}
            moments={moments}
            team={team}
            chosen={chosen}
            onChoose={id => choose(id === chosen ? undefined : id)}
            onBy={keep}
            onRemove={id => {
              endStep(gameId);
              edit(gameId).remove(['moments', id]);
              endStep(gameId);
              choose(undefined);
              setRemoved(true);
            }}
          />
        )}
      </div>
    </div>
  );
}
