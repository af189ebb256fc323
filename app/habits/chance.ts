import type { Freeze, Game, Habit, Moment } from '@icewright/book';
import { type FrozenScene, type Judgement, judgeStandard, type Rink, type Standard } from '@icewright/engine';
import { rinkOfSheet } from '../film/fit-of-freeze.ts';
import { findSceneOf } from './find-scene.ts';
import { isChance } from './is-chance.ts';
import { hasSay, MEASURED, type TwoAnswers, twoAnswersOf } from './two-answers.ts';
import { writtenStandardOf } from './written-standard.ts';

export const CHANCE_VERDICTS = ['done', 'missed', 'cannotTell', 'cannotSee'] as const;
export type ChanceVerdict = (typeof CHANCE_VERDICTS)[number];

export const VERDICT_SAID: Readonly<Record<ChanceVerdict, string>> = {
  done: 'done',
  missed: 'missed',
  cannotTell: 'cannot tell',
  cannotSee: 'cannot see',
};

/** One time the habit could have been done: a moment of a game, with what its freeze says when it has one. */
export interface Chance {
  readonly gameId: string;
  readonly game: Game;
  readonly momentId: string;
  readonly moment: Moment;
  readonly verdict: ChanceVerdict;
  readonly measured?: { readonly scene: FrozenScene; readonly judgement: Judgement };
  /** The verdict is the measure's. */
  readonly isByMeasure: boolean;
  /** Where the person who tagged it saw otherwise. */
  readonly two?: TwoAnswers;
}

/**
 * Every chance of a habit, the oldest first. Where a freeze was made and its pins hold, the standard judges it: the eye
 * cannot overrule the ±, unless somebody settles that what was said counts. Without a freeze, where one lacks something, and while the
 * habit has no standard of its own, the word of the person who tagged it stands. `rink` is the team's; a game that says its own
 * sheet is measured on that.
 */
export function chancesOf(
  habitId: string,
  habit: Pick<Habit, 'standard' | 'byEye'>,
  games: readonly (readonly [string, Game])[],
  rink: Rink,
): Chance[] {
  return games.flatMap(([gameId, game]) => chancesIn(gameId, game, habitId, writtenStandardOf(habit), rink));
}

interface Judged {
  readonly standard: Standard | undefined;
  readonly rink: Rink;
  readonly chances: readonly Chance[];
}

const judged = new WeakMap<Game, Map<string, Judged>>();

/** A game that did not change, by a standard that did not change, is not judged again. */
function chancesIn(
  gameId: string,
  game: Game,
  habitId: string,
  standard: Standard | undefined,
  rink: Rink,
): readonly Chance[] {
  const byHabit = judged.get(game) ?? new Map<string, Judged>();
  judged.set(game, byHabit);
  const known = byHabit.get(habitId);
  if (known !== undefined && known.standard === standard && known.rink === rink) return known.chances;
  const chances = (byHabitOf(game).get(habitId) ?? []).map(
    ([momentId, moment]): Chance => ({
      gameId,
      game,
      momentId,
      moment,
      ...answerOf(game, moment, standard, rink),
    }),
  );
  byHabit.set(habitId, { standard, rink, chances });
  return chances;
}

/** What counts of one moment, and what it is measured by; `rink` is the team's. */
export function answerOf(
  game: Game,
  moment: Moment,
  standard: Standard | undefined,
  rink: Rink,
): Pick<Chance, 'verdict' | 'measured' | 'isByMeasure' | 'two'> {
  const sheet = game.rink ? rinkOfSheet(game.rink) : rink;
  const measured = measuredBy(freezeOf(game, moment), standard, sheet);
  if (measured === undefined) return { verdict: moment.verdict, isByMeasure: false };
  const { judgement } = measured;
  const two = twoAnswersOf(moment, judgement);
  const isByMeasure = moment.verdict !== 'cannotSee' && hasSay(judgement) && two?.counts !== 'word';
  const verdict = isByMeasure ? MEASURED[judgement.answer] : moment.verdict;
  return { verdict, measured, isByMeasure, ...(two ? { two } : {}) };
}

type Moments = readonly (readonly [string, Moment])[];

const sorted = new WeakMap<Game, ReadonlyMap<string, Moments>>();

/** The moments of a game by habit, in the order of the film. A game that did not change is not sorted again. */
function byHabitOf(game: Game): ReadonlyMap<string, Moments> {
  const known = sorted.get(game);
  if (known !== undefined) return known;
  const byHabit = new Map<string, [string, Moment][]>();
  for (const [id, moment] of Object.entries(game.moments)) {
    if (!isChance(moment)) continue;
    const list = byHabit.get(moment.habit);
    if (list === undefined) byHabit.set(moment.habit, [[id, moment]]);
    else list.push([id, moment]);
  }
  for (const list of byHabit.values()) list.sort(([, a], [, b]) => a.filmTimeS - b.filmTimeS);
  sorted.set(game, byHabit);
  return byHabit;
}

const freezeOf = (game: Game, moment: Moment): Freeze | undefined =>
  moment.freeze === undefined ? undefined : game.freezes[moment.freeze];

function measuredBy(
  freeze: Freeze | undefined,
  standard: Standard | undefined,
  rink: Rink,
): Chance['measured'] {
  if (freeze === undefined || standard === undefined) return undefined;
  const scene = findSceneOf(freeze, rink);
  return scene === undefined ? undefined : { scene, judgement: judgeStandard(scene, standard) };
}

/** How many were marked otherwise than they are measured, and nobody has settled which counts. */
export const differCountOf = (chances: readonly Chance[]): number =>
  chances.filter(({ two }) => two !== undefined && two.settledBy === undefined).length;

export function countsOf(chances: readonly Chance[]): Readonly<Record<ChanceVerdict, number>> {
  const counts = { done: 0, missed: 0, cannotTell: 0, cannotSee: 0 };
  for (const { verdict } of chances) counts[verdict] += 1;
  return counts;
}
