import { Picture } from '../../film/picture.tsx';
import type { Player } from '../../film/player.ts';

/** The picture alone with black around it, and the line that is said. */
export function Stage({
  player,
  filmKey,
  line,
  isBlack,
  says,
}: {
  readonly player: Player | undefined;
  /** Another film is another picture. */
  readonly filmKey: string;
  readonly line: string;
  readonly isBlack: boolean;
  /** Stands where there is no picture. */
  readonly says: string;
}) {
  return (
    <div className={isBlack ? 'stage is-black' : 'stage'} data-testid="stage">
      <div className="stage-picture">
        {player ? (
          <Picture key={filmKey} player={player} says="What the team sees" />
        ) : (
          <p className="w stage-says">{says}</p>
        )}
      </div>
      {line !== '' && player && <p className="w stage-line">{line}</p>}
      {isBlack && <span className="vh">Black</span>}
    </div>
  );
}
