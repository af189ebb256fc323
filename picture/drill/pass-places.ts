import type { ActId, DrillPlan, IcePoint, Rink, SpotId } from '@icewright/engine';
import { byRank } from './by-rank.ts';

/** Where each spot stands before each of its acts and after the last, along its own drawn routes. */
export interface SpotPlaces {
  readonly beforeAct: ReadonlyMap<ActId, IcePoint>;
  readonly acts: readonly ActId[];
  readonly startM: IcePoint;
  readonly endM: IcePoint;
}

export const spotPlacesOf = (plan: DrillPlan): ReadonlyMap<SpotId, SpotPlaces> => {
  const places = new Map<SpotId, SpotPlaces>();
  for (const [id, spot] of byRank(plan.spots)) {
    const beforeAct = new Map<ActId, IcePoint>();
    let at = spot.atM;
    for (const [actId, act] of byRank(spot.acts)) {
      beforeAct.set(actId, at);
      if (act.kind === 'skate' || act.kind === 'carry') at = act.throughM[act.throughM.length - 1] ?? at;
    }
    places.set(id, { beforeAct, acts: [...beforeAct.keys()], startM: spot.atM, endM: at });
  }
  return places;
};

/**
 * Where a pass is taken when no run says so: the receiver's first pass is taken where he first needs the puck, his
 * second where he needs it again. A receiver who needs none takes it where his route ends.
 */
export const takingPlaceOf = (
  plan: DrillPlan,
  places: ReadonlyMap<SpotId, SpotPlaces>,
  receiver: SpotId,
  passNumber: number,
): IcePoint | null => {
  const spot = plan.spots[receiver];
  const own = places.get(receiver);
  if (!spot || !own) return null;
  const needs: ActId[] = [];
  let has = Object.values(plan.pucks).some(puck => puck.ownerSpot === receiver);
  for (const [actId, act] of byRank(spot.acts)) {
    const plays = act.kind === 'carry' || act.kind === 'pass' || act.kind === 'shoot';
    if (plays && !has) {
      needs.push(actId);
      has = true;
    }
    if (act.kind === 'pass' || act.kind === 'shoot') has = false;
  }
  const need = needs[passNumber];
  return need ? (own.beforeAct.get(need) ?? own.startM) : own.endM;
};

/** A bank pass before it is computed: the mirror image in the nearer side boards, which every coach draws first. */
export const mirrorBounce = (fromM: IcePoint, toM: IcePoint, rink: Rink): IcePoint => {
  const side = fromM.yM + toM.yM >= 0 ? 1 : -1;
  const boardsYM = (side * rink.boards.widthM) / 2;
  const from = Math.abs(boardsYM - fromM.yM);
  const to = Math.abs(boardsYM - toM.yM);
  const share = from + to > 0 ? from / (from + to) : 0.5;
  return { xM: fromM.xM + (toM.xM - fromM.xM) * share, yM: boardsYM };
};
