import { BLADE_AHEAD_M, CHASE_LOOK_S, GAP_RESPONSE_S, STANDING_MPS } from '../drill/drill-rows.ts';
import type { Body } from '../drill/in-boards.ts';
import type { SprintPower } from '../skater/sprint.ts';
import type { IcePoint } from '../units/points.ts';

/**
 * The plain way to run one reactive skater against somebody whose motion is known: steered anew every 1/1200 s, explicit
 * Euler steps of v̇ = (V·u − v)/τ, the meeting of a chase looked for by walking along the future. Slow, and written apart from the
 * run so that the two can be compared.
 */
export interface ReferenceSkater {
  readonly start: Body;
  readonly power: SprintPower;
  readonly startsAtS: number;
}

const STEP_S = 1 / 1200;
const LOOK_STEP_S = 1 / 250;

export interface ReferenceTrack {
  /** Place at 0, 0.1, 0.2 … s. */
  readonly placesM: readonly IcePoint[];
  /** When the chaser came within `reachM`; NaN when it did not. */
  readonly caughtS: number;
}

export const referenceChase = (
  skater: ReferenceSkater,
  whomAt: (timeS: number) => Body,
  reachM: number,
  untilS: number,
): ReferenceTrack =>
  walk(
    skater,
    whomAt,
    untilS,
    (body, whom) => {
      let meetS = CHASE_LOOK_S.value;
      for (let t = 0; t < CHASE_LOOK_S.value; t += LOOK_STEP_S) {
        const { xM, yM } = lackAfter(body, whom, skater.power, t);
        const radiusM = skater.power.topSpeedMps * (t - drawn(skater.power, t));
        if (Math.hypot(xM, yM) <= radiusM + reachM) {
          meetS = t;
          break;
        }
      }
      const { xM, yM } = lackAfter(body, whom, skater.power, meetS);
      const size = Math.hypot(xM, yM);
      return size > 0 ? { x: xM / size, y: yM / size } : { x: 0, y: 0 };
    },
    reachM,
  );

/** The blade kept part of the way along the lane from one skater to another, the body a blade's length behind it. */
export const referenceScreen = (
  skater: ReferenceSkater,
  fromAt: (timeS: number) => Body,
  toAt: (timeS: number) => Body,
  alongRatio: number,
  untilS: number,
): ReferenceTrack => {
  const pointOf = (from: Body, to: Body): IcePoint => {
    const lengthM = Math.hypot(to.xM - from.xM, to.yM - from.yM);
    const share = Math.min(1, alongRatio + BLADE_AHEAD_M.value / lengthM);
    return { xM: from.xM + share * (to.xM - from.xM), yM: from.yM + share * (to.yM - from.yM) };
  };
  return walk(
    skater,
    fromAt,
    untilS,
    (body, from, timeS) => {
      const to = toAt(timeS);
      return pushToPoint(skater.power, body, pointOf(from, to), pointOf(moved(from), moved(to)));
    },
    0,
  );
};

const A_LITTLE_S = 1e-4;

export const moved = (body: Body): Body => ({
  ...body,
  xM: body.xM + A_LITTLE_S * body.xMps,
  yM: body.yM + A_LITTLE_S * body.yMps,
});

/** What a stance does to the push towards a moving point. Without one the top speed is the same in every direction. */
export interface ReferenceStance {
  /** How many times its speed the point is expected to come to. */
  readonly times: number;
  readonly topMps: (x: number, y: number) => number;
  /** A change of stance on the way takes this long and does at this part of the closing speed. */
  readonly turnS: number;
  readonly turnShare: number;
  /** Plans with the forward top speed though the stance does not give it yet. */
  readonly dares: boolean;
  /** Behind a moving point by less than this he still minds its speed before its line. */
  readonly frontM: number;
}

