import type { GreyPicture } from '../carry/grey-picture.ts';
import { type Camera, drawnAt, filmFromIceOf } from '../film/camera.reference.ts';
import { fitPins } from '../film/fit-pins.ts';
import { inverse3 } from '../film/matrix.ts';
import { TEST_RINK, theFit } from '../film/pinned-view.reference.ts';
import type { Matrix3, PinFit } from '../film/pins.ts';
import { landmarksOf } from '../rink/landmarks.ts';
import type { FilmPoint, IcePoint } from '../units/points.ts';

/** A skater as a test draws him: where he is at a time, and the grey of his clothes. */
export interface DrawnSkater {
  readonly at: (timeS: number) => IcePoint;
  readonly grey: (acrossM: number, upM: number) => number;
}

const CAMERA: Camera = {
  placeM: [1, -33, 13],
  panRad: -0.25,
  tiltRad: 0.37,
  rollRad: 0.004,
  focalPx: 900,
  widthPx: 640,
  heightPx: 360,
};

/** A panning camera's pictures of upright bodies on an uneven ice; nothing of it is shared with what follows them. */
export const drawnFrame = (timeS: number, panMps: number, skaters: readonly DrawnSkater[]) => {
  const camera = { ...CAMERA, panRad: CAMERA.panRad + panMps * timeS };
  const filmFromIce = filmFromIceOf(camera);
  return {
    picture: pictureOf(camera, filmFromIce, timeS, skaters),
    fit: exactFit(camera, filmFromIce),
    filmFromIce,
  };
};

export const feetPx = (filmFromIce: Matrix3, atM: IcePoint): FilmPoint => drawnAt(filmFromIce, atM)!;

const exactFit = ({ widthPx, heightPx }: Camera, filmFromIce: Matrix3): PinFit => {
  const pins = landmarksOf(TEST_RINK).flatMap(({ id, atM }) => {
    const px = drawnAt(filmFromIce, atM);
    const isSeen = px && px.xPx > 0 && px.yPx > 0 && px.xPx < widthPx && px.yPx < heightPx;
    return isSeen ? [{ id, iceM: atM, filmPx: px }] : [];
  });
  return theFit(fitPins(pins, 0.05));
};

const pictureOf = (
  camera: Camera,
  filmFromIce: Matrix3,
  timeS: number,
  skaters: readonly DrawnSkater[],
): GreyPicture => {
  const { widthPx, heightPx } = camera;
  const back = inverse3(filmFromIce);
  const grey = new Uint8Array(widthPx * heightPx);
  for (let y = 0, at = 0; y < heightPx; y++) {
    for (let x = 0; x < widthPx; x++, at++) {
      const t = back[6] * (x + 0.5) + back[7] * (y + 0.5) + back[8];
      const xM = (back[0] * (x + 0.5) + back[1] * (y + 0.5) + back[2]) / t;
      const yM = (back[3] * (x + 0.5) + back[4] * (y + 0.5) + back[5]) / t;
      const isLine = Math.abs(Math.abs(xM) - 7.7) < 0.15 || Math.abs(xM) < 0.15;
      grey[at] = t > 0 ? (isLine ? 120 : 215 + 8 * Math.sin(1.7 * xM) * Math.cos(2.3 * yM)) : 40;
    }
  }
  const seen = skaters
    .map(({ at, grey: cloth }) => ({ atM: at(timeS), cloth }))
    .sort((a, b) => b.atM.yM - a.atM.yM);
  for (const { atM, cloth } of seen) drawBody(grey, camera, filmFromIce, atM, cloth);
  return { widthPx, heightPx, grey };
};

/** The far ones first. Pixels of the body's upright board, by their distance from the camera. */
const drawBody = (
  grey: Uint8Array,
  { widthPx, heightPx, placeM, focalPx, tiltRad }: Camera,
  filmFromIce: Matrix3,
  atM: IcePoint,
  cloth: DrawnSkater['grey'],
): void => {
  const foot = feetPx(filmFromIce, atM);
  const awayM = Math.hypot(atM.xM - placeM[0], atM.yM - placeM[1], placeM[2]);
  const perM = focalPx / awayM;
  const riseM = perM * Math.cos(tiltRad);
  for (let y = Math.floor(foot.yPx - 1.8 * riseM); y <= foot.yPx; y++) {
    for (let x = Math.floor(foot.xPx - 0.4 * perM); x <= foot.xPx + 0.4 * perM; x++) {
      if (x < 0 || y < 0 || x >= widthPx || y >= heightPx) continue;
      const [across, up] = [(x + 0.5 - foot.xPx) / perM, (foot.yPx - y - 0.5) / riseM];
      const half = up > 1.45 ? 0.14 : up > 0.8 ? 0.32 : 0.24;
      if (Math.abs(across) < half && up > 0) grey[y * widthPx + x] = cloth(across, up);
    }
  }
};
