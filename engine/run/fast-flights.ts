import { STEP_HZ } from '../drill/step-hz.ts';
import { PUCK_HURTS_MPS } from './finding-rows.ts';
import type { PuckTrack, RunEvent } from './run-result.ts';

type Release = Extract<RunEvent, { readonly kind: 'pass' | 'shot' }>;

/** A stretch of samples, both ends included, over which a free puck is faster than `PUCK_HURTS_MPS`. */
export interface FastFlight {
  readonly from: number;
  readonly to: number;
  readonly release: Release;
}

/** Every fast flight of one puck (its track, and its index in `pucks`) with the pass or shot that it began with, in order of time; empty when it has none. */
export const fastFlightsOf = (
  puck: PuckTrack,
  index: number,
  events: readonly RunEvent[],
): readonly FastFlight[] => {
  const flights: FastFlight[] = [];
  const releases = events.filter(
    event => (event.kind === 'pass' || event.kind === 'shot') && event.puck === index,
  ) as Release[];
  if (releases.length === 0) return flights;
  const leastM2 = (PUCK_HURTS_MPS.value / STEP_HZ) ** 2;
  let from = -1;
  const last = puck.xM.length - 1;
  for (let i = 0; i <= last; i++) {
    const isFast = i < last && puck.owner[i] === -1 && puck.owner[i + 1] === -1 && stepM2(puck, i) > leastM2;
    if (isFast) {
      if (from < 0) from = i;
      continue;
    }
    if (from >= 0) {
      const release = releases.findLast(({ timeS }) => timeS <= from / STEP_HZ + 1e-9);
      if (release) flights.push({ from, to: i, release });
    }
    from = -1;
  }
  return flights;
};

const stepM2 = (puck: PuckTrack, i: number): number =>
  (puck.xM[i + 1]! - puck.xM[i]!) ** 2 + (puck.yM[i + 1]! - puck.yM[i]!) ** 2;
