import type { Drill, DrillAct, DrillSpot } from '@icewright/book';
import { type ActId, attackedEndOf, type IcePoint, levelOf, type SpotId } from '@icewright/engine';
import { endOfRoutes, headingAtEnd, spotsOf } from '../route-writes.ts';

const FIRST_STEP_M = 8;
const FURTHEST_M = 24;

/** An act as it starts, after all that the spot does already: speeds and gap are those of the drill's level, for the coach to change. */
export function newAct(drill: Drill, spotId: SpotId, kind: DrillAct['kind']): DrillAct | null {
  const spot = drill.spots[spotId];
  if (spot === undefined) return null;
  const rank = Math.max(-1, ...Object.values(spot.acts).map(act => act.rank)) + 1;
  const isFirst = Object.keys(spot.acts).length === 0;
  // Nobody jumps the whistle: the first act of a spot waits for it.
  const start: Pick<DrillAct, 'rank' | 'cue'> = { rank, ...(isFirst ? { cue: { on: 'whistle' } } : {}) };
  const others = spotsOf(drill).filter(([id]) => id !== spotId);
  const anybody = others[0]?.[0];
  const { kept, carrier, near } = opponentsOf(drill, spotId, spot);
  const mate =
    others.find(([, other]) => other.side === spot.side && other.kind !== 'goalie')?.[0] ?? anybody;
  const end = attackedEndOf(spot);
  const { model } = levelOf(drill.level);
  switch (kind) {
    case 'skate':
    case 'carry': {
      const throughM = [ahead(endOfRoutes(spot), end)];
      return { ...start, kind, throughM, facing: 'forward', effortRatio: 1, stops: false };
    }
    case 'pass':
      return mate === undefined
        ? null
        : { ...start, kind, toSpot: mate, way: 'direct', speedMps: model.typicalPassMps };
    case 'shoot':
      return { ...start, kind, atEnd: end, speedMps: model.wristShotMps };
    case 'hold':
      return { ...start, kind, seconds: 1 };
    case 'chase':
    case 'steal': {
      const whom = carrier ?? near[0] ?? anybody;
      return whom === undefined ? null : { ...start, kind, whom, effortRatio: 1 };
    }
    case 'gap': {
      const whom = near.find(one => !kept.has(one)) ?? near[0] ?? anybody;
      return whom === undefined ? null : { ...start, kind, whom, distanceM: model.blueLineGapM };
    }
    case 'screen': {
      const from = carrier ?? near[0] ?? anybody;
      const to = near.find(one => one !== from);
      return from === undefined
        ? null
        : { ...start, kind, from, ...(to === undefined ? {} : { to }), alongRatio: 0.5 };
    }
    case 'pickUp':
      return { ...start, kind, effortRatio: 1 };
    case 'turn':
      return { ...start, kind, angleRad: towardsMiddle(spot) * Math.PI, effortRatio: 1 };
    case 'leave':
    case 'stop':
    case 'pivot':
    case 'face':
      return { ...start, kind };
  }
}

/**
 * Whom a spot has against it: from the nearest on to where it is when all its routes are done, who of them starts with a puck, and whom a
 * mate keeps a gap to already, for two do not keep one.
 */
const opponentsOf = (drill: Drill, spotId: SpotId, spot: DrillSpot) => {
  const fromM = endOfRoutes(spot);
  const awayM = (other: DrillSpot) => Math.hypot(other.atM.xM - fromM.xM, other.atM.yM - fromM.yM);
  const near = spotsOf(drill)
    .filter(([id, other]) => id !== spotId && other.side !== spot.side && other.kind === 'skater')
    .sort(([, one], [, other]) => awayM(one) - awayM(other))
    .map(([id]) => id);
  const owners = new Set(Object.values(drill.pucks).map(({ ownerSpot }) => ownerSpot));
  const kept = new Set(
    spotsOf(drill)
      .filter(([id, mate]) => id !== spotId && mate.side === spot.side)
      .flatMap(([, mate]) => Object.values(mate.acts).flatMap(act => (act.kind === 'gap' ? [act.whom] : []))),
  );
  return { near, kept, carrier: near.find(one => owners.has(one)) };
};

/** A turn is taken to the side with more ice: +1 to the left, −1 to the right. */
const towardsMiddle = (spot: DrillSpot): 1 | -1 => {
  const atM = endOfRoutes(spot);
  const headingRad = headingAtEnd(spot);
  return Math.sin(headingRad) * atM.xM - Math.cos(headingRad) * atM.yM >= 0 ? 1 : -1;
};

export const newActWrite = (spotId: SpotId, id: ActId, act: DrillAct) => ({
  path: ['spots', spotId, 'acts', id],
  value: act,
});

const ahead = (fromM: IcePoint, end: 'minusX' | 'plusX'): IcePoint => ({
  xM: Math.max(
    -FURTHEST_M,
    Math.min(FURTHEST_M, fromM.xM + (end === 'plusX' ? FIRST_STEP_M : -FIRST_STEP_M)),
  ),
  yM: fromM.yM,
});
