import type { Row } from '../units/provenance.ts';

/** Numbers of drawn routes that no level table holds. */
export const ROUTE_ROWS = {
  bendM: {
    name: 'way over which a skater’s line bends to either side of a kink',
    value: 0.6,
    unit: 'm',
    range: [0.3, 1.2],
    source: 'Our choice: about half a stride',
    status: 'estimate',
  },
  turnsOnTheSpotBelowMps: {
    name: 'a skater turns round on the spot before pushing off when slower than',
    value: 1,
    unit: 'm/s',
    range: [0.5, 2],
    source: 'Our choice: a walk; faster she glides through the turn',
    status: 'estimate',
  },
} as const satisfies Record<string, Row>;
