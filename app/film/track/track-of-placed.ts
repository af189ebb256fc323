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

/** A skater placed in a freeze. */
export interface PlacedIn {
  readonly freeze: Id<'freeze'>;
  readonly placed: Id<'placed'>;
}

/**
 * Who stands in the freezes of one picture for a followed skater: placed where he is followed from, or, as long as nobody is followed from there, the
 * same person of the team. A role alone does not tell: each freeze counts its own.
 */
export const placedOfTrack = (
  { freezes, tracks }: Pick<Game, 'freezes' | 'tracks'>,
  trackId: string,
  frameIndex: number,
): PlacedIn[] => {
  const track = tracks[trackId as Id<'track'>];
  if (!track) return [];
  return (Object.entries(freezes) as [Id<'freeze'>, Freeze][])
    .filter(([, one]) => one.film === track.film && one.frameIndex === frameIndex)
    .flatMap(([freeze, one]) =>
      (Object.entries(one.skaters) as [Id<'placed'>, Placed][])
        .filter(([, placed]) => {
          const from = trackOfPlaced(tracks, one, placed);
          if (from) return from.track === trackId;
          return placed.skater !== undefined && placed.skater === track.skater && placed.side === track.side;
        })
        .map(([placed]) => ({ freeze, placed })),
    );
};
