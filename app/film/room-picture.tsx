import type { Game } from '@icewright/book';
import { FreezeLayer } from './freeze-layer.tsx';
import { HoldCountdown } from './holds/hold-countdown.tsx';
import { MarksLayer } from './marks/marks-layer.tsx';
import type { useMarks } from './marks/use-marks.ts';
import { Picture } from './picture.tsx';
import type { Player } from './player.ts';
import { gameTitleWords } from './room-words.ts';
import type { Followed } from './track/use-followed.tsx';
import type { useOpenFreeze } from './use-open-freeze.ts';

/** The picture of the film room with what lies over it: the open freeze or the skaters followed, and the marks. */
export function RoomPicture({
  player,
  game,
  marks,
  isBlind,
  desk,
  view,
  isFrozen,
  shown,
  offer,
  pinsOffer,
  drawn,
  followed,
}: Pick<
  ReturnType<typeof useOpenFreeze>,
  'desk' | 'view' | 'isFrozen' | 'shown' | 'offer' | 'pinsOffer' | 'drawn'
> & {
  readonly player: Player;
  readonly game: Game;
  readonly marks: ReturnType<typeof useMarks>;
  /** Marks are somebody's opinion too. */
  readonly isBlind: boolean;
  readonly followed: Followed;
}) {
  return (
    <Picture
      player={player}
      says={`The film at ${gameTitleWords(game)}`}
      over={unit => (
        <>
          {!isBlind && <MarksLayer {...marks} filmPerScreen={unit} />}
          <HoldCountdown player={player} />
        </>
      )}
    >
      {(unit, canvas) =>
        desk && view && isFrozen ? (
          <FreezeLayer
            {...{ desk, view, shown, canvas, offer, pinsOffer }}
            options={drawn}
            filmPerScreen={unit}
          />
        ) : (
          followed.layer(unit)
        )
      }
    </Picture>
  );
}
