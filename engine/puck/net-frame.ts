import type { Net } from '../rink/rink.ts';
import type { IcePoint } from '../units/points.ts';

/** Where the middle of a puck is when it meets the frame of a net, how far along its way, and the unit normal away from the frame. */
export interface FrameHit {
  readonly wayM: number;
  readonly normal: IcePoint;
  /** A post of the mouth, else the side or the back. */
  readonly isPost: boolean;
}

/**
 * First meeting of a puck that goes straight from `fromM` along a unit vector for `lengthM` with the frame of a net, undefined when there is
 * none. The frame is the two sides and the back, as thick as its posts and round at its corners; the mouth is open. The posts stand outside the
 * opening, the back `depthM` behind the goal line. `puckRadiusM`, `postDiameterM` ≥ 0; a puck that begins in a part of the frame does not meet that part.
 * Metres, frame of the rink. Source: geometry of a disc against straight bars with round ends.
 */
export const firstFrameHit = (
  net: Net,
  postDiameterM: number,
  puckRadiusM: number,
  fromM: IcePoint,
  direction: IcePoint,
  lengthM: number,
): FrameHit | undefined => {
  const corners = frameCorners(net, postDiameterM);
  const apartM = puckRadiusM + postDiameterM / 2;
  let first: FrameHit | undefined;
  const meet = (wayM: number, normal: IcePoint, isPost: boolean): void => {
    if (wayM >= 0 && wayM <= lengthM && wayM < (first?.wayM ?? Number.POSITIVE_INFINITY))
      first = { wayM, normal, isPost };
  };
  for (let i = 0; i < corners.length; i++) {
    const corner = corners[i]!;
    meetRound(corner, apartM, fromM, direction, (wayM, normal) =>
      meet(wayM, normal, i === 0 || i === corners.length - 1),
    );
    const next = corners[i + 1];
    if (next) meetBar(corner, next, apartM, fromM, direction, (wayM, normal) => meet(wayM, normal, false));
  }
  return first;
};

/** The middles of the bars' ends: post, back, back, post. */
export const frameCorners = (net: Net, postDiameterM: number): readonly IcePoint[] => {
  const [cos, sin] = [Math.cos(net.facingRad), Math.sin(net.facingRad)];
  const halfM = (net.openingM + postDiameterM) / 2;
  const at = (backM: number, acrossM: number): IcePoint => ({
    xM: net.atM.xM - backM * cos - acrossM * sin,
    yM: net.atM.yM - backM * sin + acrossM * cos,
  });
  return [at(0, -halfM), at(net.depthM, -halfM), at(net.depthM, halfM), at(0, halfM)];
};

type Meet = (wayM: number, normal: IcePoint) => void;

/** Moving towards it from outside: the smaller root of |from + s·d − corner| = apart. */
const meetRound = (
  corner: IcePoint,
  apartM: number,
  fromM: IcePoint,
  direction: IcePoint,
  meet: Meet,
): void => {
  const x = fromM.xM - corner.xM;
  const y = fromM.yM - corner.yM;
  const toward = x * direction.xM + y * direction.yM;
  const outside = x * x + y * y - apartM * apartM;
  const square = toward * toward - outside;
  if (outside < -SLACK_M2 || toward >= 0 || square <= 0) return;
  const wayM = Math.max(0, -toward - Math.sqrt(square));
  meet(wayM, {
    xM: (x + wayM * direction.xM) / apartM,
    yM: (y + wayM * direction.yM) / apartM,
  });
};

const meetBar = (
  a: IcePoint,
  b: IcePoint,
  apartM: number,
  fromM: IcePoint,
  direction: IcePoint,
  meet: Meet,
): void => {
  const longM = Math.hypot(b.xM - a.xM, b.yM - a.yM);
  const along = { xM: (b.xM - a.xM) / longM, yM: (b.yM - a.yM) / longM };
  const x = fromM.xM - a.xM;
  const y = fromM.yM - a.yM;
  const offM = y * along.xM - x * along.yM;
  const side = offM < 0 ? -1 : 1;
  const comes = -side * (direction.yM * along.xM - direction.xM * along.yM);
  const outsideM = Math.abs(offM) - apartM;
  if (outsideM < -SLACK_M || comes <= 0) return;
  const wayM = Math.max(0, outsideM / comes);
  const placeM = x * along.xM + y * along.yM + wayM * (direction.xM * along.xM + direction.yM * along.yM);
  if (placeM >= 0 && placeM <= longM) meet(wayM, { xM: -side * along.yM, yM: side * along.xM });
};

/** Who touches the frame after a bounce is outside it but for rounding. */
const SLACK_M = 1e-9;
const SLACK_M2 = 1e-9;
