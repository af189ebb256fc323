import type { Row } from '../units/provenance.ts';

/** Numbers of the race to a puck that no level table holds. */
export const RACE_ROWS = {
  horizonS: {
    name: 'time given to get a puck under control after it arrives',
    value: 10,
    unit: 's',
    range: [5, 20],
    source: 'Spearman 2018, MIT Sloan Sports Analytics Conference: integration up to 10 s',
    status: 'sourced',
  },
  goalieRateFactor: {
    name: 'how much quicker a goalie controls the puck',
    value: 3,
    unit: '',
    range: [1, 4],
    source: 'Spearman 2018 as published in code: goalkeeper three times (soccer)',
    status: 'sourced',
  },
  racePassMps: {
    name: 'speed at which the puck is sent to a place in the control picture',
    value: 13,
    unit: 'm/s',
    range: [7, 20],
    source: 'Ritchie, Harell & Shreeves 2022, women’s pass model; other levels use their typical pass',
    status: 'sourced',
  },
} as const satisfies Record<string, Row>;
