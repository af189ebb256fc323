import type { ActDeed } from '../drill/drill.ts';
import { CARRIES_ON_MPS, LEAST_EFFORT_RATIO } from '../drill/drill-rows.ts';
import { boardsDistanceAt } from '../drill/in-boards.ts';
import { profileRoute } from '../skater/route-profile.ts';
import { isNone } from '../units/none.ts';
import type { BodyAsked } from './body-asked.ts';
import { LEAST_TURN_RAD } from './body-rows.ts';
import type { RouteWay } from './kept-routes.ts';
import { emptyWay, keepOnIce, standingWay, WAY_ROOM_M, type WayPlaces } from './straight-way.ts';

type TurnDeed = Extract<ActDeed, { kind: 'turn' }>;

/**
 * The way of a tight turn through a signed angle, anticlockwise positive: a circle of the least radius the speed allows,
 * r = max(r₀, v²/a_lat), begun along the motion, or along the facing by who stands. The effort says what speed is kept
 * in the turn: who is faster than effort × V brakes straight on first, as hard as the level stops, down to that or to
 * √(a_lat·r₀), the speed of the tightest circle, whichever is more. So full effort keeps the speed and turns wide, little effort slows first and turns
 * tight. Where that does not fit on the ice the turn is taken slower, as far as the tightest; what still does not fit is
 * skated along the boards, and `off` says so. On a circle wider than the speed needs the skater pushes, up to effort × V.
 * Metres, seconds, frame of the rink. An angle under `LEAST_TURN_RAD` is no way: duration 0.
 * Source: circular motion, a_lat = v²/r, with the level's rows for a_lat, r₀ and stopping.
 */
export const turnWayOf = (asked: BodyAsked, deed: TurnDeed): RouteWay => {
  if (Math.abs(deed.angleRad) < LEAST_TURN_RAD.value) return standingWay(asked.from, asked.isBackward);
  const { boards, model, from } = asked;
  const effortRatio = Math.max(LEAST_EFFORT_RATIO.value, deed.effortRatio);
  const speedMps = Math.hypot(from.xMps, from.yMps);
  const tightMps = Math.sqrt(model.lateralAccelMps2 * model.minTurnRadiusM);
  const fastestMps = Math.min(speedMps, Math.max(tightMps, effortRatio * model.topSpeedMps));
  let shape = shapeOf(asked, deed.angleRad, fastestMps);
  let places = placesOf(asked, shape);
  for (let i = 1; i <= SLOWER_TRIES && fastestMps > tightMps && !isOnIce(asked, places); i++) {
    shape = shapeOf(asked, deed.angleRad, fastestMps + ((tightMps - fastestMps) * i) / SLOWER_TRIES);
    places = placesOf(asked, shape);
  }
  const durationS = setTimes(asked, shape, places, effortRatio);
  const off = farthestOff(asked, places);
  keepOnIce(boards, places);
  return { ...places, durationS, stepM: shape.stepM, backward: asked.isBackward, off };
};

/** How many slower turns are tried before the tightest is taken. */
const SLOWER_TRIES = 8;
const PLACES_APART_M = 0.05;
const FEWEST_ON_ARC = 8;

interface TurnShape {
  readonly brakeM: number;
  readonly turnMps: number;
  readonly radiusM: number;
  readonly side: 1 | -1;
  readonly stepM: number;
  readonly count: number;
  readonly headingX: number;
  readonly headingY: number;
}

const shapeOf = (asked: BodyAsked, angleRad: number, turnMps: number): TurnShape => {
  const { model, from, facingX, facingY } = asked;
  const speedMps = Math.hypot(from.xMps, from.yMps);
  const moves = speedMps > CARRIES_ON_MPS.value;
  const radiusM = Math.max(model.minTurnRadiusM, turnMps ** 2 / model.lateralAccelMps2);
  const brakeM = (speedMps ** 2 - turnMps ** 2) / (2 * model.stopDecelMps2);
  const arcM = radiusM * Math.abs(angleRad);
  const lengthM = brakeM + arcM;
  const cells = Math.ceil(lengthM / Math.min(PLACES_APART_M, arcM / FEWEST_ON_ARC));
  return {
    brakeM,
    turnMps: moves ? turnMps : 0,
    radiusM,
    side: angleRad < 0 ? -1 : 1,
    stepM: lengthM / cells,
    count: cells + 1,
    headingX: moves ? from.xMps / speedMps : facingX,
    headingY: moves ? from.yMps / speedMps : facingY,
  };
};

