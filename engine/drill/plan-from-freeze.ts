import type { End, Side } from '../units/ends.ts';
import type { ActId, SpotId } from '../units/ids.ts';
import type { IcePoint } from '../units/points.ts';
import type { Act, DrillPlan, PuckPlace, Spot } from './drill.ts';

/** What a drill needs of a freeze: who stood where on the ice, and the puck. Metres, frame of the rink. */
export interface FreezeScene {
  readonly skaters: readonly FreezeSkater[];
  readonly puck?: { readonly atM: IcePoint; readonly carrier?: string };
}

export interface FreezeSkater {
  readonly id: string;
  readonly side: Side;
  readonly kind: 'skater' | 'goalie';
  readonly role: string;
  readonly atM: IcePoint;
  /** Where this skater should have been. */
  readonly ghostM?: IcePoint;
}

export interface FreezePlanOptions {
  /** The end we attack in the freeze. A drill always has us attack plusX, so the other end is turned round by half a turn. */
  readonly attacks: End;
  /** Fresh ids, unique in the whole drill. */
  readonly newId: () => string;
}

/**
 * The start of a drill from a freeze: the same skaters on the same places, facing the puck, the puck on its carrier's
 * stick or lying where it was. Nothing is made up: the only acts are those of skaters with a ghost, who skate from
 * their place to it and stop at the whistle.
 */
export const drillPlanFromFreeze = (scene: FreezeScene, options: FreezePlanOptions): DrillPlan => {
  const turn = options.attacks === 'plusX' ? 1 : -1;
  const turned = (pointM: IcePoint): IcePoint => ({ xM: turn * pointM.xM + 0, yM: turn * pointM.yM + 0 });
  const spotIds = new Map(scene.skaters.map(skater => [skater.id, options.newId() as SpotId]));
  const towards = scene.puck ? turned(scene.puck.atM) : undefined;
  const spots: Record<SpotId, Spot> = {};
  scene.skaters.forEach((skater, rank) => {
    const atM = turned(skater.atM);
    spots[spotIds.get(skater.id)!] = {
      rank,
      side: skater.side,
      kind: skater.kind,
      role: skater.role,
      atM,
      facingRad: facingOf(atM, skater.id === scene.puck?.carrier ? undefined : towards, skater.side),
      waitingCount: 0,
      acts: skater.ghostM ? { [options.newId() as ActId]: toGhost(turned(skater.ghostM)) } : {},
    };
  });
  return {
    spots,
    pucks: scene.puck ? { [options.newId()]: puckOf(scene.puck, turned, spotIds) } : {},
    gear: {},
  };
};

/** Towards the puck; its carrier, and everybody when no puck is known, towards the end they attack. */
const facingOf = (atM: IcePoint, towards: IcePoint | undefined, side: Side): number =>
  towards && (towards.xM !== atM.xM || towards.yM !== atM.yM)
    ? Math.atan2(towards.yM - atM.yM, towards.xM - atM.xM)
    : side === 'us'
      ? 0
      : Math.PI;

const toGhost = (ghostM: IcePoint): Act => ({
  rank: 0,
  kind: 'skate',
  throughM: [ghostM],
  facing: 'forward',
  effortRatio: 1,
  stops: true,
  cue: { on: 'whistle' },
});

const puckOf = (
  puck: NonNullable<FreezeScene['puck']>,
  turned: (pointM: IcePoint) => IcePoint,
  spotIds: ReadonlyMap<string, SpotId>,
): PuckPlace => {
  const owner = puck.carrier === undefined ? undefined : spotIds.get(puck.carrier);
  return { atM: turned(puck.atM), count: 1, ...(owner === undefined ? {} : { ownerSpot: owner }) };
};
