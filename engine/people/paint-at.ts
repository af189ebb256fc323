import type { Rink } from '../rink/rink.ts';

/** Kinds of paint whose colours are measured apart: thin lines look paler than broad ones. */
export const PAINTS = ['none', 'thinRed', 'broadRed', 'blue', 'spot', 'crease'] as const;
type Paint = (typeof PAINTS)[number];
/** A kind of paint by its place in `PAINTS`; 0 for none. */
export type PaintIndex = number;

/** Which paint the rink has at a place of the ice, or within `nearM` of it. */
export const paintAt = (rink: Rink, nearM: number): ((xM: number, yM: number) => PaintIndex) => {
  const { layout, boards } = rink;
  const lines = Object.values(rink.lines).map(({ minXM, maxXM, colour }) => ({
    minXM: minXM - nearM,
    maxXM: maxXM + nearM,
    paint: indexOf(colour === 'blue' ? 'blue' : maxXM - minXM > THIN_M ? 'broadRed' : 'thinRed'),
  }));
  const thinM = layout.thinLineM / 2 + nearM;
  const { endSpotM, neutralSpotM, crease, trapezoid } = layout;
  const ringM = layout.circleRadiusM - layout.thinLineM / 2;
  const spotM = layout.spotDiameterM / 2 + nearM;
  const behindM = boards.lengthM / 2 - layout.goalLineXM;
  const isSpotMark = spotMarkTest(rink, nearM);
  return (xM, yM) => {
    for (const line of lines) if (xM > line.minXM && xM < line.maxXM) return line.paint;
    const [ax, ay] = [Math.abs(xM), Math.abs(yM)];
    const fromGoalM = layout.goalLineXM - ax;
    const isByNet = fromGoalM > -nearM && ay < crease.halfWidthM + nearM;
    if (isByNet && Math.hypot(fromGoalM, ay) < crease.radiusM + nearM) return CREASE;
    const middleM = Math.hypot(xM, yM);
    if (Math.abs(middleM - ringM) < thinM || middleM < CENTRE_SPOT_M + nearM) return BLUE;
    if (Math.hypot(ax - neutralSpotM.xM, ay - neutralSpotM.yM) < spotM) return SPOT;
    const [dx, dy] = [Math.abs(ax - endSpotM.xM), Math.abs(ay - endSpotM.yM)];
    const apartM = Math.hypot(dx, dy);
    if (apartM < spotM) return SPOT;
    if (Math.abs(apartM - ringM) < thinM || isSpotMark(dx, dy)) return THIN_RED;
    if (trapezoid && fromGoalM < 0) {
      const widerM = trapezoid.boardsHalfM - trapezoid.goalLineHalfM;
      const halfM = trapezoid.goalLineHalfM - (fromGoalM / behindM) * widerM;
      if (Math.abs(ay - halfM) < thinM) return THIN_RED;
    }
    const fromRefM = Math.hypot(xM, yM + boards.widthM / 2);
    return Math.abs(fromRefM - layout.refCreaseRadiusM) < thinM ? THIN_RED : 0;
  };
};

const indexOf = (paint: Paint): PaintIndex => PAINTS.indexOf(paint);
const THIN_RED = indexOf('thinRed');
const BLUE = indexOf('blue');
const SPOT = indexOf('spot');
const CREASE = indexOf('crease');
const THIN_M = 0.2;
const CENTRE_SPOT_M = 0.3;

/** Hash marks and the L marks of an end spot, by distances from it along and across. */
const spotMarkTest = ({ layout }: Rink, nearM: number): ((dx: number, dy: number) => boolean) => {
  const { hash, lMark } = layout;
  const thinM = layout.thinLineM / 2 + nearM;
  const longM = lMark.startDxM + lMark.longM;
  const lowM = Math.min(lMark.innerDyM, lMark.shortEndDyM);
  const highM = Math.max(lMark.innerDyM, lMark.shortEndDyM);
  const within = (value: number, fromM: number, toM: number) => value > fromM - nearM && value < toM + nearM;
  return (dx, dy) =>
    (Math.abs(dx - hash.dxM) < thinM && within(dy, hash.dyFromM, hash.dyToM)) ||
    (Math.abs(dy - lMark.innerDyM) < thinM && within(dx, lMark.startDxM, longM)) ||
    (Math.abs(dx - lMark.startDxM) < thinM && within(dy, lowM, highM));
};
