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

const OUR_ROLES = ['F1', 'F2', 'F3', 'D1', 'D2'];
const THEIR_ROLES = ['X1', 'X2', 'X3', 'X4', 'X5'];
