import type { Rink } from '../rink/rink.ts';
import type { End } from '../units/ends.ts';
import type { IcePoint } from '../units/points.ts';
import { AT_NET } from './people-rows.ts';

/**
 * Who of a team's people guards the net at an end: the rank of the one nearest to it, in front of the goal line or level with it, within
 * `AT_NET`. Metres on the sheet. −1 when nobody is that near or the sheet has no net there. Source: our choice.
 */
export const goalieAmong = (places: readonly IcePoint[], rink: Rink, end: End): number => {
  const sign = end === 'plusX' ? 1 : -1;
  const net = rink.nets.find(({ atM }) => atM.xM * sign > 0);
  if (!net) return -1;
  let [best, nearestM] = [-1, AT_NET.value];
  places.forEach(({ xM, yM }, rank) => {
    const awayM = Math.hypot(xM - net.atM.xM, yM - net.atM.yM);
    const isBehind = (xM - net.atM.xM) * sign > BEHIND_M;
    if (awayM < nearestM && !isBehind) [best, nearestM] = [rank, awayM];
  });
  return best;
};

/** Half a body: a goalie hugging the post stands on the goal line. */
const BEHIND_M = 0.3;
