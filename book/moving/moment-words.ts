import type { Follow, Moment } from '../documents/game.ts';
import { inOrder } from '../documents/order.ts';
import type { Team } from '../documents/team.ts';

/** The team's words, as far as a moment is written with them. */
export type MomentTeam = Pick<Team, 'habits' | 'skaters' | 'units'>;

/** What was seen, and what came of it, as files say it; the screen says the same. */
export const SEEN: Readonly<Record<Moment['verdict'], string>> = {
  done: 'done',
  missed: 'missed',
  cannotSee: 'cannot see',
};

/** What the others did, in a table of events from elsewhere; nothing is written of what is ours. */
export const THEIRS = 'theirs';

export const STEP_SAID: Readonly<Record<Follow['step'], string>> = {
  lost: 'lost',
  hunted: 'hunted',
  regained: 'won back',
  transition: 'transition',
  chanceForUs: 'chance for us',
  chanceForThem: 'chance for them',
  whistle: 'whistle',
};

export const skaterNamed = (team: MomentTeam, one: Moment): string => {
  const skater = one.skater && team.skaters[one.skater];
  return skater ? `${skater.number} ${skater.name}`.trim() : '';
};

export const unitNamed = (team: MomentTeam, one: Moment): string =>
  (one.unit && team.units[one.unit]?.title.trim()) ?? '';

/** The habit of these words, spaces aside; the first in the team's order when several are called so. */
export const habitCalled = (team: MomentTeam, words: string): Moment['habit'] | undefined =>
  inOrder(team.habits).find(([, { title }]) => closed(title) === closed(words))?.[0];

export const verdictCalled = (words: string): Moment['verdict'] | undefined => keyOf(SEEN, words);

/** A step by its words, or by the name it has in older files. */
export const stepCalled = (words: string): Follow['step'] | undefined =>
  keyOf(STEP_SAID, words) ?? (words in STEP_SAID ? (words as Follow['step']) : undefined);

/** By number and name together, or by a number alone: another's number with a strange name is nobody of ours. */
export const skaterCalled = (team: MomentTeam, words: string): Moment['skater'] => {
  const called = closed(words);
  return inOrder(team.skaters).find(
    ([, { number, name }]) => closed(`${number} ${name}`) === called || String(number) === called,
  )?.[0];
};

export const unitCalled = (team: MomentTeam, words: string): Moment['unit'] =>
  inOrder(team.units).find(([, { title }]) => closed(title) === closed(words))?.[0];

/** A figure to so many decimals, without the zeros that say nothing. */
export const figure = (value: number, decimals: number): string =>
  String(Number(value.toFixed(decimals)) + 0);

const keyOf = <Key extends string>(said: Readonly<Record<Key, string>>, words: string): Key | undefined =>
  (Object.entries(said) as [Key, string][]).find(([, one]) => one === closed(words))?.[0];

const closed = (words: string): string => words.replace(/\s+/g, ' ').trim();
