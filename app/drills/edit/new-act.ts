import type { Drill, DrillAct, DrillSpot } from '@icewright/book';
import { type ActId, type IcePoint, levelOf, type SpotId } from '@icewright/engine';
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
  const opponents = others.filter(([, other]) => other.side !== spot.side && other.kind !== 'goalie');
  const somebody = opponents[0]?.[0] ?? anybody;
  const mate =
    others.find(([, other]) => other.side === spot.side && other.kind !== 'goalie')?.[0] ?? anybody;
  const end = spot.side === 'us' ? 'plusX' : 'minusX';
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
    case 'steal':
      return somebody === undefined ? null : { ...start, kind, whom: somebody, effortRatio: 1 };
    case 'gap':
      return somebody === undefined
        ? null
        : { ...start, kind, whom: somebody, distanceM: model.blueLineGapM };
    case 'screen': {
      const to = opponents[1]?.[0];
      return somebody === undefined
        ? null
        : { ...start, kind, from: somebody, ...(to === undefined ? {} : { to }), alongRatio: 0.5 };
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
