/** The five places, in the order of the work. `key` follows a `g`. */
export const PLACES = [
  { path: '/film', name: 'Film', key: 'f' },
  { path: '/habits', name: 'Habits', key: 'h' },
  { path: '/drills', name: 'Drills', key: 'd' },
  { path: '/practices', name: 'Practices', key: 'p' },
  { path: '/ledger', name: 'Ledger', key: 'l' },
] as const;

export type Place = (typeof PLACES)[number];

export function findPlace(path: string): Place | undefined {
  return PLACES.find(place => path === place.path || path.startsWith(`${place.path}/`));
}
