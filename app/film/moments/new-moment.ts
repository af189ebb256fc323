import { type Game, type Moment, newId } from '@icewright/book';
import type { Id } from '@icewright/engine';
import { edit, endStep } from '../../shell/book.ts';
import { kept } from './who-marks.ts';

/** What is said of a moment when it is marked; the rest can follow in the list. */
export type MarkedMoment = Pick<Moment, 'habit' | 'verdict' | 'costGoals'> &
  Partial<Pick<Moment, 'skater' | 'fromS' | 'toS' | 'freeze' | 'strength' | 'unit'>>;

/** Where in the film it is. */
export type MomentPlace = Pick<Moment, 'film' | 'frameIndex' | 'filmTimeS'>;

/** Writes a moment as one step of undo. Unless it is said, period, strength, score and unit are those of the moment before. */
export function addMoment(
  gameId: string,
  place: MomentPlace,
  marked: MarkedMoment,
  game: Game,
  stands: Partial<Situation> = situationBefore(game, place),
): Id<'moment'> {
  const id = newId<'moment'>();
  const change = edit(gameId);
  const { freeze } = marked;
  endStep(gameId);
  change.transact(() => {
    change.set(['moments', id], {
      ...stands,
      ...marked,
      ...place,
      note: '',
      by: kept(),
      taggedAt: new Date().toISOString(),
    });
    if (freeze && !game.freezes[freeze]?.habit) change.set(['freezes', freeze, 'habit'], marked.habit);
  });
  endStep(gameId);
  return id;
}

export type Situation = Pick<Moment, 'period' | 'strength' | 'score' | 'unit'>;

/** How things stood at the last moment before this place of the film. */
export function situationBefore(
  game: Game,
  { film, frameIndex }: Pick<MomentPlace, 'film' | 'frameIndex'>,
): Partial<Situation> {
  let last: Moment | undefined;
  for (const one of Object.values(game.moments)) {
    if (one.film !== film || one.frameIndex > frameIndex) continue;
    if (last === undefined || one.frameIndex >= last.frameIndex) last = one;
  }
  if (last === undefined) return {};
  const { period, strength, score, unit } = last;
  return {
    ...(period === undefined ? {} : { period }),
    ...(strength === undefined ? {} : { strength }),
    ...(score === undefined ? {} : { score }),
    ...(unit === undefined ? {} : { unit }),
  };
}
