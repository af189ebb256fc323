import { describe, expect, it } from 'vitest';
import { drawnAt, filmFromIceOf, isInPicture, someCamera } from '../film/camera.reference.ts';
import { TEST_RINK } from '../film/pinned-view.reference.ts';
import { randomOf } from '../random/random.ts';
import type { FilmPoint } from '../units/points.ts';
import { cameraOf } from './camera-of.ts';
import { guessByCircles } from './circle-guesses.ts';
import { circleView } from './circle-view.ts';
import { ellipseThrough } from './ellipse-through.ts';
import { iceOf } from './ice-of.ts';
import { putLine, putPoint, solveMap } from './map-of-four.ts';
import { guessViews } from './view-guesses.ts';

const HALF = Math.hypot(1280, 720) / 2;
const uv = ({ xPx, yPx }: FilmPoint): [number, number] => [(xPx - 640) / HALF, (yPx - 360) / HALF];
const { endSpotM, neutralSpotM, circleRadiusM, thinLineM } = TEST_RINK.layout;

/** A camera that has an end circle whole in view. */
const someView = (random: ReturnType<typeof randomOf>) => {
  for (;;) {
    const camera = someCamera(random);
    const truth = filmFromIceOf(camera);
    const radiusM = circleRadiusM - thinLineM / 2;
    const ring = Array.from({ length: 24 }, (_, k) => {
      const [cos, sin] = [Math.cos((k * Math.PI) / 12), Math.sin((k * Math.PI) / 12)];
      return drawnAt(truth, { xM: endSpotM.xM + radiusM * cos, yM: endSpotM.yM + radiusM * sin });
    });
    if (!ring.every(px => isInPicture(camera, px))) continue;
    const points = ring.map(px => uv(px!));
    const conic = ellipseThrough(
      points.map(([u]) => u),
      points.map(([, v]) => v),
    )!;
    return { camera, truth, radiusM, conic, middle: uv(drawnAt(truth, endSpotM)!) };
  }
};

// Every truth here is a pinhole camera's own picture, by `filmFromIceOf`.
describe('a circle and its middle', () => {
  it('give every distance and every angle from the middle', () => {
    const random = randomOf(3);
    for (let round = 0; round < 40; round++) {
      const { truth, radiusM, conic, middle } = someView(random);
      const view = circleView(conic, ...middle, radiusM)!;
      const offsets = [
        [3, 1],
        [-6, 2],
        [0, -5],
      ] as const;
      const seen = offsets.map(([dx, dy]) => {
        const px = drawnAt(truth, { xM: endSpotM.xM + dx, yM: endSpotM.yM + dy })!;
        return iceOf(view, ...uv(px))!;
      });
      offsets.forEach(([dx, dy], k) => {
        expect(Math.hypot(seen[k]!.xM, seen[k]!.yM)).toBeCloseTo(Math.hypot(dx, dy), 3);
      });
      const turn = (k: number) =>
        Math.atan2(seen[k]!.yM, seen[k]!.xM) - Math.atan2(offsets[k]![1], offsets[k]![0]);
      for (const k of [1, 2]) expect(Math.cos(turn(k) - turn(0))).toBeCloseTo(1, 5);
    }
  });

  it('with one spot are among the guesses as the true view', () => {
    const random = randomOf(9);
    for (let round = 0; round < 20; round++) {
      const { truth, conic, middle } = someView(random);
      const [u, v] = middle;
      const [otherU, otherV] = uv(drawnAt(truth, neutralSpotM)!);
      const spot = { u, v };
      let nearestM = Number.POSITIVE_INFINITY;
      guessByCircles(TEST_RINK, [{ spot, conic }], [spot, { u: otherU, v: otherV }], [], map => {
        const place = iceOf(map, ...uv(drawnAt(truth, { xM: 15, yM: 3 })!));
        if (place) nearestM = Math.min(nearestM, Math.hypot(place.xM - 15, place.yM - 3));
      });
      expect(nearestM).toBeLessThan(0.01);
    }
  });

  it('say nothing when the middle is outside', () => {
    const { conic, radiusM } = someView(randomOf(1));
    expect(circleView(conic, 5, 5, radiusM)).toBeNull();
  });
});

