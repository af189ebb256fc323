import { Picture } from '../../film/picture.tsx';
import type { Player } from '../../film/player.ts';
import { MarksOver } from './marks-over.tsx';
import type { Showing } from './run-channel.ts';

/** The picture alone with black around it, and the line that is said. */
export function Stage({
  player,
  picture,
  line,
  isBlack,
  says,
}: {
  readonly player: Player | undefined;
  readonly picture: Showing['picture'];
  readonly line: string;
  readonly isBlack: boolean;
  /** Stands where there is no picture. */
  readonly says: string;
}) {
  return (
    <div className={isBlack ? 'stage is-black' : 'stage'} data-testid="stage">
      <div className="stage-picture">
        {player && picture ? (
          <Picture
            // Another film is another picture.
            key={picture.hash}
            player={player}
            says="What the team sees"
            over={unit => (
              <MarksOver gameId={picture.gameId} film={picture.filmId} player={player} filmPerScreen={unit} />
            )}
          />
        ) : (
          <p className="w stage-says">{says}</p>
        )}
      </div>
      {line !== '' && player && <p className="w stage-line">{line}</p>}
      {isBlack && <span className="vh">Black</span>}
    </div>
  );
}
