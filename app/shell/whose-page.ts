import type { Team } from '@icewright/book';
import type { View } from './open-document.ts';
import type { TeamLine } from './server.ts';

export type ThingWord = 'game' | 'meeting' | 'habit' | 'drill' | 'practice';

/** What a page is about, when it is about one thing of a team. */
export interface Thing {
  readonly word: ThingWord;
  readonly id: string;
}

export type Whose =
  | { readonly kind: 'ours' }
  /** The other teams are still being opened. */
  | { readonly kind: 'looking'; readonly thing: Thing }
  | { readonly kind: 'theirs'; readonly thing: Thing; readonly team: TeamLine }
  /** Not ours, and a team that may have it cannot be read here. */
  | { readonly kind: 'untold'; readonly thing: Thing; readonly unread: readonly TeamLine[] }
  /** No team has it in its lists: the page itself says what is wrong with it. */
  | { readonly kind: 'nobodys' };

export function whoseOf(
  thing: Thing,
  others: readonly TeamLine[],
  views: ReadonlyMap<string, View<'team'>>,
): Whose {
  const teamAt = (team: TeamLine) => views.get(team.id)?.value;
  const theirs = others.find(team => {
    const value = teamAt(team);
    return value !== undefined && hasThing(value, thing);
  });
  if (theirs !== undefined) {
    return { kind: 'theirs', thing, team: { ...theirs, name: teamAt(theirs)?.name ?? theirs.name } };
  }
  if (others.some(({ id }) => views.get(id)?.state === 'loading')) return { kind: 'looking', thing };
  const unread = others.filter(team => teamAt(team) === undefined);
  return unread.length > 0 ? { kind: 'untold', thing, unread } : { kind: 'nobodys' };
}

/** What the address speaks of; null for the lists and the pages of the team itself. */
export function findThing(path: string): Thing | null {
  const [, place, first, second] = path.split('/');
  if (place === 'film' && first === 'meeting') return thingOf('meeting', second);
  const word = WORD_AT[place ?? ''];
  return word === undefined ? null : thingOf(word, first);
}

const WORD_AT: Readonly<Record<string, ThingWord>> = {
  film: 'game',
  habits: 'habit',
  drills: 'drill',
  practices: 'practice',
};

const thingOf = (word: ThingWord, id: string | undefined): Thing | null =>
  id === undefined || id === '' ? null : { word, id };

/** Those taken out of a list or no longer kept are the team's all the same. */
export const hasThing = (team: Team, { word, id }: Thing): boolean =>
  Object.hasOwn(word === 'habit' ? team.habits : team.contents, id);
