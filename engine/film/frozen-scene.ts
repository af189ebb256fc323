import type { Rink } from '../rink/rink.ts';
import type { End, Side } from '../units/ends.ts';
import type { Estimate, IceCovariance, IcePoint } from '../units/points.ts';

export interface FrozenSkater {
  readonly id: string;
  readonly side: Side;
  readonly kind: 'skater' | 'goalie';
  /** F1, LW, D2, G and the like; its letters say whether a skater is a forward or a defender. */
  readonly role: string;
  readonly atM: IcePoint;
  readonly covM2: IceCovariance;
}

/** One frozen picture on the ice, metres. Goalies are in `skaters` too. */
export interface FrozenScene {
  readonly rink: Rink;
  /** The end we attack in this picture. */
  readonly attacks: End;
  readonly skaters: readonly FrozenSkater[];
  readonly puck?: { readonly atM: IcePoint; readonly covM2: IceCovariance; readonly carrierId?: string };
  /**
   * Covariance of all places together, m², row by row: x and y of each skater in order, then of the puck when there
   * is one. Places from one picture share the error of its pins.
   */
  readonly jointM2: readonly number[];
  /** True when nobody on the ice is missing from `skaters`; else those not placed are somewhere unknown. */
  readonly isEveryonePlaced?: boolean;
  /** The part of the ice, convex, anticlockwise, metres, in which nobody of us stands who is not in `skaters`: what the picture shows. */
  readonly allOfUsPlacedInM?: readonly IcePoint[];
}

/** Two-sided 95 % of a normal spread, in standard deviations. */
export const SURELY_SDS = 1.96;

/** A place of the scene: the index of a skater, or the puck. */
export type PlaceIndex = number | 'puck';

/** How a figure moves when a place moves: place, ∂/∂x, ∂/∂y. */
export type Pull = readonly [place: PlaceIndex, byX: number, byY: number];

/**
 * A figure that hangs on places of the scene, with its sd to first order from their joint covariance. `value` in any
 * unit, the sd is in the same. Source: the usual propagation of covariance, √(g Σ gᵀ).
 */
export const sceneEstimate = (scene: FrozenScene, value: number, pulls: readonly Pull[]): Estimate => {
  const size = 2 * (scene.skaters.length + (scene.puck === undefined ? 0 : 1));
  const at = (place: PlaceIndex) => 2 * (place === 'puck' ? scene.skaters.length : place);
  let variance = 0;
  for (const [a, ax, ay] of pulls) {
    for (const [b, bx, by] of pulls) {
      const first = size * at(a) + at(b);
      variance += ax * (bx * scene.jointM2[first]! + by * scene.jointM2[first + 1]!);
      variance += ay * (bx * scene.jointM2[first + size]! + by * scene.jointM2[first + size + 1]!);
    }
  }
  return { value, sd: Math.sqrt(Math.max(0, variance)) };
};

/** Where a place is, metres. Throws for the puck of a scene without one: the caller asks first. By definition. */
export const placeOf = (scene: FrozenScene, place: PlaceIndex): IcePoint => {
  const at = place === 'puck' ? scene.puck?.atM : scene.skaters[place]?.atM;
  if (at === undefined) throw new Error(`the scene has no place ${place}`);
  return at;
};
