import type { Drill, DrillAct } from '@icewright/book';
import type { ActId, IcePoint, Rink, SpotId } from '@icewright/engine';
import { onIce } from '../on-ice.ts';
import { isRoute, throughMoved } from '../route-writes.ts';
import type { Write } from '../write.ts';
import type { Picked } from './selection.ts';

/** An act that was added a moment ago: the next press on the board says where to, or to whom. */
export interface Aim {
  readonly spotId: SpotId;
  readonly actId: ActId;
}

/** What was pressed: bare ice at a place, or a thing that stands there. */
export interface Pressed {
  readonly atM: IcePoint;
  readonly thing: Picked | null;
}

/** What a press does for the act that is aimed: a route goes there, a pass or a chase to who stands there. Null when the press says neither. */
export const aimedWrites = (drill: Drill, rink: Rink, aim: Aim, press: Pressed): Write[] | null => {
  const act = drill.spots[aim.spotId]?.acts[aim.actId];
  if (act === undefined) return null;
  const { spotId, actId } = aim;
  if (isRoute(act))
    return press.thing === null
      ? throughMoved(drill, spotId, actId, act.throughM.length - 1, onIce(rink, press.atM))
      : null;
  const name = namesWhom(act);
  if (name === null || press.thing?.kind !== 'spot' || press.thing.spot === spotId) return null;
  return [{ path: ['spots', spotId, 'acts', actId, name], value: press.thing.spot }];
};

/** What the next press means, in words; null for an act that needs no aim. */
export const aimSaid = (drill: Drill, aim: Aim): string | null => {
  const spot = drill.spots[aim.spotId];
  const act = spot?.acts[aim.actId];
  if (spot === undefined || act === undefined) return null;
  if (isRoute(act)) return `Press the ice where ${spot.role} goes to, or drag the end of the route.`;
  if (namesWhom(act) === null) return null;
  return act.kind === 'pass'
    ? `Press who gets the pass of ${spot.role}, if it is somebody else.`
    : `Press whom ${spot.role} means, if it is somebody else.`;
};

const namesWhom = (act: DrillAct): 'toSpot' | 'whom' | null => {
  if (act.kind === 'pass') return 'toSpot';
  return act.kind === 'chase' || act.kind === 'steal' || act.kind === 'gap' ? 'whom' : null;
};
