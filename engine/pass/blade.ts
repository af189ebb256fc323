import type { IcePoint, IceVelocity } from '../units/points.ts';
import type { Receiver } from './pass-parts.ts';

/**
 * Where the receiver's blade is `timeS` from now, metres. `timeS` ≥ 0. By definition of the receiver's motion and offset.
 */
export const receiverBladeAt = (receiver: Receiver, timeS: number): IcePoint => {
  const middle = receiverMiddleAt(receiver, timeS);
  return { xM: middle.xM + receiver.bladeOffsetM.xM, yM: middle.yM + receiver.bladeOffsetM.yM };
};

/**
 * Where the receiver's body is `timeS` from now, metres. Any time: before 0 the law runs backwards. By definition of the
 * receiver's motion.
 */
export const receiverMiddleAt = (receiver: Receiver, timeS: number): IcePoint => {
  const { atM, velocityMps, drive } = receiver;
  if (!drive) {
    return { xM: atM.xM + velocityMps.xMps * timeS, yM: atM.yM + velocityMps.yMps * timeS };
  }
  const easedS = -drive.tauS * Math.expm1(-timeS / drive.tauS);
  const driveX = drive.topSpeedMps * Math.cos(drive.driveRad);
  const driveY = drive.topSpeedMps * Math.sin(drive.driveRad);
  return {
    xM: atM.xM + driveX * timeS + (velocityMps.xMps - driveX) * easedS,
    yM: atM.yM + driveY * timeS + (velocityMps.yMps - driveY) * easedS,
  };
};

/** The receiver's velocity `timeS` from now, m/s. `timeS` ≥ 0. By definition of the receiver's motion. */
export const receiverVelocityAt = (receiver: Receiver, timeS: number): IceVelocity => {
  const { velocityMps, drive } = receiver;
  if (!drive) return velocityMps;
  const keeps = Math.exp(-timeS / drive.tauS);
  const driveX = drive.topSpeedMps * Math.cos(drive.driveRad);
  const driveY = drive.topSpeedMps * Math.sin(drive.driveRad);
  return {
    xMps: driveX + (velocityMps.xMps - driveX) * keeps,
    yMps: driveY + (velocityMps.yMps - driveY) * keeps,
  };
};
