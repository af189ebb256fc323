import type { DrillPlan, Spot } from '../drill/drill.ts';
import type { FreezeScene, FreezeSkater } from '../drill/plan-from-freeze.ts';
import { weAttack } from '../drill/playing-end.ts';
import type { End } from '../units/ends.ts';
import type { SpotId } from '../units/ids.ts';
import type { IcePoint } from '../units/points.ts';

/** Who of the drill stands for whom of the picture. Places of the picture are turned so that we attack plusX, as in every drill. */
export interface Matched {
  readonly pairs: readonly { readonly skater: FreezeSkater; readonly atM: IcePoint; readonly spot: SpotId }[];
  /** In the picture and not in the drill. */
  readonly missing: readonly FreezeSkater[];
  /** In the drill and not in the picture; coaches are nobody. */
  readonly extra: readonly SpotId[];
}

/** 1 where a picture in which we attack that end lies as the drill does, −1 where it has to be turned by half. */
export const turnOnto = (plan: DrillPlan, attacks: End): 1 | -1 =>
  weAttack(Object.values(plan.spots)) === attacks ? 1 : -1;

/**
 * Pairs the people of a picture with the spots of a drill: same side, skater or goalie; first those of the same role, then the rest
 * nearest first. `attacks` is the end we attack in the picture. Our own rule.
 */
export const matchPeople = (scene: FreezeScene, attacks: End, plan: DrillPlan): Matched => {
  const turn = turnOnto(plan, attacks);
  const people = scene.skaters.map(skater => ({
    skater,
    atM: { xM: turn * skater.atM.xM, yM: turn * skater.atM.yM },
  }));
  const spots = (Object.entries(plan.spots) as [SpotId, Spot][]).filter(([, spot]) => spot.kind !== 'coach');
  const fits = (skater: FreezeSkater, spot: Spot) => skater.side === spot.side && skater.kind === spot.kind;
  const candidates = people
    .flatMap(person =>
      spots
        .filter(([, spot]) => fits(person.skater, spot))
        .map(([id, spot]) => ({
          person,
          id,
          isSameRole: spot.role === person.skater.role,
          awayM: Math.hypot(spot.atM.xM - person.atM.xM, spot.atM.yM - person.atM.yM),
        })),
    )
    .sort((a, b) => Number(b.isSameRole) - Number(a.isSameRole) || a.awayM - b.awayM);
  const pairs = new Map<string, Matched['pairs'][number]>();
  const taken = new Set<SpotId>();
  for (const { person, id } of candidates) {
    if (pairs.has(person.skater.id) || taken.has(id)) continue;
    pairs.set(person.skater.id, { skater: person.skater, atM: person.atM, spot: id });
    taken.add(id);
  }
  return {
    pairs: [...pairs.values()],
    missing: scene.skaters.filter(skater => !pairs.has(skater.id)),
    extra: spots.filter(([id]) => !taken.has(id)).map(([id]) => id),
  };
};
