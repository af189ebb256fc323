import { type EventReading, type EventTable, type Game, type Team, wordsIn } from '@icewright/book';

type Whose = Pick<EventReading, 'team' | 'ours' | 'others'>;

/** Which column of a table says whose a line is, and which of its words are us: as it was said the last time, or a guess to be looked at. */
export function whoseLines(
  table: EventTable,
  kept: Whose | undefined,
  game: Pick<Game, 'place' | 'opponent'>,
  us: Pick<Team, 'name'>,
): Whose {
  // What was kept before this was asked says nothing of it.
  const isSaid = kept?.others !== undefined;
  const head = table.heads.findIndex(one => /team|club/i.test(one));
  const team = isSaid ? kept.team : head < 0 ? undefined : head;
  const others = kept?.others ?? 'come';
  return team === undefined ? { others } : { team, others, ours: oursAmong(table, team, kept, game, us) };
}

/** The words of a column that are us. */
export function oursAmong(
  table: EventTable,
  column: number,
  kept: Whose | undefined,
  game: Pick<Game, 'place' | 'opponent'>,
  us: Pick<Team, 'name'>,
): readonly string[] {
  const words = wordsIn(table, column).map(([word]) => word);
  // Which end of a game is ours changes from one to the next.
  const byPlace = words.filter(word => word.toLowerCase() === game.place);
  if (byPlace.length > 0) return byPlace;
  const again = words.filter(word => kept?.ours?.includes(word) && !/^(home|away)$/i.test(word));
  if (again.length > 0) return again;
  return words.filter(
    word => /^(us|we|ours)$/i.test(word) || (isNamed(word, us.name) && !isNamed(word, game.opponent)),
  );
}

/** Whether a word is a name, or how one of its words begins. */
const isNamed = (word: string, name: string): boolean => {
  const short = word.toLowerCase();
  const said = name.toLowerCase();
  return short === said || (short.length > 1 && said.split(/\s+/).some(one => one.startsWith(short)));
};
