import { type Drill, type Game, type Habit, inOrder, type Practice, type Team } from '@icewright/book';
import { type HabitChange, type HabitTally, habitChange, habitTally, type Rink } from '@icewright/engine';
import { type Chance, chancesOf, differCountOf } from '../habits/chance.ts';
import { type Practised, practisedOf } from './practised.ts';

/** One habit over the season: what the games showed, what was practised, and whether it moved. */
export interface LedgerLine {
  readonly habitId: string;
  readonly habit: Habit;
  readonly games: readonly { readonly gameId: string; readonly day: string; readonly tally: HabitTally }[];
  readonly practised: readonly Practised[];
  /** How many of its chances were marked otherwise than they are measured, and nobody settled which counts. */
  readonly differCount: number;
  readonly minutes: number;
  /** Games before the first practice of it, and from that day on. */
  readonly before: HabitTally;
  readonly after: HabitTally;
  /** None while it was never practised: then there is no before and after. */
  readonly change: HabitChange | null;
}

export interface SeasonSeen {
  readonly games: readonly (readonly [string, Game])[];
  readonly practices: readonly (readonly [string, Practice])[];
  readonly drills: ReadonlyMap<string, Drill>;
}

export function ledgerLinesOf(team: Team, season: SeasonSeen, rink: Rink, today: string): LedgerLine[] {
  const practisedBy = practisedOf(season.practices, season.drills, today);
  return inOrder(team.habits)
    .filter(([, habit]) => habit.kept)
    .map(([habitId, habit]) =>
      lineOf(habitId, habit, chancesOf(habitId, habit, season.games, rink), practisedBy.get(habitId) ?? []),
    );
}

function lineOf(
  habitId: string,
  habit: Habit,
  chances: readonly Chance[],
  practised: readonly Practised[],
): LedgerLine {
  const byGame = new Map<string, Chance[]>();
  for (const chance of chances) {
    const of = byGame.get(chance.gameId);
    if (of === undefined) byGame.set(chance.gameId, [chance]);
    else of.push(chance);
  }
  const games = [...byGame].map(([gameId, of]) => ({ gameId, day: of[0]!.game.day, tally: tallied(of) }));
  const firstDay = practised[0]?.day;
  const before = tallied(chances.filter(({ game }) => firstDay === undefined || game.day < firstDay));
  const after = tallied(chances.filter(({ game }) => firstDay !== undefined && game.day >= firstDay));
  const looks = games.filter(
    ({ day, tally }) => firstDay !== undefined && day >= firstDay && tally.chanceCount > 0,
  );
  return {
    habitId,
    habit,
    games,
    practised,
    differCount: differCountOf(chances),
    minutes: practised.reduce((sum, { minutes }) => sum + minutes, 0),
    before,
    after,
    // The ledger is open all season: each game after the first practice is one more look at the same question.
    change: firstDay === undefined ? null : habitChange(before, after, { looks: Math.max(1, looks.length) }),
  };
}

/** A game counts as judged with one chance of a kept habit that was seen done or missed. */
export const judgedGameCount = (lines: readonly LedgerLine[]): number =>
  new Set(lines.flatMap(judgedGamesOf)).size;

/** Games in which a chance of the habit was seen done or missed. */
export const judgedGamesOf = ({ games }: Pick<LedgerLine, 'games'>): readonly string[] =>
  games.filter(({ tally }) => tally.chanceCount > 0).map(({ gameId }) => gameId);

const tallied = (chances: readonly Chance[]): HabitTally =>
  habitTally(chances.flatMap(({ verdict }) => (verdict === 'cannotTell' ? [] : [{ verdict }])));
