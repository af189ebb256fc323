import type { DrillPlan } from '../drill/drill.ts';
import type { FlowSetting } from './flow-result.ts';

/**
 * How many stand in each line at the first whistle, by rank of the spots, first those at the end drawn and then those at the
 * other. Everybody who is there takes a place at the front of a line first, so that with too few the lowest in rank stays
 * empty; then the drawn waiting places are filled, one in each line by turns; who is beyond them joins the shortest line or gets
 * no place, as the setting says. `skaters` is a whole number ≥ 0. The sum is never more than that.
 */
export const lineCountsOf = (
  plan: DrillPlan,
  ends: 1 | 2,
  skaters: number,
  beyondLines: FlowSetting['beyondLines'],
): readonly number[] => {
  const drawn = Object.values(plan.spots)
    .filter(spot => spot.kind === 'skater')
    .sort((a, b) => a.rank - b.rank)
    .map(spot => 1 + spot.waitingCount);
  const most = ends === 2 ? [...drawn, ...drawn] : drawn;
  const counts = most.map(() => 0);
  let left = skaters;
  for (let depth = 1; left > 0 && counts.some((count, i) => count < most[i]!); depth++)
    for (let i = 0; i < counts.length && left > 0; i++)
      if (most[i]! >= depth) {
        counts[i]!++;
        left--;
      }
  while (left > 0 && beyondLines === 'join' && counts.length > 0) {
    counts[counts.indexOf(Math.min(...counts))]!++;
    left--;
  }
  return counts;
};
