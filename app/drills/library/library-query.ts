import type { Drill } from '@icewright/book';
import { type IceShare, type LevelId, type Needs, needsOf, rinkOf } from '@icewright/engine';
import { drawnWords } from './drawn-words.ts';

/** What a coach asks of the drills. `null`: any. */
export interface LibraryQuery {
  readonly words: string;
  readonly habit: string | null;
  readonly level: LevelId | null;
  /** Fits on this much ice. */
  readonly ice: IceShare | null;
  /** Can be run with so many skaters, goalies included in none of them. */
  readonly skaters: number | null;
  readonly minutes: number | null;
}

export const ANY: LibraryQuery = {
  words: '',
  habit: null,
  level: null,
  ice: null,
  skaters: null,
  minutes: null,
};

/** What each part of the sheet has room for. */
const FITS_ON: Readonly<Record<IceShare, readonly IceShare[]>> = {
  whole: ['whole', 'half', 'zone', 'middle'],
  half: ['half', 'zone'],
  zone: ['zone'],
  middle: ['middle'],
};

const known = new WeakMap<Drill, Needs>();

/** What a drill needs, read from its drawing once for each state of it. */
export function needsOfDrill(drill: Drill): Needs {
  const before = known.get(drill);
  if (before !== undefined) return before;
  const needs = needsOf(drill, rinkOf(drill.rink));
  known.set(drill, needs);
  return needs;
}

/** Whether a drill answers the query. Words are looked for in its title, says, key points, the titles of its habits, and in the trade's words for what is drawn. */
export function answers(drill: Drill, query: LibraryQuery, habitTitles: readonly string[]): boolean {
  const needs = needsOfDrill(drill);
  return (
    (query.habit === null || (drill.habits as readonly string[]).includes(query.habit)) &&
    (query.level === null || drill.level === query.level) &&
    (query.ice === null || FITS_ON[query.ice].includes(needs.ice)) &&
    (query.skaters === null || needs.skaterCount <= query.skaters) &&
    (query.minutes === null || drill.minutes <= query.minutes) &&
    holdsWords(
      [drill.title, drill.says, drill.keyPoints, ...habitTitles, drawnWords(drill)].join('; '),
      query.words,
    )
  );
}

/**
 * Every word typed begins a word of the text, and numbers by sides stand in it as they were typed: 3 on 2, 3v2, three on two
 * are one. Accents and capitals do not count.
 */
export function holdsWords(text: string, typed: string): boolean {
  const plainText = plain(text);
  const inText = wordsOf(plainText);
  const plainTyped = plain(typed);
  const numbers = plainTyped.match(NUMBERS) ?? [];
  return (
    numbers.every(each => new RegExp(`\\b${each}\\b`).test(plainText)) &&
    wordsOf(plainTyped.replace(NUMBERS, ' ')).every(word => inText.some(each => each.startsWith(word)))
  );
}

const NUMBERS = /\b\d+ on \d+\b/g;
const COUNTS = ['one', 'two', 'three', 'four', 'five', 'six'];

const plain = (text: string): string =>
  text
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLocaleLowerCase()
    .replace(new RegExp(`\\b(${COUNTS.join('|')})\\b`, 'g'), word => `${COUNTS.indexOf(word) + 1}`)
    .replace(/(\d+)\s*(?:-?\s*(?:on|against|vs?\.?)\s*-?|:)\s*(\d+)/g, '$1 on $2');

const wordsOf = (plainText: string): string[] =>
  plainText.split(/[^\p{L}\p{N}]+/u).filter(word => word !== '');

export interface Shelf {
  readonly id: string;
  readonly drill: Drill;
  /** Versions of it that answer the query too. */
  readonly versions: readonly { readonly id: string; readonly drill: Drill }[];
}

/**
 * Drills that answer the query by title, each version under the drill it is one of; a version whose drill is not shown stands for
 * itself.
 */
export function shelvesOf(
  drills: readonly (readonly [string, Drill])[],
  query: LibraryQuery,
  titleOfHabit: (habit: string) => string,
): readonly Shelf[] {
  const shown = drills.filter(([, drill]) =>
    answers(drill, query, (drill.habits as readonly string[]).map(titleOfHabit)),
  );
  const ids = new Set(shown.map(([id]) => id));
  const baseOf = (id: string, drill: Drill): string | undefined => {
    const base = drill.variantOf?.drill;
    return base !== undefined && base !== id && ids.has(base) && !isVersion(base) ? base : undefined;
  };
  const isVersion = (id: string): boolean => {
    const base = shown.find(([each]) => each === id)?.[1].variantOf?.drill;
    return base !== undefined && base !== id && ids.has(base);
  };
  return shown
    .filter(([id, drill]) => baseOf(id, drill) === undefined)
    .sort(([, a], [, b]) => a.title.localeCompare(b.title))
    .map(([id, drill]) => ({
      id,
      drill,
      versions: shown
        .filter(([each, version]) => each !== id && baseOf(each, version) === id)
        .sort(([, a], [, b]) => a.title.localeCompare(b.title))
        .map(([each, version]) => ({ id: each, drill: version })),
    }));
}
