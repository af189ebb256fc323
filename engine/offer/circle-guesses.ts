import type { Rink } from '../rink/rink.ts';
import type { IcePoint } from '../units/points.ts';
import { type CameraGuess, cameraOf } from './camera-of.ts';
import { circleView } from './circle-view.ts';
import type { Conic } from './ellipse-through.ts';
import { iceOf } from './ice-of.ts';
import { isCanonical, type SeenLine, type SeenSpot } from './view-guesses.ts';
import { CIRCLE_MISFIT } from './view-rows.ts';

/** A circle of the picture with its spot; the middle of the picture is (0, 0) and its half diagonal 1. */
export interface SeenCircle {
  readonly spot: SeenSpot;
  readonly conic: Conic;
}

/**
 * All ways in which a circle round a spot and one other spot or line can be the sheet's, as `guessViews` hands them on. The other one
 * must lie about as far from the circle as on the sheet. Source: `circleView`, then the turn by one direction.
 */
export const guessByCircles = (
  rink: Rink,
  circles: readonly SeenCircle[],
  spots: readonly SeenSpot[],
  lines: readonly SeenLine[],
  take: (map: Float64Array, camera: CameraGuess) => void,
): void => {
  const { endSpotM, neutralSpotM, circleRadiusM, thinLineM } = rink.layout;
  const ends = quartersOf(endSpotM);
  const all = [...ends, ...quartersOf(neutralSpotM)];
  for (const { spot, conic } of circles) {
    const view = circleView(conic, spot.u, spot.v, circleRadiusM - thinLineM / 2);
    if (view === null) continue;
    const tryOut = (at: IcePoint, turnRad: number): void => {
      const map = turned(view, at, turnRad);
      const camera = cameraOf(map);
      if (camera !== null && isCanonical(camera)) take(map, camera);
    };
    for (const other of spots) {
      if (other === spot) continue;
      const seen = iceOf(view, other.u, other.v);
      if (seen === null) continue;
      for (const at of ends) {
        for (const place of other.canBe ?? all) {
          const [dx, dy] = [place.xM - at.xM, place.yM - at.yM];
          if (!isAbout(Math.hypot(seen.xM, seen.yM), Math.hypot(dx, dy))) continue;
          tryOut(at, Math.atan2(seen.yM, seen.xM) - Math.atan2(dy, dx));
        }
      }
    }
    for (const { pqr, canBeXM } of lines) {
      const [a, b, c] = [0, 1, 2].map(
        k => pqr[0] * view[k]! + pqr[1] * view[3 + k]! + pqr[2] * view[6 + k]!,
      ) as [number, number, number];
      const distanceM = Math.abs(c) / Math.hypot(a, b);
      // The foot of the line seen from the circle's middle.
      const footRad = Math.atan2(-c * b, -c * a);
      for (const at of ends) {
        for (const xM of canBeXM) {
          if (!isAbout(distanceM, Math.abs(xM - at.xM))) continue;
          tryOut(at, footRad - (xM > at.xM ? 0 : Math.PI));
        }
      }
    }
  }
};

const quartersOf = ({ xM, yM }: IcePoint): IcePoint[] =>
  [-1, 1].flatMap(x => [-1, 1].map(y => ({ xM: x * xM, yM: y * yM })));

const isAbout = (seenM: number, trueM: number): boolean =>
  trueM > 0 && Math.abs(seenM - trueM) < CIRCLE_MISFIT.value * trueM;

/** The view with the circle's middle at a place of the sheet, and the sheet turned by so much in it. */
const turned = (view: Float64Array, at: IcePoint, turnRad: number): Float64Array => {
  const [cos, sin] = [Math.cos(turnRad), Math.sin(turnRad)];
  const map = new Float64Array(9);
  for (let row = 0; row < 9; row += 3) {
    const [x, y] = [view[row]!, view[row + 1]!];
    map[row] = cos * x + sin * y;
    map[row + 1] = -sin * x + cos * y;
    map[row + 2] = view[row + 2]! - map[row]! * at.xM - map[row + 1]! * at.yM;
  }
  return map;
};
