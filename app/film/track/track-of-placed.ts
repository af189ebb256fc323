import type { Freeze, Game, Placed } from '@icewright/book';
import type { Id } from '@icewright/engine';

/** A followed skater, and the hand that set his feet in the picture of a freeze. */
export interface FollowedFrom {
  readonly track: Id<'track'>;
  readonly hand: Id<'hand'>;
}

/**
 * Who is followed from a skater placed in a freeze: the track with a hand in that picture on the same feet, or of the same role or person there once one of the
 * two was moved. Undefined while he is not followed.
 */
export const trackOfPlaced = (
  tracks: Game['tracks'],
  { film, frameIndex }: Pick<Freeze, 'film' | 'frameIndex'>,
  { side, role, skater, feet }: Placed,
): FollowedFrom | undefined => {
  const here = (Object.entries(tracks) as [Id<'track'>, Game['tracks'][Id<'track'>]][])
    .filter(([, one]) => one.film === film && one.side === side)
    .flatMap(([track, one]) =>
      Object.entries(one.hands)
        .filter(([, hand]) => hand.frameIndex === frameIndex)
        .map(([hand, { feet }]) => ({ track, hand: hand as Id<'hand'>, one, feet })),
    );
  return (
    here.find(each => each.feet.xPx === feet.xPx && each.feet.yPx === feet.yPx) ??
    here.find(each => skater !== undefined && each.one.skater === skater) ??
    here.find(each => each.one.role === role)
  );
};
