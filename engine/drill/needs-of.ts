import type { Rink } from '../rink/rink.ts';
import type { IcePoint } from '../units/points.ts';
import type { Act, DrillPlan, Spot } from './drill.ts';
import { STRIDE_OVER_LINE } from './version-rows.ts';

/** Who and how much ice one rep takes. */
export interface Needs {
  /** Skaters on the ice at once, of both sides, games included. */
  readonly skaterCount: number;
  readonly forwardCount: number;
  readonly defenderCount: number;
  readonly goalieCount: number;
  readonly coachCount: number;
  readonly netCount: number;
  readonly ice: IceShare;
}

/** `zone`: within one end zone; `middle`: between the blue lines; `half`: one side of the red line; else the `whole` sheet. */
export type IceShare = 'zone' | 'middle' | 'half' | 'whole';

/**
 * What a drill needs: who by the letters of the roles (D… are defenders, all other skaters may be forwards), and the part of the sheet that
 * the drawing reaches, from its spots, pucks, gear, routes and games. Metres, frame of the rink; any plan; an empty one needs nothing and the
 * smallest ice. What happens outside scripted routes is not foreseen. By definition of the drawing.
 */
export const needsOf = (plan: DrillPlan, rink: Rink): Needs => {
  const spots = Object.values(plan.spots);
  const skaters = spots.filter(spot => spot.kind === 'skater');
  const games = Object.values(plan.games ?? {});
  const inGames = games.reduce((sum, game) => sum + game.usCount + game.themCount, 0);
  const defenderCount = skaters.filter(isDefender).length;
  const shotEnds = new Set(
    spots.flatMap(spot => Object.values(spot.acts).flatMap(act => (act.kind === 'shoot' ? [act.atEnd] : []))),
  );
  const movedNets = Object.values(plan.gear).filter(gear => gear.kind === 'net' || gear.kind === 'smallNet');
  return {
    skaterCount: skaters.length + inGames,
    forwardCount: skaters.length - defenderCount,
    defenderCount,
    goalieCount: spots.filter(spot => spot.kind === 'goalie').length,
    coachCount: spots.filter(spot => spot.kind === 'coach').length,
    netCount: Math.max(shotEnds.size, movedNets.length),
    ice: iceShareOf(pointsOf(plan), rink),
  };
};

const isDefender = (spot: Spot): boolean => /^(D\d?|LD|RD)$/i.test(spot.role.trim());

const pointsOf = (plan: DrillPlan): readonly IcePoint[] => [
  ...Object.values(plan.spots).flatMap(spot =>
    spot.kind === 'goalie' ? [] : [spot.atM, ...Object.values(spot.acts).flatMap(throughOf)],
  ),
  ...Object.values(plan.pucks).map(puck => puck.atM),
  ...Object.values(plan.gear).map(gear => gear.atM),
  ...Object.values(plan.games ?? {}).flatMap(game => [game.fromM, game.toM]),
];

const throughOf = (act: Act): readonly IcePoint[] =>
  act.kind === 'skate' || act.kind === 'carry' ? act.throughM : [];

const iceShareOf = (points: readonly IcePoint[], rink: Rink): IceShare => {
  const xs = points.map(point => point.xM);
  if (xs.length === 0) return 'zone';
  const [low, high] = [Math.min(...xs), Math.max(...xs)];
  const blueM = rink.layout.blueLineOuterXM;
  if (low >= blueM - STRIDE_M || high <= STRIDE_M - blueM) return 'zone';
  if (low >= -blueM - STRIDE_M && high <= blueM + STRIDE_M) return 'middle';
  if (low >= -STRIDE_M || high <= STRIDE_M) return 'half';
  return 'whole';
};

/** A stride over a line does not make it another part of the ice. */
const STRIDE_M = STRIDE_OVER_LINE.value;
