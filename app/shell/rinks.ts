import type { Team } from '@icewright/book';

/** Words for the choices of a team's settings. */
export const RINKS = [
  { value: '200x85ft', said: '200 × 85 ft' },
  { value: '60x30m', said: '60 × 30 m' },
  { value: '60x26m', said: '60 × 26 m' },
  { value: 'college200x100ft', said: 'college, 200 × 100 ft' },
  { value: 'halfIce', said: 'half ice' },
  { value: 'crossIce', said: 'cross-ice' },
  { value: 'own', said: 'own size' },
] as const;

export const LEVELS: readonly { readonly value: Team['level']; readonly said: string }[] = [
  { value: 'u10', said: 'under 10' },
  { value: 'u14', said: 'under 14' },
  { value: 'u18', said: 'under 18' },
  { value: 'collegeWomen', said: 'college, women' },
  { value: 'collegeMen', said: 'college, men' },
  { value: 'pro', said: 'professional' },
];
