import type { FrozenScene, PlaceIndex } from '../film/frozen-scene.ts';
import { FULL_SIDE } from './full-side.ts';
import type { Who, Whom } from './standard.ts';
import {
  carrierIndex,
  distanceApart,
  distanceToPoint,
  isDefenderRole,
  isForwardRole,
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
}

/** The skaters of ours that a standard speaks of, as indices of the scene. */
export const groupOf = (scene: FrozenScene, who: Who, whom: Whom): Group | 'noCarrier' => {
  const isWhole = (count: number, full: number) => scene.isEveryonePlaced === true || count >= full;
  const forwards = oursOf(scene, skater => isForwardRole(skater.role));
  const defenders = oursOf(scene, skater => isDefenderRole(skater.role));
  const everyone = oursOf(scene, () => true);
  const fullSide = FULL_SIDE.forwards + FULL_SIDE.defenders;
  switch (who) {
    case 'firstForwardBack': {
      const net = ourNetOf(scene);
      const first = nearestOf(scene, forwards, place => distanceToPoint(scene, place, net));
      return { rule: 'one', places: first as number[], isWhole: true };
    }
    case 'nearestDefender': {
      const target = targetOf(scene, whom);
      if (target === null) return { rule: 'one', places: defenders, isWhole: true };
      const nearest = nearestOf(scene, defenders, place =>
        target === 'ourNet'
          ? distanceToPoint(scene, place, ourNetOf(scene))
          : distanceApart(scene, place, target),
      );
      return { rule: 'one', places: nearest as number[], isWhole: true };
    }
    case 'puckCarrier': {
      const carrier = carrierIndex(scene);
      if (carrier < 0 || scene.skaters[carrier]!.side !== 'us') return 'noCarrier';
      return { rule: 'one', places: [carrier], isWhole: true };
    }
    case 'everyForward':
      return { rule: 'every', places: forwards, isWhole: isWhole(forwards.length, FULL_SIDE.forwards) };
    case 'everyDefender':
      return { rule: 'every', places: defenders, isWhole: isWhole(defenders.length, FULL_SIDE.defenders) };
    case 'allOfUs':
      return { rule: 'every', places: everyone, isWhole: isWhole(everyone.length, fullSide) };
    case 'anyOfUs':
      return { rule: 'any', places: everyone, isWhole: isWhole(everyone.length, fullSide) };
  }
};

/** What the nearest defender is nearest to; null when that itself depends on who is asked. */
const targetOf = (scene: FrozenScene, whom: Whom): PlaceIndex | 'ourNet' | null => {
  if (whom === 'puck') return 'puck';
  if (whom === 'carrier') return carrierIndex(scene);
  if (whom === 'ourNet') return 'ourNet';
  if (whom === 'lastOfThem') return lastOfThem(scene)[0] ?? null;
  return scene.puck === undefined ? null : 'puck';
};
