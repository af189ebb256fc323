import type { Act, ActId, DrillPlan, Gear, PuckPlace, Spot, SpotId } from '@icewright/engine';

/** A spot as a scene writes it: acts in their order, and everything that is usual left out. */
export type SceneSpot = Pick<Spot, 'role' | 'atM'> &
  Partial<Omit<Spot, 'acts' | 'rank'>> & { readonly acts?: readonly SceneAct[] };

type WithoutRank<T> = T extends unknown ? Omit<T, 'rank'> : never;
export type SceneAct = WithoutRank<Act>;

export const spotId = (role: string): SpotId => role as SpotId;

/** A plan from spots in their order; a spot's id is its role. */
export const planOf = (
  spots: readonly SceneSpot[],
  pucks: readonly PuckPlace[] = [],
  gear: readonly Gear[] = [],
): DrillPlan => ({
  spots: Object.fromEntries(
    spots.map((spot, rank) => [
      spotId(spot.role),
      {
        side: 'us',
        kind: 'skater',
        facingRad: 0,
        waitingCount: 0,
        ...spot,
        rank,
        acts: Object.fromEntries(
          (spot.acts ?? []).map((act, index) => [`${spot.role}-${index}` as ActId, { ...act, rank: index }]),
        ),
      },
    ]),
  ),
  pucks: Object.fromEntries(pucks.map((puck, index) => [`puck-${index}`, puck])),
  gear: Object.fromEntries(gear.map((piece, index) => [`gear-${index}`, piece])),
});