const placesOf = ({ from }: BodyAsked, shape: TurnShape): WayPlaces => {
  const { brakeM, radiusM, side, headingX, headingY } = shape;
  const places = emptyWay(shape.count);
  for (let i = 0; i < shape.count; i++) {
    const sM = i * shape.stepM;
    const turnedRad = Math.max(0, sM - brakeM) / radiusM;
    const aheadM = Math.min(sM, brakeM) + radiusM * Math.sin(turnedRad);
    const asideM = side * radiusM * (1 - Math.cos(turnedRad));
    places.xM[i] = from.xM + aheadM * headingX - asideM * headingY;
    places.yM[i] = from.yM + aheadM * headingY + asideM * headingX;
  }
  return places;
};

/** Brakes evenly to the circle, then the fastest profile on it. Fills speeds and times; gives the duration, seconds. */
const setTimes = (asked: BodyAsked, shape: TurnShape, places: WayPlaces, effortRatio: number): number => {
  const { model, from, isBackward, withPuck } = asked;
  const { brakeM, turnMps, radiusM, stepM, count } = shape;
  const { speedMps, timeS } = places;
  const arcFrom = Math.min(count - 2, Math.ceil(brakeM / stepM - ROUNDING));
  for (let i = 0; i < arcFrom; i++) {
    const leftM = brakeM - i * stepM;
    speedMps[i] = Math.sqrt(turnMps ** 2 + 2 * model.stopDecelMps2 * leftM);
    timeS[i] = (Math.hypot(from.xMps, from.yMps) - speedMps[i]!) / model.stopDecelMps2;
  }
  const arcCount = count - arcFrom;
  const arc = {
    lengthM: (arcCount - 1) * stepM,
    stepM,
    xM: places.xM.subarray(arcFrom),
    yM: places.yM.subarray(arcFrom),
    headingRad: new Float64Array(arcCount),
    curvaturePerM: new Float64Array(arcCount).fill(shape.side / radiusM),
    sharpestPerM: 1 / radiusM,
    beziers: [],
  };
  const profile = profileRoute(arc, model, {
    startSpeedMps: turnMps,
    facing: isBackward ? 'backward' : 'forward',
    withPuck,
    effortRatio,
    stops: false,
  });
  // An effort that is never 0 always gets round.
  if (isNone(profile)) throw new Error(`a turn of radius ${radiusM} m at ${turnMps} m/s never ends`);
  const before = arcFrom - 1;
  const arcStartS = arcFrom > 0 ? timeS[before]! + (2 * stepM) / (speedMps[before]! + turnMps) : 0;
  for (let i = 0; i < arcCount; i++) {
    speedMps[arcFrom + i] = profile.speedMps[i]!;
    timeS[arcFrom + i] = arcStartS + profile.timeS[i]!;
  }
  return arcStartS + profile.durationS;
};

/** A place that lies on the beginning of the circle but for rounding is on it. */
const ROUNDING = 1e-9;

/** Whether no place is nearer to the boards than a skater can be; one who begins at the boards may be as near as that. */
const isOnIce = ({ boards }: BodyAsked, { xM, yM }: WayPlaces): boolean => {
  const roomM = Math.min(WAY_ROOM_M, boardsDistanceAt(boards, xM[0]!, yM[0]!));
  for (let i = 1; i < xM.length; i++) if (boardsDistanceAt(boards, xM[i]!, yM[i]!) < roomM) return false;
  return true;
};

/** The place farthest over the boards, or null when none is. */
const farthestOff = ({ boards }: BodyAsked, { xM, yM }: WayPlaces): RouteWay['off'] => {
  let off: RouteWay['off'] = null;
  for (let i = 0; i < xM.length; i++) {
    const byM = -boardsDistanceAt(boards, xM[i]!, yM[i]!);
    if (byM > (off?.byM ?? 0)) off = { atM: { xM: xM[i]!, yM: yM[i]! }, byM };
  }
  return off;
};
