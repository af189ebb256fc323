import type { PuckModel } from '../puck/puck-model.ts';
import { slideDistanceAtTime, slideSpeedAtTime, slideStopTime, slowingOf } from '../puck/slide.ts';
import { type None, noneBecause } from '../units/none.ts';
import type { IcePoint } from '../units/points.ts';
import { receiverBladeAt, receiverVelocityAt } from './blade.ts';
import type { DirectPass, Receiver } from './pass-parts.ts';
import { PASS_ROWS } from './pass-rows.ts';

/** Fixed launch speed, or the speed left free and the time of the meeting given. */
export type Launch = { readonly speedMps: number } | { readonly meetAfterS: number };

export type NoDirectPass = None<'puckDiesBeforeReceiver' | 'receiverOutrunsPuck' | 'noSpeed'>;

/**
 * Pass straight to a moving receiver's blade, with lead: the launch direction (and, if free, speed) with which puck and
 * blade meet, the earliest when there are several. Metres, m/s, s. None: the puck stops before it gets there; within
 * `maxTimeS` the receiver gets away from it; or no speed at all. Speed > 0, m/s. Source: the slide law of `slide.ts`; the
 * meeting is its first root.
 */
export const directPass = (
  model: PuckModel,
  passerM: IcePoint,
  receiver: Receiver,
  launch: Launch,
  maxTimeS: number = PASS_ROWS.longestPassS.value,
): DirectPass | NoDirectPass =>
  'speedMps' in launch
    ? atSpeed(model, passerM, receiver, launch.speedMps, maxTimeS)
    : atTime(model, passerM, receiver, launch.meetAfterS);

/** The puck gains on the blade or loses it smoothly: steps of this size hold one turn of the gap at most. */
const SCAN_STEP_S = 0.05;

const atSpeed = (
  model: PuckModel,
  passerM: IcePoint,
  receiver: Receiver,
  speedMps: number,
  maxTimeS: number,
): DirectPass | NoDirectPass => {
  if (!(speedMps > 0)) return noneBecause('noSpeed');
  const slowing = slowingOf(model);
  const stopS = slideStopTime(slowing, speedMps);
  const endS = Math.min(maxTimeS, stopS);
  const gapAt = (timeS: number): number => {
    const blade = receiverBladeAt(receiver, timeS);
    const apart = Math.hypot(blade.xM - passerM.xM, blade.yM - passerM.yM);
    return apart - slideDistanceAtTime(slowing, speedMps, timeS);
  };
  const steps = Math.max(1, Math.ceil(endS / SCAN_STEP_S));
  let low = 0;
  let gap = gapAt(0);
  if (gap <= 0) return passAt(model, passerM, receiver, speedMps, 0);
  for (let step = 1; step <= steps; step++) {
    let high = (endS * step) / steps;
    const next = gapAt(high);
    if (next <= 0) {
      while (high - low > 1e-13) {
        const middle = (low + high) / 2;
        if (middle <= low || middle >= high) break;
        if (gapAt(middle) > 0) low = middle;
        else high = middle;
      }
      return passAt(model, passerM, receiver, speedMps, high);
    }
    low = high;
    gap = next;
  }
  return noneBecause(stopS <= maxTimeS ? 'puckDiesBeforeReceiver' : 'receiverOutrunsPuck');
};

const FASTEST_SEARCHED_MPS = 200;

const atTime = (
  model: PuckModel,
  passerM: IcePoint,
  receiver: Receiver,
  meetAfterS: number,
): DirectPass | NoDirectPass => {
  const slowing = slowingOf(model);
  const blade = receiverBladeAt(receiver, meetAfterS);
  const apart = Math.hypot(blade.xM - passerM.xM, blade.yM - passerM.yM);
  if (!(meetAfterS > 0)) return noneBecause('noSpeed');
  // The distance after a time grows with the launch speed, so one bracket is enough; at its foot the puck just stops there.
  let low = apart / meetAfterS;
  let high = FASTEST_SEARCHED_MPS;
  if (slideDistanceAtTime(slowing, high, meetAfterS) < apart) return noneBecause('puckDiesBeforeReceiver');
  while (high - low > 1e-12 * high) {
    const middle = (low + high) / 2;
    if (middle <= low || middle >= high) break;
    if (slideDistanceAtTime(slowing, middle, meetAfterS) < apart) low = middle;
    else high = middle;
  }
  if (slideSpeedAtTime(slowing, high, meetAfterS) === 0) return noneBecause('puckDiesBeforeReceiver');
  return passAt(model, passerM, receiver, high, meetAfterS);
};

const passAt = (
  model: PuckModel,
  passerM: IcePoint,
  receiver: Receiver,
  speedMps: number,
  arrivalS: number,
): DirectPass => {
  const meetM = receiverBladeAt(receiver, arrivalS);
  const now = receiverBladeAt(receiver, 0);
  const velocity = receiverVelocityAt(receiver, arrivalS);
  const speed = Math.hypot(velocity.xMps, velocity.yMps);
  const ahead = Math.hypot(meetM.xM - now.xM, meetM.yM - now.yM);
  return {
    kind: 'direct',
    launchRad: Math.atan2(meetM.yM - passerM.yM, meetM.xM - passerM.xM),
    launchSpeedMps: speedMps,
    arrivalS,
    arrivalSpeedMps: slideSpeedAtTime(slowingOf(model), speedMps, arrivalS),
    meetM,
    leadM: speed > 0 ? ahead : 0,
  };
};
