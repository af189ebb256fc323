import type { Random } from '../random/random.ts';
import { landmarksOf } from '../rink/landmarks.ts';
import { rinkOf } from '../rink/rink-of.ts';
import type { IceCovariance, IcePoint } from '../units/points.ts';
import { type Camera, drawnAt, filmFromIceOf, isInPicture, someCamera } from './camera.reference.ts';
import type { FitResult, Matrix3, Pin, PinFit } from './pins.ts';
import { refusalByPlaces } from './refuse-pins.ts';

export const TEST_RINK = rinkOf({ preset: '200x85ft' });
const LANDMARKS = landmarksOf(TEST_RINK);

/** A camera with pins on `count` of the landmarks it sees, clicked with an error of `noisePx` (sd per axis). */
export interface PinnedView {
  readonly camera: Camera;
  readonly filmFromIce: Matrix3;
  readonly pins: readonly Pin[];
}

export const somePinnedView = (random: Random, count: number, noisePx: number): PinnedView => {
  for (;;) {
    const camera = someCamera(random);
    const filmFromIce = filmFromIceOf(camera);
    const seen = LANDMARKS.flatMap(({ id, atM }) => {
      const px = drawnAt(filmFromIce, atM);
      return isInPicture(camera, px) ? [{ id, iceM: atM, filmPx: px }] : [];
    });
    if (seen.length < count) continue;
    const pins = pickedOf(random, seen, count).map(pin => ({
      ...pin,
      filmPx: {
        xPx: pin.filmPx.xPx + noisePx * random.normal(),
        yPx: pin.filmPx.yPx + noisePx * random.normal(),
      },
    }));
    if (refusalByPlaces(pins) === null) return { camera, filmFromIce, pins };
  }
};

/** `count` different entries. */
export const pickedOf = <Item>(random: Random, items: readonly Item[], count: number): Item[] => {
  const rest = [...items];
  return Array.from({ length: count }, () => rest.splice(random.below(rest.length), 1)[0]!);
};

/** A point of the ice that this camera sees. */
export const somePlaceInView = (random: Random, { camera, filmFromIce }: PinnedView): IcePoint => {
  for (;;) {
    const atM = { xM: -30 + 60 * random.uniform(), yM: -12.5 + 25 * random.uniform() };
    if (isInPicture(camera, drawnAt(filmFromIce, atM))) return atM;
  }
};

/** Whether an error of (dx, dy) lies inside the 95 % ellipse of a covariance: χ² of 2 degrees up to 5.9915. */
export const holds = ({ xxM2, xyM2, yyM2 }: IceCovariance, dx: number, dy: number): boolean =>
  (yyM2 * dx * dx - 2 * xyM2 * dx * dy + xxM2 * dy * dy) / (xxM2 * yyM2 - xyM2 * xyM2) <= 5.9915;

export const theFit = (result: FitResult): PinFit => {
  if (result.kind === 'refused') throw new Error(`pins were refused: ${result.reason}`);
  return result.fit;
};
