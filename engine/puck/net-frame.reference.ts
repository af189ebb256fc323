import type { IcePoint } from '../units/points.ts';

/** How far a point is from a chain of straight bars, metres: of each the nearest place, and the nearest of them. */
export const metresFromBars = (pointM: IcePoint, corners: readonly IcePoint[]): number => {
  let nearestM = Number.POSITIVE_INFINITY;
  for (let i = 0; i + 1 < corners.length; i++) {
    const a = corners[i]!;
    const b = corners[i + 1]!;
    const longM = Math.hypot(b.xM - a.xM, b.yM - a.yM);
    const share = ((pointM.xM - a.xM) * (b.xM - a.xM) + (pointM.yM - a.yM) * (b.yM - a.yM)) / longM ** 2;
    const t = Math.min(1, Math.max(0, share));
    const x = a.xM + t * (b.xM - a.xM);
    const y = a.yM + t * (b.yM - a.yM);
    nearestM = Math.min(nearestM, Math.hypot(pointM.xM - x, pointM.yM - y));
  }
  return nearestM;
};

/** The plain way to find where a straight way comes within `apartM` of the bars: along it, a millimetre at a time. NaN when it does not. */
export const referenceHitM = (
  fromM: IcePoint,
  direction: IcePoint,
  lengthM: number,
  corners: readonly IcePoint[],
  apartM: number,
): number => {
  for (let wayM = 0; wayM <= lengthM; wayM += 1e-3) {
    const at = { xM: fromM.xM + wayM * direction.xM, yM: fromM.yM + wayM * direction.yM };
    if (metresFromBars(at, corners) <= apartM) return wayM;
  }
  return Number.NaN;
};
