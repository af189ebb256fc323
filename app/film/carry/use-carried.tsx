import type { Freeze, Game } from '@icewright/book';
import type { PinFit, Rink } from '@icewright/engine';
import { type ReactNode, useMemo } from 'react';
import type { Lengths } from '../../parts/figures.ts';
import type { Player } from '../player.ts';
import type { Tied } from '../track/track-messages.ts';
import { carryOf, carryOfAll, pinsSaid, tieAt, tiedOf } from './carried-frames.ts';
import { CarriedHere } from './carried-here.tsx';
import { CarryProgress } from './carry-progress.tsx';
import { CarrySection } from './carry-section.tsx';
import { useFollowing } from './use-carry.ts';
import { useStretches } from './use-stretches.ts';

/** What the film room needs of pins that are carried to other frames. */
export interface Carried {
  /** The stretches whose camera was followed, with their pinned frames; the newest first. */
  readonly tieds: readonly Tied[];
  /** The tie of the frame that is shown, to be kept with its freeze. */
  readonly tieHere: () => Freeze['carried'];
  /** How a frame is tied to the ice by pins of other frames; undefined where nothing reaches. */
  readonly fitAt: (frameIndex: number) => PinFit | undefined;
  /** What is known of the frame that is shown, and the way to freeze it. */
  readonly here: (onFreeze: () => void) => ReactNode;
  /** The acts that carry the pins of a frame. */
  readonly others: (frameIndex: number) => ReactNode;
}

export const useCarried = (
  player: Player,
  game: Game,
  film: string,
  rink: Rink,
  lengths: Lengths,
): Carried => {
  const following = useFollowing(player.film);
  const stretches = useStretches(game.films[film as keyof Game['films']]?.hash ?? '', following.state);
  const pins = pinsSaid(game, film);
  const carry = useMemo(
    () => carryOf(following.state.kind === 'followed' ? tiedOf(following.state, pins, rink) : undefined),
    [following.state, pins, rink],
  );
  const all = useMemo(() => carryOfAll(stretches, pins, rink), [stretches, pins, rink]);
  const tieds = useMemo(() => stretches.map(one => tiedOf(one, pins, rink)), [stretches, pins, rink]);
  return {
    tieds,
    fitAt: all.fitAt,
    tieHere: () => tieAt(all, player.now().frameIndex),
    here: onFreeze => (
      <>
        {following.state.kind === 'following' && (
          <CarryProgress state={following.state} onStop={following.stop} />
        )}
        {(carry || stretches.length > 0) && (
          <CarriedHere
            player={player}
            carriedAt={all.at}
            saysWhere={carry !== undefined}
            lengths={lengths}
            onFreeze={onFreeze}
          />
        )}
      </>
    ),
    others: frameIndex => (
      <CarrySection
        film={player.film}
        frameIndex={frameIndex}
        following={following}
        carry={carry}
        lengths={lengths}
      />
    ),
  };
};