describe('the camera of a view', () => {
  it('is the one that drew it, and none is told for a mirrored or a buried one', () => {
    const random = randomOf(4);
    for (let round = 0; round < 50; round++) {
      const camera = someCamera(random);
      const m = filmFromIceOf(camera);
      const map = Float64Array.from([0, 1, 2, 3, 4, 5, 6, 7, 8], k =>
        k < 3 ? (m[k]! - 640 * m[6 + k]!) / HALF : k < 6 ? (m[k]! - 360 * m[3 + k]!) / HALF : m[k]!,
      );
      const found = cameraOf(map)!;
      expect(found.xM).toBeCloseTo(camera.placeM[0], 6);
      expect(found.yM).toBeCloseTo(camera.placeM[1], 6);
      expect(found.heightM).toBeCloseTo(camera.placeM[2], 6);
      expect(found.focal * HALF).toBeCloseTo(camera.focalPx, 4);
      expect(cameraOf(map.map((value, k) => (k % 3 === 1 ? -value : value)))).toBeNull();
    }
  });
});

describe('four features', () => {
  it('of known places give the map that drew them, lines as well as points', () => {
    const random = randomOf(6);
    for (let round = 0; round < 30; round++) {
      const m = filmFromIceOf(someCamera(random));
      const scale = (k: number) =>
        k < 3 ? (m[k]! - 640 * m[6 + k]!) / HALF : k < 6 ? (m[k]! - 360 * m[3 + k]!) / HALF : m[k]!;
      const truth = Float64Array.from([0, 1, 2, 3, 4, 5, 6, 7, 8], scale);
      const rows = new Float64Array(72);
      const draw = (x: number, y: number): [number, number] => {
        const w = truth[6]! * x + truth[7]! * y + truth[8]!;
        return [
          (truth[0]! * x + truth[1]! * y + truth[2]!) / w,
          (truth[3]! * x + truth[4]! * y + truth[5]!) / w,
        ];
      };
      putPoint(rows, 0, 3, 2, ...draw(3, 2));
      putPoint(rows, 2, -5, -4, ...draw(-5, -4));
      putPoint(rows, 4, 4, -3, ...draw(4, -3));
      const [[au, av], [bu, bv]] = [draw(-8, -3), draw(-8, 5)];
      putLine(rows, 6, -8, [av - bv, bu - au, au * bv - bu * av], -13, 13);
      const found = new Float64Array(9);
      expect(solveMap(rows, found)).toBe(true);
      for (let k = 0; k < 9; k++) expect(found[k]! * truth[8]!).toBeCloseTo(truth[k]!, 6);
    }
  });

  it('are among the guesses as the true view, with the camera on the canonical side', () => {
    const random = randomOf(8);
    const truth = filmFromIceOf(someCamera(random));
    const spots = [
      neutralSpotM,
      { xM: neutralSpotM.xM, yM: -neutralSpotM.yM },
      endSpotM,
      { xM: endSpotM.xM, yM: -endSpotM.yM },
    ];
    const seen = spots.map(spot => uv(drawnAt(truth, spot)!)).map(([u, v]) => ({ u, v }));
    let nearestM = Number.POSITIVE_INFINITY;
    guessViews(TEST_RINK, seen, [], (map, camera) => {
      expect(camera.yM).toBeLessThan(1);
      const place = iceOf(map, ...uv(drawnAt(truth, { xM: 12, yM: 3 })!));
      if (place) nearestM = Math.min(nearestM, Math.hypot(place.xM - 12, place.yM - 3));
    });
    expect(nearestM).toBeLessThan(1e-6);
  });
});
