import { describe, expect, it } from 'vitest';
import { type Camera, drawnAt, filmFromIceOf } from '../film/camera.reference.ts';
import { inverse3 } from '../film/matrix.ts';
import { TEST_RINK as RINK } from '../film/pinned-view.reference.ts';
import { boardsDistance } from '../rink/boards.ts';
import { drawnPicture } from './drawn-picture.reference.ts';
import { iceOf } from './ice-of.ts';
import { featuresOf } from './picture-features.ts';
import { discsOf } from './strokes.ts';

const CAMERA: Camera = {
  placeM: [4, -32, 15],
  panRad: 0.25,
  tiltRad: 0.42,
  rollRad: 0.01,
  focalPx: 1150,
  widthPx: 1280,
  heightPx: 720,
};
const truth = filmFromIceOf(CAMERA);
const back = inverse3(truth);
const picture = drawnPicture(RINK, CAMERA);
const features = featuresOf(picture, RINK)!;
const placeAt = (x: number, y: number) => iceOf(truth, x, y);

// The truth is the camera that drew the picture.
describe('what is found in a picture whose camera is known', () => {
  it('is the ice: nearly every pixel of it, and hardly one beyond the boards', () => {
    const counts = { ice: 0, found: 0, beyond: 0 };
    for (let y = 4; y < 720; y += 8) {
      for (let x = 4; x < 1280; x += 8) {
        const place = placeAt(x, y);
        const isFound = features.ice.inside[y * 1280 + x] === 1;
        const byM = place === null ? Number.NEGATIVE_INFINITY : boardsDistance(RINK.boards, place);
        if (byM > 0) counts.ice++;
        if (byM > 0 && isFound) counts.found++;
        if (byM < -0.7 && isFound) counts.beyond++;
      }
    }
    expect(counts.found / counts.ice).toBeGreaterThan(0.98);
    expect(counts.beyond / counts.ice).toBeLessThan(0.01);
  });

  it('are red spots, within a third of a pixel; among those of any size no others', () => {
    const spots = discsOf(RINK)
      .filter(({ colour }) => colour === 'red')
      .map(({ atM }) => drawnAt(truth, atM)!)
      .filter(({ xPx, yPx }) => xPx > 20 && yPx > 20 && xPx < 1260 && yPx < 700);
    const awayOf = (from: { xPx: number; yPx: number }, all: readonly { xPx: number; yPx: number }[]) =>
      Math.min(...all.map(one => Math.hypot(one.xPx - from.xPx, one.yPx - from.yPx)));
    const large = features.spots.filter(({ areaPx2 }) => areaPx2 >= 40);
    // The far one, a few pixels wide, runs into the marks round it.
    expect(large.length).toBeGreaterThanOrEqual(spots.length - 1);
    for (const spot of large) expect(awayOf(spot, spots)).toBeLessThan(0.33);
  });

  it('are circles round end spots, the radius of a circle from them all round', () => {
    expect(features.circles.length).toBeGreaterThan(0);
    const middles = discsOf(RINK).filter(({ atM }) => Math.abs(atM.xM) > 10);
    let judged = 0;
    for (const { spot, conic } of features.circles) {
      const place = placeAt(spot.xPx, spot.yPx)!;
      const middle = middles.find(({ atM }) => Math.hypot(atM.xM - place.xM, atM.yM - place.yM) < 0.3);
      if (middle === undefined) continue;
      judged++;
      const half = Math.hypot(1280, 720) / 2;
      const radiusM = RINK.layout.circleRadiusM - RINK.layout.thinLineM / 2;
      for (let k = 0; k < 12; k++) {
        const rad = (k * Math.PI) / 6;
        const px = drawnAt(truth, {
          xM: middle.atM.xM + radiusM * Math.cos(rad),
          yM: middle.atM.yM + radiusM * Math.sin(rad),
        })!;
        const [u, v] = [(px.xPx - 640) / half, (px.yPx - 360) / half];
        const [a, b, c, d, e, f] = conic;
        const value = a * u * u + b * u * v + c * v * v + d * u + e * v + f;
        const slope = Math.hypot(2 * a * u + b * v + d, b * u + 2 * c * v + e);
        expect((Math.abs(value) / slope) * half).toBeLessThan(2);
      }
    }
    expect(judged).toBeGreaterThan(0);
  });

  it('are the blue line and the red one in view, within a pixel of their middle', () => {
    for (const [id, found] of [
      ['blueLinePlusX', features.blueLines],
      ['centreLine', features.redLines],
    ] as const) {
      const xM = RINK.lines[id].centreXM;
      const on = [-6, 0, 8].map(yM => drawnAt(truth, { xM, yM })!);
      const offs = found.map(({ line }) =>
        Math.max(
          ...on.map(({ xPx, yPx }) => Math.abs(line.normalX * xPx + line.normalY * yPx + line.offsetPx)),
        ),
      );
      expect(Math.min(...offs)).toBeLessThan(1);
    }
  });

  it('has a map back that is the inverse of the map there', () => {
    const place = placeAt(500, 300)!;
    const t = back[6] * 500 + back[7] * 300 + back[8];
    expect(place.xM).toBeCloseTo((back[0] * 500 + back[1] * 300 + back[2]) / t, 9);
    expect(place.yM).toBeCloseTo((back[3] * 500 + back[4] * 300 + back[5]) / t, 9);
  });
});
