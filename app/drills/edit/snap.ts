import type { IcePoint } from '@icewright/engine';

/** Something on the ice that a hand is drawn to, and the words that say so. Metres, frame of the rink. */
export type SnapTo = {
  readonly words: string /** Whose it is, for the guide line. */;
  readonly fromM?: IcePoint;
} & (
  | { readonly kind: 'point'; readonly atM: IcePoint }
  /** A line across the sheet, or along it. */
  | { readonly kind: 'x'; readonly xM: number }
  | { readonly kind: 'y'; readonly yM: number }
  | { readonly kind: 'circle'; readonly centreM: IcePoint; readonly radiusM: number }
);

export interface Snap {
  readonly atM: IcePoint;
  /** What it was drawn to: one thing, or a line across and one along that meet there. */
  readonly to: readonly SnapTo[];
}

/**
 * Where a hand that is at a point means to be: the nearest place within `catchM`, else where a line across and one along meet
 * within it, else on the nearest line or circle. Null when nothing is within `catchM`. Of things equally near the first in
 * the list.
 */
export const snapOf = (pointM: IcePoint, candidates: readonly SnapTo[], catchM: number): Snap | null => {
  const points = nearest(candidates, pointM, catchM, to => to.kind === 'point');
  if (points !== null) return { atM: points.atM, to: [points.to] };
  const across = nearest(candidates, pointM, catchM, to => to.kind === 'x');
  const along = nearest(candidates, pointM, catchM, to => to.kind === 'y');
  if (across !== null && along !== null)
    return { atM: { xM: across.atM.xM, yM: along.atM.yM }, to: [across.to, along.to] };
  const one = nearest(candidates, pointM, catchM, () => true);
  return one === null ? null : { atM: one.atM, to: [one.to] };
};

interface Near {
  readonly to: SnapTo;
  readonly atM: IcePoint;
}

const nearest = (
  candidates: readonly SnapTo[],
  pointM: IcePoint,
  catchM: number,
  counts: (to: SnapTo) => boolean,
): Near | null => {
  let best: Near | null = null;
  let bestM = catchM;
  for (const to of candidates) {
    if (!counts(to)) continue;
    const atM = placeOn(to, pointM);
    const awayM = Math.hypot(atM.xM - pointM.xM, atM.yM - pointM.yM);
    if (awayM > bestM || (best !== null && awayM === bestM)) continue;
    best = { to, atM };
    bestM = awayM;
  }
  return best;
};

const placeOn = (to: SnapTo, pointM: IcePoint): IcePoint => {
  switch (to.kind) {
    case 'point':
      return to.atM;
    case 'x':
      return { xM: to.xM, yM: pointM.yM };
    case 'y':
      return { xM: pointM.xM, yM: to.yM };
    case 'circle': {
      const xM = pointM.xM - to.centreM.xM;
      const yM = pointM.yM - to.centreM.yM;
      const awayM = Math.hypot(xM, yM);
      // From the very middle every way is as near.
      const ratio = awayM > 0 ? to.radiusM / awayM : 0;
      return awayM > 0
        ? { xM: to.centreM.xM + xM * ratio, yM: to.centreM.yM + yM * ratio }
        : { xM: to.centreM.xM + to.radiusM, yM: to.centreM.yM };
    }
  }
};
