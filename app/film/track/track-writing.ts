import { type Freeze, type Game, newId, type Placed, type Track } from '@icewright/book';
import type { FilmPoint, Id, Look } from '@icewright/engine';
import { edit, endStep, keepWorkedOut } from '../../shell/book.ts';
import { marksGoingAlong } from '../marks/marks-going-along.ts';
import { placedOfTrack } from './track-of-placed.ts';

type Hand = Track['hands'][Id<'hand'>];

/** Skaters placed in a freeze begin to be followed: their feet there are the first hands, and marks that hang on them go along. */
export const beginTracks = (
  gameId: string,
  game: Pick<Game, 'freezes' | 'marks'>,
  freezeId: Id<'freeze'>,
  placedIds: readonly string[],
  endS: number,
): Id<'track'>[] => {
  const freeze = game.freezes[freezeId];
  if (!freeze) return [];
  const begun = new Map(placedIds.map(placed => [placed, newId<'track'>()]));
  endStep(gameId);
  const change = edit(gameId);
  change.transact(() => {
    for (const [placed, track] of begun)
      change.set(['tracks', track], trackFrom(freeze, freeze.skaters[placed as Id<'placed'>]!));
    for (const [id, mark] of marksGoingAlong(game.marks, freezeId, freeze, begun, endS))
      change.set(['marks', id], mark);
  });
  return [...begun.values()];
};

const trackFrom = (freeze: Freeze, { side, kind, role, skater, feet }: Placed): Track => {
  const hand: Hand = { frameIndex: freeze.frameIndex, filmTimeS: freeze.filmTimeS, feet };
  return {
    film: freeze.film,
    side,
    kind,
    role,
    ...(skater ? { skater } : {}),
    attacks: freeze.attacks,
    hands: { [newId<'hand'>()]: hand },
    madeAt: new Date().toISOString(),
  };
};

/**
 * Feet set by hand in one frame: the hand that is there moves, or a new one comes, and who is placed for him in a freeze of that picture moves with it.
 * By keys many small moves are one step of undo.
 */
export const setHand = (
  gameId: string,
  game: Pick<Game, 'freezes' | 'tracks'>,
  trackId: Id<'track'>,
  at: { readonly frameIndex: number; readonly filmTimeS: number; readonly feet: FilmPoint },
  by: 'hand' | 'keys',
): void => {
  const track = game.tracks[trackId];
  if (!track) return;
  const there = handAt(track, at.frameIndex);
  if (by === 'hand' || !there) endStep(gameId);
  const path = ['tracks', trackId, 'hands', there ?? newId<'hand'>()];
  const change = edit(gameId);
  change.transact(() => {
    if (there) change.set([...path, 'feet'], at.feet);
    else change.set(path, { ...at } satisfies Hand);
    for (const { freeze, placed } of placedOfTrack(game, trackId, at.frameIndex)) {
      change.set(['freezes', freeze, 'skaters', placed, 'feet'], at.feet);
      change.remove(['freezes', freeze, 'skaters', placed, 'feetSdPx']);
    }
  });
};

export const handAt = (track: Track, frameIndex: number): Id<'hand'> | undefined =>
  (Object.entries(track.hands) as [Id<'hand'>, Hand][]).find(([, one]) => one.frameIndex === frameIndex)?.[0];

export const removeHand = (gameId: string, trackId: string, handId: string): void => {
  endStep(gameId);
  edit(gameId).remove(['tracks', trackId, 'hands', handId]);
};

export const removeTrack = (gameId: string, trackId: string): void => {
  endStep(gameId);
  edit(gameId).remove(['tracks', trackId]);
};

/** Keeps what was found between the hands; it goes with them, and is no step of undo. */
export const writeFollowed = (gameId: string, trackId: string, looks: readonly Look[]): void => {
  const column = (of: (look: Look) => number, digits: number) =>
    looks.map(look => Number(of(look).toFixed(digits)));
  keepWorkedOut(gameId, ['tracks', trackId, 'followed'], {
    frameIndex: looks.map(({ frameIndex }) => frameIndex),
    filmTimeS: column(({ timeS }) => timeS, 5),
    xM: column(({ xM }) => xM, 3),
    yM: column(({ yM }) => yM, 3),
    sdM: column(({ sdM }) => sdM, 3),
    vxMps: column(({ vxMps }) => vxMps, 3),
    vyMps: column(({ vyMps }) => vyMps, 3),
    sdMps: column(({ sdMps }) => sdMps, 3),
  } satisfies Track['followed']);
};

/** The looks that a track keeps. */
export const looksOf = ({ followed }: Track): Look[] =>
  followed
    ? followed.frameIndex.map((frameIndex, i) => ({
        frameIndex,
        timeS: followed.filmTimeS[i]!,
        xM: followed.xM[i]!,
        yM: followed.yM[i]!,
        sdM: followed.sdM[i]!,
        vxMps: followed.vxMps[i]!,
        vyMps: followed.vyMps[i]!,
        sdMps: followed.sdMps[i]!,
      }))
    : [];