/** The push towards a moving point, its velocity by a difference and not by its formula. */
export const pushToPoint = (
  power: SprintPower,
  body: Body,
  point: IcePoint,
  later: IcePoint,
  stance?: ReferenceStance,
): { x: number; y: number } => {
  const { topSpeedMps, tauS } = power;
  const x = point.xM - body.xM;
  const y = point.yM - body.yM;
  const pointX = (later.xM - point.xM) / A_LITTLE_S;
  const pointY = (later.yM - point.yM) / A_LITTLE_S;
  // Axes along and across the way the point moves; towards it when it stands.
  const pointMps = Math.hypot(pointX, pointY);
  const stands = pointMps < STANDING_MPS.value;
  const headingRad = stands ? Math.atan2(y, x) : Math.atan2(pointY, pointX);
  const turned = (vx: number, vy: number, rad: number) => ({
    x: vx * Math.cos(rad) + vy * Math.sin(rad),
    y: vy * Math.cos(rad) - vx * Math.sin(rad),
  });
  /** Top speed towards an angle from the heading. */
  const topAt = (rad: number): number =>
    stance?.topMps(Math.cos(headingRad + rad), Math.sin(headingRad + rad)) ?? topSpeedMps;
  const lack = turned(x, y, headingRad);
  const speed = turned(body.xMps, body.yMps, headingRad);
  const behindM = lack.x;
  const isAhead = behindM < 0;
  const comesToMps = (stance?.times ?? 1) * pointMps;
  const mustTurn = stance !== undefined && isAhead && topAt(0) < comesToMps;
  if (mustTurn) {
    const gainedM = stance.turnShare * stance.turnS * Math.max(0, pointMps - speed.x);
    lack.x = Math.min(0, lack.x + gainedM);
  }
  const planMps = mustTurn && stance.dares ? topSpeedMps : topAt(0);
  const spareMps = isAhead ? Math.max(0, planMps - comesToMps) : topAt(Math.PI) + pointMps;
  const close = (lackM: number, spare: number): number =>
    Math.sign(lackM) *
    Math.min(Math.abs(lackM) / (4 * GAP_RESPONSE_S.value), referenceBrakeable(Math.abs(lackM), spare, tauS));
  const keeps = Math.exp(-GAP_RESPONSE_S.value / tauS);
  const full = (1 - keeps) * topSpeedMps;
  const brakeAcrossMps = topAt((-Math.sign(lack.y) * Math.PI) / 2);
  let along = (pointMps + close(lack.x, spareMps) - keeps * speed.x) / full;
  let across = (close(lack.y, brakeAcrossMps) - keeps * speed.y) / full;
  const isInFront = !stands && stance !== undefined && behindM < stance.frontM;
  if (isAhead || isInFront) {
    const most = topAt(0) / topSpeedMps;
    along = clamp(along, most);
    const aside = topAt((Math.sign(across) * Math.PI) / 2) / topSpeedMps;
    across = clamp(across, aside * Math.sqrt(1 - (along / most) ** 2));
  }
  const size = Math.max(1, Math.hypot(along, across));
  return turned(along / size, across / size, -headingRad);
};

/** Closing speed that can be taken off within `farM`, by halving on the way it needs, ∫ c dt of ċ = −(spare + c)/τ. */
export const referenceBrakeable = (farM: number, spareMps: number, tauS: number): number => {
  const spare = Math.max(spareMps, 1e-9);
  const neededM = (c: number): number => tauS * (c - spare * Math.log(1 + c / spare));
  let low = 0;
  let high = 1e3;
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (neededM(middle) > farM) high = middle;
    else low = middle;
  }
  return low;
};

const clamp = (value: number, most: number): number => Math.max(-most, Math.min(most, value));

export const walk = (
  skater: ReferenceSkater,
  whomAt: (timeS: number) => Body,
  untilS: number,
  steer: (body: Body, whom: Body, timeS: number) => { x: number; y: number },
  reachM: number,
): ReferenceTrack => {
  const body = { ...skater.start };
  const { topSpeedMps, tauS } = skater.power;
  const placesM: IcePoint[] = [];
  let caughtS = Number.NaN;
  for (let i = 0; i * STEP_S <= untilS; i++) {
    const timeS = i * STEP_S;
    if (i % 120 === 0) placesM.push({ xM: body.xM, yM: body.yM });
    const whom = whomAt(timeS);
    if (timeS < skater.startsAtS) continue;
    if (Math.hypot(whom.xM - body.xM, whom.yM - body.yM) <= reachM) {
      caughtS = timeS;
      break;
    }
    const push = steer(body, whom, timeS);
    body.xM += body.xMps * STEP_S;
    body.yM += body.yMps * STEP_S;
    body.xMps += ((topSpeedMps * push.x - body.xMps) / tauS) * STEP_S;
    body.yMps += ((topSpeedMps * push.y - body.yMps) / tauS) * STEP_S;
  }
  return { placesM, caughtS };
};

const drawn = (power: SprintPower, t: number): number => power.tauS * (1 - Math.exp(-t / power.tauS));

const lackAfter = (body: Body, whom: Body, power: SprintPower, t: number): IcePoint => ({
  xM: whom.xM + whom.xMps * t - body.xM - body.xMps * drawn(power, t),
  yM: whom.yM + whom.yMps * t - body.yM - body.yMps * drawn(power, t),
});
