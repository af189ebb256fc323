import { filmFromIce, type IcePoint, type PinFit } from '@icewright/engine';

/** A polyline on the ice as the data of an SVG path in the picture; broken where it passes behind the camera. */
export const filmPath = (fit: PinFit, line: readonly IcePoint[], closed = false): string => {
  let path = '';
  let drawing = false;
  for (const point of line) {
    const at = filmFromIce(fit, point);
    if (!at || Math.abs(at.xPx) > FAR_PX || Math.abs(at.yPx) > FAR_PX) {
      drawing = false;
      continue;
    }
    path += `${drawing ? 'L' : 'M'}${at.xPx.toFixed(1)} ${at.yPx.toFixed(1)}`;
    drawing = true;
  }
  return closed && path !== '' ? `${path}Z` : path;
};

/** Points near the horizon run away to where no picture is. */
const FAR_PX = 20_000;
