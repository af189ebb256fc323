import { DRESS_APART, DRESS_CLEAR, DRESS_KNOWN, MOST_DRESSES } from './people-rows.ts';

/** What somebody wears: the shares of red, green and blue in it, and how light it is; 0 to 1. */
export type Dress = readonly [red: number, green: number, blue: number, light: number];

/**
 * Parts people by what they wear: for each his group, or null where nothing is seen of his dress, where nobody else wears the like,
 * or where it lies between two. A group's number is that of the dress it is like in `known` (what was seen earlier of this film, by number); of
 * the others the darkest has the lowest that is free. Source: Ward 1963, Journal of the American Statistical Association 58, 236, joined until
 * the dresses part; when one is clear is our own rule, measured by `film-truth --people`.
 */
export const dressGroupsOf = (
  dresses: readonly (Dress | null)[],
  known: readonly (Dress | undefined)[] = [],
): (number | null)[] => {
  const parts = partsOf(dresses);
  const isClear = (own: Part, dress: Dress): boolean =>
    parts.every(
      one => one === own || apart(own.middle, dress) < DRESS_CLEAR.value * apart(one.middle, dress),
    );
  const clear = parts.map(part => part.members.filter(i => isClear(part, dresses[i]!)));
  const worn = parts.flatMap((part, i) => (clear[i]!.length > 1 ? [{ ...part, members: clear[i]! }] : []));
  const numbers = numbersOf(worn, known);
  const groups: (number | null)[] = dresses.map(() => null);
  worn.forEach(({ members }, i) => {
    for (const member of members) groups[member] = numbers[i]!;
  });
  return groups;
};

/** What a group wears in the middle; undefined for a number that nobody has. */
export const dressMiddles = (
  people: readonly { readonly group: number | null; readonly dress: Dress | null }[],
): (Dress | undefined)[] =>
  Array.from({ length: MOST_DRESSES.value }, (_, group) => {
    const worn = people.flatMap(one => (one.group === group && one.dress ? [one.dress] : []));
    return worn.length === 0 ? undefined : worn.reduce((sum, dress, i) => joined(sum, i, dress, 1), worn[0]!);
  });

interface Part {
  readonly middle: Dress;
  readonly members: readonly number[];
}

/** The two whose joining spreads a group least are joined, until few enough are left and all lie apart. */
const partsOf = (dresses: readonly (Dress | null)[]): Part[] => {
  let parts = dresses.flatMap((middle, i): Part[] => (middle ? [{ middle, members: [i] }] : []));
  while (parts.length > 1) {
    const [one, other] = nearestTwo(parts);
    if (parts.length <= MOST_DRESSES.value && apart(one.middle, other.middle) > DRESS_APART.value) break;
    const middle = joined(one.middle, one.members.length, other.middle, other.members.length);
    const both = { middle, members: [...one.members, ...other.members] };
    parts = [...parts.filter(part => part !== one && part !== other), both];
  }
  return parts;
};

const nearestTwo = (parts: readonly Part[]): readonly [Part, Part] => {
  let best: readonly [Part, Part] = [parts[0]!, parts[1]!];
  let least = Number.POSITIVE_INFINITY;
  parts.forEach((one, i) => {
    for (const other of parts.slice(i + 1)) {
      const [n, m] = [one.members.length, other.members.length];
      const spread = ((n * m) / (n + m)) * apart(one.middle, other.middle) ** 2;
      if (spread < least) [least, best] = [spread, [one, other]];
    }
  });
  return best;
};

/** The nearest to a known dress first; nobody is taken for a dress far from his. */
const numbersOf = (parts: readonly Part[], known: readonly (Dress | undefined)[]): number[] => {
  const numbers = new Map<Part, number>();
  const pairs = parts
    .flatMap(part =>
      known.map((dress, number) => ({ part, number, far: dress && apart(part.middle, dress) })),
    )
    .filter((pair): pair is typeof pair & { far: number } => (pair.far ?? 1) < DRESS_KNOWN.value)
    .sort((a, b) => a.far - b.far);
  const used = new Set<number>();
  for (const { part, number } of pairs) {
    if (numbers.has(part) || used.has(number)) continue;
    numbers.set(part, number);
    used.add(number);
  }
  const isNew = (number: number) => !used.has(number) && known[number] === undefined;
  const all = Array.from({ length: MOST_DRESSES.value }, (_, number) => number);
  const free = [...all.filter(isNew), ...all.filter(number => !used.has(number) && !isNew(number))];
  const others = parts.filter(part => !numbers.has(part)).sort((a, b) => a.middle[3] - b.middle[3]);
  for (const [i, part] of others.entries()) numbers.set(part, free[i]!);
  return parts.map(part => numbers.get(part)!);
};

const joined = (a: Dress, countA: number, b: Dress, countB: number): Dress =>
  a.map((value, k) => (value * countA + b[k]! * countB) / (countA + countB)) as unknown as Dress;

const apart = (a: Dress, b: Dress): number => Math.hypot(...a.map((value, i) => value - b[i]!));
