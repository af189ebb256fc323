import type { Act } from '@icewright/engine';
import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { drawnRouteOf } from './drawn-routes.ts';
import { routeOf } from './route.ts';

const metres = fc.integer({ min: -20, max: 20 });
const throughM = [
  { xM: 3, yM: 1 },
  { xM: 8, yM: -2 },
];

it('a route that is kept is the one that would be drawn, whatever was asked before', () => {
  fc.assert(
    fc.property(
      metres,
      metres,
      fc.boolean(),
      fc.constantFrom(0.5, 1),
      fc.constantFrom(0, 4),
      fc.constantFrom(undefined, 'u18', 'pro'),
      (xM, yM, stops, effortRatio, speedMps, level) => {
        const act = {
          rank: 0,
          kind: 'skate',
          throughM,
          facing: 'forward',
          effortRatio,
          stops,
        } as const satisfies Act;
        const asked = [{ xM, yM }, act, { speedMps }, level] as const;
        expect(drawnRouteOf(...asked)).toEqual(routeOf(...asked));
        expect(drawnRouteOf(...asked)).toBe(drawnRouteOf(...asked));
      },
    ),
    { numRuns: 200, seed: 41 },
  );
});
