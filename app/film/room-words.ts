import type { Game, Team } from '@icewright/book';
import type { Id } from '@icewright/engine';
import { isChance } from '../habits/is-chance.ts';
import type { ListedMoment } from './moments/filter-moments.ts';

/** Under the picture: how often the habit that is looked at was done, missed and not seen in this film. */
export const countsWords = (
  team: Team,
  moments: readonly ListedMoment[],
  habit: string | undefined,
): string => {
  const of = moments.filter(([, one]) => isChance(one) && (habit === undefined || one.habit === habit));
  const count = (verdict: string) => of.filter(([, one]) => one.verdict === verdict).length;
  const title = habit === undefined ? '' : `${team.habits[habit as Id<'habit'>]?.title ?? ''}: `;
  return `${title}${count('done')} done, ${count('missed')} missed, ${count('cannotSee')} cannot see`;
};

export const gameTitleWords = (game: Game): string => (game.opponent === '' ? 'a game' : game.opponent);
