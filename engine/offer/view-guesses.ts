import type { Rink } from '../rink/rink.ts';
import type { IcePoint } from '../units/points.ts';
import { type CameraGuess, cameraOf } from './camera-of.ts';
import { putLine, putPoint, solveMap } from './map-of-four.ts';

/** A spot of the picture and a straight line of it; the middle of the picture is (0, 0) and its half diagonal 1. */
export interface SeenSpot {
  readonly u: number;
  readonly v: number;
  /** Where on the sheet it can lie; absent: at any of its spots. */
  readonly canBe?: readonly IcePoint[];
}
export interface SeenLine {
  /** p u + q v + r = 0. */
  readonly pqr: readonly [number, number, number];
  /** Which lines of the sheet it can be: their x, metres. */
  readonly canBeXM: readonly number[];
}

/**
 * All ways in which four features together can be the sheet's: four spots, or three spots and a line, whose
 * camera can stand in a rink, on the side of −y (the half turn of the sheet looks the same). Each is handed to `take` with its map
 * in a buffer that the next one overwrites. Two
 * spots and two lines are not enough: a shear along the line through both spots keeps all four. Source: the direct linear map of four points or lines, Hartley & Zisserman 2004, 4.1 (from memory).
 */
export const guessViews = (
  rink: Rink,
  spots: readonly SeenSpot[],
  lines: readonly SeenLine[],
  take: (map: Float64Array, camera: CameraGuess) => void,
  /** So many of the first spots are in each of them. */
  fixedCount = 0,
): void => {
  const everywhere = spotPlacesOf(rink);
  const placesOf = ({ canBe = everywhere }: SeenSpot): readonly IcePoint[] => canBe;
  const rows = new Float64Array(72);
  const map = new Float64Array(9);
  const tryOut = (middleXM: number, middleYM: number): void => {
    if (!solveMap(rows, map)) return;
    const [g, h] = [map[6]!, map[7]!];
    for (let k = 0; k < 3; k++)
      map[3 * k + 2] = map[3 * k + 2]! - map[3 * k]! * middleXM - map[3 * k + 1]! * middleYM;
    if (!(Math.abs(g) < 1 && Math.abs(h) < 1) || !turnsTheRightWay(map)) return;
    const camera = cameraOf(map);
    if (camera !== null && isCanonical(camera)) take(map, camera);
  };
  const isIn = (...used: readonly number[]): boolean =>
    used.every((spot, place) => place >= fixedCount || spot === place);
  const pairs = pairsOf(spots.length).filter(([i, j]) => isIn(i, j));
  const onTwo = (use: (i: number, j: number, a: IcePoint, b: IcePoint) => void): void => {
    for (const [i, j] of pairs)
      for (const a of placesOf(spots[i]!))
        for (const b of placesOf(spots[j]!)) if (!isSamePlace(a, b)) use(i, j, a, b);
  };
  onTwo((i, j, a, b) => {
    const middleXM = (a.xM + b.xM) / 2;
    const middleYM = (a.yM + b.yM) / 2;
    const put = (at: number, spot: SeenSpot, { xM, yM }: IcePoint): void =>
      putPoint(rows, at, xM - middleXM, yM - middleYM, spot.u, spot.v);
    const putAcross = (at: number, line: SeenLine, xM: number): void =>
      putLine(rows, at, xM - middleXM, line.pqr, -REACH_M - middleYM, REACH_M - middleYM);
    const sides = (line: SeenLine, xM: number): boolean => {
      const one = offLine(line, spots[i]!) * (a.xM - xM);
      return one * (offLine(line, spots[j]!) * (b.xM - xM)) > 0;
    };
    // A third spot, and with it a line or a fourth.
    for (let k = j + 1; k < spots.length; k++) {
      if (!isIn(i, j, k)) continue;
      for (const c of placesOf(spots[k]!)) {
        if (isSamePlace(c, a) || isSamePlace(c, b) || !isSameTurn(spots[i]!, spots[j]!, spots[k]!, a, b, c))
          continue;
        for (const line of lines) {
          for (const xM of line.canBeXM) {
            if (!sides(line, xM)) continue;
            put(0, spots[i]!, a);
            put(2, spots[j]!, b);
            put(4, spots[k]!, c);
            putAcross(6, line, xM);
            tryOut(middleXM, middleYM);
          }
        }
        for (let l = k + 1; l < spots.length; l++) {
          for (const d of placesOf(spots[l]!)) {
            if (isSamePlace(d, a) || isSamePlace(d, b) || isSamePlace(d, c)) continue;
            if (!isSameTurn(spots[i]!, spots[j]!, spots[l]!, a, b, d)) continue;
            if (!isSameTurn(spots[i]!, spots[k]!, spots[l]!, a, c, d)) continue;
            put(0, spots[i]!, a);
            put(2, spots[j]!, b);
            put(4, spots[k]!, c);
            put(6, spots[l]!, d);
            tryOut(middleXM, middleYM);
          }
        }
      }
    }
  });
};

const isSamePlace = (a: IcePoint, b: IcePoint): boolean =>
  a === b || (Math.abs(a.xM - b.xM) < SAME_PLACE_M && Math.abs(a.yM - b.yM) < SAME_PLACE_M);
/** Nearer to each other no two markings are that a guess can be made of. */
const SAME_PLACE_M = 0.3;

const REACH_M = 13;

const spotPlacesOf = ({ layout: { neutralSpotM, endSpotM } }: Rink): IcePoint[] =>
  [neutralSpotM, endSpotM].flatMap(({ xM, yM }) =>
    [-1, 1].flatMap(x => [-1, 1].map(y => ({ xM: x * xM, yM: y * yM }))),
  );

const pairsOf = (count: number): [number, number][] =>
  Array.from({ length: count }, (_, i) =>
    Array.from({ length: count - i - 1 }, (_, k): [number, number] => [i, i + 1 + k]),
  ).flat();

const offLine = ({ pqr: [p, q, r] }: SeenLine, { u, v }: SeenSpot): number => p * u + q * v + r;

/** Whether three spots turn in the picture as they do on the ice; y points down in the picture, so the sign is the other one. */
const isSameTurn = (s: SeenSpot, t: SeenSpot, w: SeenSpot, a: IcePoint, b: IcePoint, c: IcePoint): boolean =>
  ((t.u - s.u) * (w.v - s.v) - (t.v - s.v) * (w.u - s.u)) *
    ((b.xM - a.xM) * (c.yM - a.yM) - (b.yM - a.yM) * (c.xM - a.xM)) <
  0;

const turnsTheRightWay = (m: Float64Array): boolean =>
  m[0]! * (m[4]! * m[8]! - m[5]! * m[7]!) -
    m[1]! * (m[3]! * m[8]! - m[5]! * m[6]!) +
    m[2]! * (m[3]! * m[7]! - m[4]! * m[6]!) <
  0;

/** Of a view and its half turn, the one whose camera stands towards −y, or from the very end towards −x. */
export const isCanonical = ({ xM, yM }: CameraGuess): boolean => yM < -1 || (Math.abs(yM) <= 1 && xM < 0);
