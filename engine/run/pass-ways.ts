import { puckPath } from '../puck/path.ts';
import type { PathLeg, PuckPath } from '../puck/path-parts.ts';
import { placeOnPath } from '../puck/place-on-path.ts';
import { type Saucer, saucerOf } from '../puck/saucer.ts';
import { slideSpeedAtTime, slideTimeAtDistance } from '../puck/slide.ts';
import { boardsHitAlong } from '../rink/boards-ray.ts';
import { isNone } from '../units/none.ts';
import type { IcePoint } from '../units/points.ts';
import { bladeAt, type Foreseen, placeAt } from './foresee.ts';
import type { PassAim } from './pass-aim.ts';
import { SAUCER_HIGHEST_M, SAUCER_LANDS_BEFORE_M, STICK_CLEAR_M } from './pass-way-rows.ts';
import type { RunState } from './run-state.ts';

/** A saucer as the passer lifts it for this way to go, metres: down a little before the blade, as far as the lift allows. */
export const liftFor = (run: RunState, speedMps: number, farM: number): Saucer => {
  const { gravityMps2 } = run.puckModel;
  const airS = Math.max(0, farM - SAUCER_LANDS_BEFORE_M.value) / speedMps;
  const heightM = (gravityMps2 / 8) * airS * airS;
  const lifted = Math.min(SAUCER_HIGHEST_M.value, Math.max(STICK_CLEAR_M.value, heightM));
  const saucer = saucerOf(run.puckModel, speedMps, lifted);
  if (isNone(saucer)) throw new Error(`no saucer at ${speedMps} m/s over ${lifted} m`);
  return saucer;
};

/** When a stick can be on the saucer again, seconds after the release: once it is lower than `STICK_CLEAR_M`. */
export const lowAgainS = (run: RunState, { flightS }: Saucer): number =>
  flightS / 2 +
  Math.sqrt(Math.max(0, flightS ** 2 / 4 - (2 * STICK_CLEAR_M.value) / run.puckModel.gravityMps2));

/**
 * The way of a saucer over the ice: straight through the air, then as any puck from where it lands; boards in the way end the
 * flight, and it comes off them on the ice. Metres, seconds.
 */
export const saucerPath = (
  run: RunState,
  fromM: IcePoint,
  launchRad: number,
  speedMps: number,
  saucer: Saucer,
): PuckPath => {
  const { puckModel, rink } = run;
  const direction = { xM: Math.cos(launchRad), yM: Math.sin(launchRad) };
  const hit = boardsHitAlong(rink.boards, fromM, direction);
  const roomM = isNone(hit) ? 0 : Math.max(0, hit.distanceM - 2 * puckModel.puckRadiusM);
  const slowing = { constantMps2: 0, dragPerM: puckModel.dragPerM };
  const isShort = roomM < saucer.carryM;
  const airS = isShort ? slideTimeAtDistance(slowing, speedMps, roomM) : saucer.flightS;
  const carryM = Math.min(roomM, saucer.carryM);
  const onIceMps = isShort ? slideSpeedAtTime(slowing, speedMps, airS) : saucer.landingMps;
  const downM = { xM: fromM.xM + carryM * direction.xM, yM: fromM.yM + carryM * direction.yM };
  const rest = puckPath(rink.boards, puckModel, downM, launchRad, onIceMps);
  const air: PathLeg = {
    kind: 'slide',
    startS: 0,
    durationS: airS,
    startM: fromM,
    direction,
    startMps: speedMps,
    slowing,
    edgeMps: 0,
  };
  return {
    ...rest,
    legs: [air, ...rest.legs.map(leg => ({ ...leg, startS: leg.startS + airS }))],
    bounces: rest.bounces.map(bounce => ({ ...bounce, timeS: bounce.timeS + airS })),
    endTimeS: rest.endTimeS + airS,
  };
};

const DIRECTIONS = 96;
const LOOK_STEP_S = 1 / 30;
const LONGEST_RIM_S = 6;

/**
 * The rim to a receiver: of 96 directions of launch, those that follow a corner round (one rim, or touch after touch in it) and
 * come within the lunge of the receiver as far as the drill fixes the receiver; of these the soonest. When none does, the one
 * that comes nearest, for the receiver to go and meet (`meetsAfterS` NaN). Null when none leads round a corner.
 */
export const aimRim = (
  run: RunState,
  fromM: IcePoint,
  foreseen: Foreseen,
  lungeReachM: number,
  speedMps: number,
): PassAim | null => {
  let best: PassAim | null = null;
  let nearestM = Number.POSITIVE_INFINITY;
  for (let i = 0; i < DIRECTIONS; i++) {
    const launchRad = (2 * Math.PI * i) / DIRECTIONS;
    const path = puckPath(run.rink.boards, run.puckModel, fromM, launchRad, speedMps);
    const fromS = roundCornerS(path);
    if (Number.isNaN(fromS)) continue;
    const { afterS, apartM } = meetingAfter(run, path, foreseen, fromS, WELL_WITHIN * lungeReachM);
    const isMet = Number.isFinite(afterS);
    if (
      best && Number.isFinite(best.meetsAfterS) ? !(afterS < best.meetsAfterS) : !isMet && apartM >= nearestM
    ) {
      continue;
    }
    nearestM = apartM;
    best = { path, meetsAfterS: afterS };
  }
  return best;
};

/** When a path begins to follow a corner, seconds; NaN when it does not. */
const roundCornerS = ({ legs, bounces }: PuckPath): number => {
  const rim = legs.find(leg => leg.kind === 'rim');
  if (rim) return rim.startS;
  const touches = bounces.filter(({ part }) => part.startsWith('corner'));
  return touches.length >= 2 ? touches[0]!.timeS : Number.NaN;
};

/** When the puck is first within `withinM` of the receiver (NaN when it is not), and how near it comes. */
const meetingAfter = (
  run: RunState,
  path: PuckPath,
  foreseen: Foreseen,
  fromS: number,
  withinM: number,
): { readonly afterS: number; readonly apartM: number } => {
  const body = { xM: 0, yM: 0, xMps: 0, yMps: 0 };
  const place = { xM: 0, yM: 0 };
  const lastS = Math.min(path.endTimeS, fromS + LONGEST_RIM_S);
  let apartM = Number.POSITIVE_INFINITY;
  for (let afterS = fromS; afterS <= lastS; afterS += LOOK_STEP_S) {
    placeOnPath(path, afterS, place);
    placeAt(foreseen, run.nowS + afterS, body);
    apartM = Math.min(apartM, Math.hypot(place.xM - body.xM, place.yM - body.yM));
    if (apartM <= withinM) return { afterS, apartM };
  }
  return { afterS: Number.NaN, apartM };
};

/** A puck that is met this far inside the lunge is still within it when the receiver has moved on by a step of the look. */
const WELL_WITHIN = 0.8;

/** How far it is to where a direct pass would meet the blade, metres: a saucer is lifted for that. */
export const farOf = (run: RunState, fromM: IcePoint, foreseen: Foreseen, afterS: number): number => {
  const blade = { xM: 0, yM: 0, xMps: 0, yMps: 0 };
  bladeAt(foreseen, run.nowS + afterS, blade);
  return Math.hypot(blade.xM - fromM.xM, blade.yM - fromM.yM);
};
