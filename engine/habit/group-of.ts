import type { FrozenScene, PlaceIndex } from '../film/frozen-scene.ts';
import { FULL_SIDE } from './full-side.ts';
import type { Who, Whom } from './standard.ts';
import {
  carrierIndex,
  distanceApart,
  distanceToPoint,
  isDefenderRole,
  isForwardRole,
  isUnknownRole,
  type Length,
  lastOfThem,
  nearestOf,
  ourNetOf,
  oursOf,
} from './who.ts';

/** `one`: all places are candidates for one person. */
export interface Group {
  readonly rule: 'one' | 'every' | 'any';
  readonly places: readonly number[];
  /** Nobody who belongs to the group may be out of the picture. */
  readonly isWhole: boolean;
  /** One of ours is placed of whom it is not said whether he is a forward or a defender, and it matters here. */
  readonly lacksRoles?: boolean;
}

/** The skaters of ours that a standard speaks of, as indices of the scene. */
export const groupOf = (scene: FrozenScene, who: Who, whom: Whom): Group | 'noCarrier' => {
  const isWhole = (count: number, full: number) => scene.isEveryonePlaced === true || count >= full;
  const forwards = oursOf(scene, skater => isForwardRole(skater.role));
  const defenders = oursOf(scene, skater => isDefenderRole(skater.role));
  const unknown = oursOf(scene, skater => isUnknownRole(skater.role));
  const everyone = oursOf(scene, () => true);
  const fullSide = FULL_SIDE.forwards + FULL_SIDE.defenders;
  switch (who) {
    case 'firstForwardBack': {
      const net = ourNetOf(scene);
      const lengthOf = (place: PlaceIndex) => distanceToPoint(scene, place, net);
      return { rule: 'one', places: mayBeNearest(scene, forwards, unknown, lengthOf), isWhole: true };
    }
    case 'nearestDefender': {
      const target = targetOf(scene, whom);
      if (target === null) return { rule: 'one', places: [...defenders, ...unknown], isWhole: true };
      const lengthOf = (place: PlaceIndex) =>
        target === 'ourNet'
          ? distanceToPoint(scene, place, ourNetOf(scene))
          : distanceApart(scene, place, target);
      return { rule: 'one', places: mayBeNearest(scene, defenders, unknown, lengthOf), isWhole: true };
    }
    case 'puckCarrier': {
      const carrier = carrierIndex(scene);
      if (carrier < 0 || scene.skaters[carrier]!.side !== 'us') return 'noCarrier';
      return { rule: 'one', places: [carrier], isWhole: true };
    }
    case 'everyForward':
      return every(forwards, unknown, isWhole(forwards.length, FULL_SIDE.forwards), FULL_SIDE.forwards);
    case 'everyDefender':
      return every(defenders, unknown, isWhole(defenders.length, FULL_SIDE.defenders), FULL_SIDE.defenders);
    case 'allOfUs':
      return { rule: 'every', places: everyone, isWhole: isWhole(everyone.length, fullSide) };
    case 'anyOfUs':
      return { rule: 'any', places: everyone, isWhole: isWhole(everyone.length, fullSide) };
  }
};

/** Who may be the nearest of them, when any of `unknown` may be one of them too: also each of those who is not surely further off. */
const mayBeNearest = (
  scene: FrozenScene,
  known: readonly number[],
  unknown: readonly number[],
  lengthOf: (place: PlaceIndex) => Length,
): number[] => {
  const nearest = nearestOf(scene, known, lengthOf) as number[];
  const [first] = nearest;
  if (first === undefined) return [...unknown];
  return [...nearest, ...unknown.filter(one => nearestOf(scene, [first, one], lengthOf).includes(one))];
};

/** A full number of them leaves no room for one of whom it is not known. */
const every = (
  places: readonly number[],
  unknown: readonly number[],
  isWhole: boolean,
  full: number,
): Group => {
  const lacksRoles = unknown.length > 0 && places.length < full;
  return { rule: 'every', places, isWhole: isWhole && !lacksRoles, lacksRoles };
};

/** What the nearest defender is nearest to; null when that itself depends on who is asked. */
const targetOf = (scene: FrozenScene, whom: Whom): PlaceIndex | 'ourNet' | null => {
  if (whom === 'puck') return 'puck';
  if (whom === 'carrier') return carrierIndex(scene);
  if (whom === 'ourNet') return 'ourNet';
  if (whom === 'lastOfThem') return lastOfThem(scene)[0] ?? null;
  return scene.puck === undefined ? null : 'puck';
};
