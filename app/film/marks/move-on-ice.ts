import { filmFromIce, type IcePoint, iceFromFilm, type PinFit } from '@icewright/engine';

/** So far along the ice, in the way that an arrow key points on the picture from there; the place itself where that way leaves the ice. */
export const movedOnIce = (
  fit: PinFit,
  from: IcePoint,
  [right, down]: readonly [number, number],
  byM: number,
): IcePoint => {
  const px = filmFromIce(fit, from);
  if (!px) return from;
  const beside = iceFromFilm(fit, { xPx: px.xPx + right * TINY_PX, yPx: px.yPx + down * TINY_PX });
  if (beside.kind === 'none') return from;
  const [dx, dy] = [beside.atM.xM - from.xM, beside.atM.yM - from.yM];
  const length = Math.hypot(dx, dy);
  return length === 0 ? from : { xM: from.xM + (dx / length) * byM, yM: from.yM + (dy / length) * byM };
};
const TINY_PX = 0.5;
