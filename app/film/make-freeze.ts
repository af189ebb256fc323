import { type Freeze, type Game, type Moment, newId } from '@icewright/book';
import { CLICK_SD, type Id } from '@icewright/engine';
import { edit, endStep } from '../shell/book.ts';
import type { Player } from './player.ts';

/** The freeze of the frame that is shown: the one there is, or a new one, tied to the moment it belongs to. */
export const freezeHere = (
  gameId: string,
  game: Game,
  film: Id<'film'>,
  player: Player,
  momentId: string | undefined,
  carried: Freeze['carried'],
): Id<'freeze'> => {
  const { frameIndex } = player.now();
  const there = findFreeze(game, film, frameIndex);
  if (there) {
    // Pressed again on a frame without pins of its own, it takes the tie as it is carried now.
    if (carried && Object.keys(game.freezes[there]?.pins ?? {}).length < 4) {
      endStep(gameId);
      edit(gameId).set(['freezes', there, 'carried'], carried);
    }
    return there;
  }
  const id = newId<'freeze'>();
  const [belongsId, belongs] = momentHere(game, film, player.timeS, momentId) ?? [];
  const change = edit(gameId);
  endStep(gameId);
  change.transact(() => {
    change.set(['freezes', id], {
      film,
      frameIndex,
      filmTimeS: player.timeS,
      picture: { widthPx: player.film.widthPx, heightPx: player.film.heightPx },
      title: '',
      ...(belongs ? { habit: belongs.habit } : {}),
      attacks: latestOf(game, film)?.attacks ?? 'plusX',
      pins: {},
      ...(carried ? { carried } : {}),
      clickSdPx: CLICK_SD.value,
      skaters: {},
      madeAt: new Date().toISOString(),
    } satisfies Freeze);
    if (belongs && !belongs.freeze) change.set(['moments', belongsId!, 'freeze'], id);
  });
  return id;
};

/** The moment this picture is of: the chosen one, else the nearest in time. */
const momentHere = (
  game: Game,
  film: Id<'film'>,
  timeS: number,
  chosen: string | undefined,
): [string, Moment] | undefined => {
  const apartS = ([, one]: [string, Moment]) => Math.abs(one.filmTimeS - timeS);
  const here = Object.entries(game.moments).filter(
    each => each[1].film === film && apartS(each) <= SAME_MOMENT_S,
  );
  return here.find(([id]) => id === chosen) ?? here.sort((a, b) => apartS(a) - apartS(b))[0];
};

export const findFreeze = (game: Game, film: string, frameIndex: number): Id<'freeze'> | undefined =>
  (Object.entries(game.freezes) as [Id<'freeze'>, Freeze][]).find(
    ([, one]) => one.film === film && one.frameIndex === frameIndex,
  )?.[0];

/** The freeze made last in this film that is pinned: its pins can be begun with when the camera does not move. */
export const latestPinned = (game: Game, film: string, but: string): Freeze | undefined =>
  Object.entries(game.freezes)
    .filter(([id, one]) => id !== but && one.film === film && Object.keys(one.pins).length >= 4)
    .map(([, one]) => one)
    .sort((a, b) => b.madeAt.localeCompare(a.madeAt))[0];

const latestOf = (game: Game, film: string): Freeze | undefined =>
  Object.values(game.freezes)
    .filter(one => one.film === film)
    .sort((a, b) => b.madeAt.localeCompare(a.madeAt))[0];

/** A moment and a picture this close in time are one happening. */
const SAME_MOMENT_S = 2;
