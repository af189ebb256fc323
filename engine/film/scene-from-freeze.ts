import { boardsDistance } from '../rink/boards.ts';
import type { Rink } from '../rink/rink.ts';
import type { End, Side } from '../units/ends.ts';
import type { FilmPoint, IcePoint } from '../units/points.ts';
import { ellipseOf } from './ellipse.ts';
import { FOOT_SD, OFF_THE_ICE } from './film-rows.ts';
import type { FrozenScene } from './frozen-scene.ts';
import { crossCovarianceOf, iceFromFilm, type Placement } from './ice-from-film.ts';
import type { PinFit } from './pins.ts';

/** Skaters of a freeze by their feet in the picture, and the puck where it touches the ice. */
export interface FreezePlaces {
  readonly fit: PinFit;
  readonly rink: Rink;
  readonly attacks: End;
  readonly skaters: readonly {
    readonly id: string;
    readonly side: Side;
    readonly kind: 'skater' | 'goalie';
    readonly role: string;
    readonly feetPx: FilmPoint;
    /** How well his feet are known, pixels (standard deviation); `footSdPx` of all by default. */
    readonly footSdPx?: number;
  }[];
  readonly puck?: { readonly atPx: FilmPoint; readonly carrierId?: string };
  /** `FOOT_SD` by default. */
  readonly footSdPx?: number;
  readonly isEveryonePlaced?: boolean;
  /** As in the scene. */
  readonly allOfUsPlacedInM?: readonly IcePoint[];
}

export interface SceneOfFreeze {
  readonly scene: FrozenScene;
  /** Those whose feet have no place on the ice; `id` is 'puck' for the puck. */
  readonly unplaced: readonly {
    readonly id: string;
    readonly reason: 'aboveHorizon' | 'nearHorizon' | 'offTheIce';
  }[];
}

/**
 * The frozen scene, metres, with the ± of all places together: what the pins got wrong moves everybody alike, what a
 * click got wrong moves one. Feet that have no place on the ice are left out and named with the reason. Source: as
 * `iceFromFilm`, for all places at once.
 */
export const sceneFromFreeze = (freeze: FreezePlaces): SceneOfFreeze => {
  const { fit, rink, attacks, footSdPx = FOOT_SD.value } = freeze;
  const unplaced: { id: string; reason: 'aboveHorizon' | 'nearHorizon' | 'offTheIce' }[] = [];
  const placedAt = (id: string, px: FilmPoint, sdPx: number): Placed | null => {
    const placement = iceFromFilm(fit, px, { footSdPx: sdPx });
    if (placement.kind === 'none') {
      unplaced.push({ id, reason: placement.reason });
      return null;
    }
    const slackM = OFF_THE_ICE.value + ellipseOf(placement.covM2).semiMajorM;
    if (boardsDistance(rink.boards, placement.atM) < -slackM) {
      unplaced.push({ id, reason: 'offTheIce' });
      return null;
    }
    return placement;
  };
  const skaters = freeze.skaters.flatMap(({ feetPx, footSdPx: ownSdPx = footSdPx, ...who }) => {
    const placed = placedAt(who.id, feetPx, ownSdPx);
    return placed === null ? [] : [{ who, placed }];
  });
  // Of ours one whose feet have no place is missing after all.
  const lacksOneOfUs = freeze.skaters.some(
    ({ id, side }) => side === 'us' && unplaced.some(one => one.id === id),
  );
  const puck = freeze.puck === undefined ? null : placedAt('puck', freeze.puck.atPx, footSdPx);
  const carrierId = freeze.puck?.carrierId;
  const scene: FrozenScene = {
    rink,
    attacks,
    skaters: skaters.map(({ who, placed }) => ({ ...who, atM: placed.atM, covM2: placed.covM2 })),
    ...(puck === null
      ? {}
      : { puck: { atM: puck.atM, covM2: puck.covM2, ...(carrierId === undefined ? {} : { carrierId }) } }),
    jointM2: jointOf(fit, [...skaters.map(({ placed }) => placed), ...(puck === null ? [] : [puck])]),
    ...(freeze.isEveryonePlaced === undefined || lacksOneOfUs
      ? {}
      : { isEveryonePlaced: freeze.isEveryonePlaced }),
    ...(freeze.allOfUsPlacedInM === undefined || lacksOneOfUs
      ? {}
      : { allOfUsPlacedInM: freeze.allOfUsPlacedInM }),
  };
  return { scene, unplaced };
};

type Placed = Extract<Placement, { kind: 'placed' }>;

const jointOf = (fit: PinFit, places: readonly Placed[]): number[] => {
  const size = 2 * places.length;
  const joint = new Array<number>(size * size).fill(0);
  places.forEach((a, i) => {
    places.forEach((b, j) => {
      const [xx, xy, yx, yy] = crossCovarianceOf(fit, a.by, b.by, i === j);
      const first = size * 2 * i + 2 * j;
      joint[first] = xx;
      joint[first + 1] = xy;
      joint[first + size] = yx;
      joint[first + size + 1] = yy;
    });
  });
  return joint;
};
