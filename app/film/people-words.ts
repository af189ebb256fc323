import type { Freeze, Placed, Team } from '@icewright/book';

/** F1 17, or X2: what stands beside a skater in the picture, on the map and in the readings. */
export const personWords = (placed: Pick<Placed, 'role' | 'skater'>, team: Pick<Team, 'skaters'>): string => {
  const skater = placed.skater && team.skaters[placed.skater];
  return skater ? `${placed.role} ${skater.number}` : placed.role;
};

/** 17 Thornquist; a skater who has left the roster is said to be gone. */
export const skaterWords = (id: keyof Team['skaters'] | undefined, team: Team): string => {
  if (id === undefined) return '';
  const skater = team.skaters[id];
  return skater ? `${skater.number} ${skater.name}` : 'no longer here';
};

/** The next free role on a side: our F1, D1 …, their X1, X2 … */
export const nextRole = (
  freeze: Pick<Freeze, 'skaters'>,
  side: Placed['side'],
  kind: Placed['kind'],
): string => {
  if (kind === 'goalie') return 'G';
  const taken = new Set(
    Object.values(freeze.skaters)
      .filter(one => one.side === side)
      .map(one => one.role),
  );
  const wanted = side === 'us' ? OUR_ROLES : THEIR_ROLES;
  return wanted.find(role => !taken.has(role)) ?? `${side === 'us' ? 'F' : 'X'}${taken.size + 1}`;
};

/**
 * Somebody found in the picture: of theirs the next X; of ours that he is ours, for nothing yet tells a forward from a defender, and standards
 * that speak of either must not guess.
 */
export const foundRole = (
  freeze: Pick<Freeze, 'skaters'>,
  side: Placed['side'],
  kind: Placed['kind'],
): string => {
  if (kind === 'goalie' || side === 'them') return nextRole(freeze, side, kind);
  const taken = new Set(Object.values(freeze.skaters).map(one => one.role));
  let count = 1;
  while (taken.has(`U${count}`)) count++;
  return `U${count}`;
};

/** The role of one of ours of whom only that was known, once it is said who he is; undefined where his role was said. */
export const roleOnceKnown = (
  freeze: Pick<Freeze, 'skaters'>,
  placed: Pick<Placed, 'side' | 'kind' | 'role'>,
  position: 'F' | 'D' | 'G' | undefined,
): string | undefined => {
  if (placed.side !== 'us' || !/^U\d+$/.test(placed.role) || (position !== 'F' && position !== 'D'))
    return undefined;
  const taken = new Set(Object.values(freeze.skaters).flatMap(one => (one.side === 'us' ? [one.role] : [])));
  return OUR_ROLES.find(role => role.startsWith(position) && !taken.has(role)) ?? position;
};

/** Names of several, each its own: who was first seen when, where two would be called the same. */
export const namesApart = <One>(
  all: readonly One[],
  nameOf: (one: One) => string,
  sinceOf: (one: One) => string,
): string[] =>
  all.map(one => {
    const name = nameOf(one);
    const isOne = all.filter(other => nameOf(other) === name).length === 1;
    return isOne ? name : `${name} from ${sinceOf(one)}`;
  });

const OUR_ROLES = ['F1', 'F2', 'F3', 'D1', 'D2'];
const THEIR_ROLES = ['X1', 'X2', 'X3', 'X4', 'X5'];
