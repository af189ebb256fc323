import type { Team } from '@icewright/book';

/**
 * Words for one player in which nobody else of the roster is named: a name becomes the number on the back. A name that he
 * shares with another stays, since it is his own. People who are not in the roster are not known here.
 */
export function withoutOthers(words: string, team: Pick<Team, 'skaters'>, ownId: string): string {
  const own = new Set(partsOf(team.skaters[ownId as keyof Team['skaters']]?.name ?? '').map(folded));
  const numbersOf = new Map<string, { readonly name: string; readonly numbers: Set<number> }>();
  for (const [id, { name, number }] of Object.entries(team.skaters)) {
    if (id === ownId) continue;
    for (const one of [name.trim(), ...partsOf(name)]) {
      if (one === '' || own.has(folded(one))) continue;
      const known = numbersOf.get(folded(one)) ?? { name: one, numbers: new Set<number>() };
      known.numbers.add(number);
      numbersOf.set(folded(one), known);
    }
  }
  // Whole names first, or their parts would be taken out of them one by one.
  const all = [...numbersOf.values()].sort((a, b) => b.name.length - a.name.length);
  return all.reduce(
    (said, { name, numbers }) => said.replace(patternOf(name, numbers), numberSaid(numbers)),
    words.normalize('NFC'),
  );
}

const partsOf = (name: string): string[] =>
  name
    .normalize('NFC')
    .split(/[\s-]+/)
    .filter(part => part.length >= SHORTEST_NAME);

const folded = (name: string): string => name.normalize('NFC').toLocaleLowerCase('en');

/** The name as a word of its own, with its number before it if that stands there. Short names only as they are written: Li is not li. */
function patternOf(name: string, numbers: ReadonlySet<number>): RegExp {
  const number = `(?:(?:#|[Nn]o\\.?\\s?|[Nn]umber\\s)?(?:${[...numbers].join('|')})[\\s\\u00a0]+)?`;
  const literal = name
    .normalize('NFC')
    .replace(/[.*+?^${}()|[\]\\]/g, '\\$&')
    .replace(/\s+/g, '\\s+');
  return new RegExp(
    `(?<![\\p{L}\\p{M}\\p{N}])${number}${literal}(?![\\p{L}\\p{M}])`,
    name.length < SURE_NAME ? 'gu' : 'giu',
  );
}

const numberSaid = (numbers: ReadonlySet<number>): string =>
  `number ${[...numbers].sort((a, b) => a - b).join(' or ')}`;

const SHORTEST_NAME = 2;
const SURE_NAME = 4;
