import { puckPath } from '../puck/path.ts';
import type { PathLeg, PuckPath } from '../puck/path-parts.ts';
import { type Saucer, saucerOf } from '../puck/saucer.ts';
import { slideSpeedAtTime, slideTimeAtDistance } from '../puck/slide.ts';
import { boardsHitAlong } from '../rink/boards-ray.ts';
import { isNone } from '../units/none.ts';
import type { IcePoint } from '../units/points.ts';
import { bladeAt, type Foreseen, placeAt } from './foresee.ts';
import type { PassAim } from './pass-aim.ts';
import { SAUCER_HIGHEST_M, SAUCER_LANDS_BEFORE_M, STICK_CLEAR_M } from './pass-way-rows.ts';
import { placeOnPath } from './place-on-path.ts';
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

const ARC_PARTS = 8;
const LOOK_STEP_S = 1 / 30;
const LONGEST_RIM_S = 6;

/**
 * The rim that comes nearest to the receiver: hard at the boards where a corner begins, so that it follows them round. Looks
 * at eight places of each corner; null when none of them leads round a corner within reach of the receiver's lunge and
 * `LONGEST_RIM_S`. It is met where it is first within reach of the receiver as far as the drill fixes the receiver.
 */
export const aimRim = (
  run: RunState,
  fromM: IcePoint,
  foreseen: Foreseen,
  lungeReachM: number,
  speedMps: number,
): PassAim | null => {
  const { boards } = run.rink;
  const cornerX = boards.lengthM / 2 - boards.cornerRadiusM;
  const cornerY = boards.widthM / 2 - boards.cornerRadiusM;
  let best: PassAim | null = null;
  for (const signX of [-1, 1]) {
    for (const signY of [-1, 1]) {
      for (let part = 0; part <= ARC_PARTS; part++) {
        const rad = (part / ARC_PARTS) * (Math.PI / 2);
        const atX = signX * (cornerX + boards.cornerRadiusM * Math.cos(rad));
        const atY = signY * (cornerY + boards.cornerRadiusM * Math.sin(rad));
        const launchRad = Math.atan2(atY - fromM.yM, atX - fromM.xM);
        const path = puckPath(boards, run.puckModel, fromM, launchRad, speedMps);
        const rim = path.legs.find(leg => leg.kind === 'rim');
        if (!rim) continue;
        const meetsAfterS = meetingAfter(run, path, foreseen, rim.startS, lungeReachM);
        if (Number.isNaN(meetsAfterS) || (best && meetsAfterS >= best.meetsAfterS)) continue;
        best = { path, meetsAfterS };
      }
    }
  }
  return best;
};

const meetingAfter = (
  run: RunState,
  path: PuckPath,
  foreseen: Foreseen,
  fromS: number,
  lungeReachM: number,
): number => {
  const body = { xM: 0, yM: 0, xMps: 0, yMps: 0 };
  const place = { xM: 0, yM: 0 };
  const lastS = Math.min(path.endTimeS, fromS + LONGEST_RIM_S);
  for (let afterS = fromS; afterS <= lastS; afterS += LOOK_STEP_S) {
    placeOnPath(path, afterS, place);
    placeAt(foreseen, run.nowS + afterS, body);
    if (Math.hypot(place.xM - body.xM, place.yM - body.yM) <= WELL_WITHIN * lungeReachM) return afterS;
  }
  return Number.NaN;
};

/** A puck that is met this far inside the lunge is still within it when the receiver has moved on by a step of the look. */
const WELL_WITHIN = 0.8;

/** How far it is to where a direct pass would meet the blade, metres: a saucer is lifted for that. */
export const farOf = (run: RunState, fromM: IcePoint, foreseen: Foreseen, afterS: number): number => {
  const blade = { xM: 0, yM: 0, xMps: 0, yMps: 0 };
  bladeAt(foreseen, run.nowS + afterS, blade);
  return Math.hypot(blade.xM - fromM.xM, blade.yM - fromM.yM);
};
