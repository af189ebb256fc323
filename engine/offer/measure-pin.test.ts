import { describe, expect, it } from 'vitest';
import { type Camera, drawnAt, filmFromIceOf } from '../film/camera.reference.ts';
import { TEST_RINK as RINK } from '../film/pinned-view.reference.ts';
import { landmarksOf } from '../rink/landmarks.ts';
import { drawnPicture } from './drawn-picture.reference.ts';
import { findIce } from './find-ice.ts';
import { measurePin } from './measure-pin.ts';
import { paintMapsOf } from './paint-maps.ts';
import { discsOf, strokesOf } from './strokes.ts';

const CAMERA: Camera = {
  placeM: [16, -30, 14],
  panRad: 0.1,
  tiltRad: 0.45,
  rollRad: 0,
  focalPx: 1500,
  widthPx: 1280,
  heightPx: 720,
};
const picture = drawnPicture(RINK, CAMERA);
const paint = paintMapsOf(picture, findIce(picture)!);
const truth = filmFromIceOf(CAMERA);
const sheet = { strokes: strokesOf(RINK), discs: discsOf(RINK) };
const placeOf = new Map(landmarksOf(RINK).map(({ id, atM }) => [id, atM]));

/** The same view shifted in the picture by so many pixels: what a map that is a little off draws. */
const shifted = (dx: number, dy: number): number[] =>
  truth.map((value, k) => value + (k < 3 ? dx * truth[6 + k]! : k < 6 ? dy * truth[3 + k]! : 0));

const measured = (id: string, dx: number, dy: number) => {
  const at = placeOf.get(id)!;
  const filmFromIce = shifted(dx, dy);
  const { xPx, yPx } = drawnAt(truth, at)!;
  const pin = measurePin(paint, { ...sheet, filmFromIce }, at, xPx + dx, yPx + dy);
  return pin === null ? null : { offPx: Math.hypot(pin.xPx - xPx, pin.yPx - yPx), sdPx: pin.sdPx };
};

// The truth is the camera that drew the picture.
describe('a landmark measured in a picture', () => {
  it.each(['endSpot+x-y', 'neutralSpot+x+y', 'lCorner+x-y.goalSide.middleSide'])(
    'is found to a third of a pixel from a drawing that is a pixel and more off: %s',
    id => {
      for (const [dx, dy] of [
        [0, 0],
        [1.2, -0.4],
        [-0.7, 0.9],
      ] as const) {
        const pin = measured(id, dx, dy)!;
        expect(pin.offPx).toBeLessThan(0.33);
        expect(pin.offPx).toBeLessThan(3 * pin.sdPx + 0.1);
      }
    },
  );

  it('is none where the drawing is far off', () => {
    expect(measured('endSpot+x-y', 40, 25)).toBeNull();
  });

  it('is none on a line without a corner', () => {
    const circle = RINK.layout.endSpotM;
    for (const at of [
      { xM: RINK.lines.blueLinePlusX.centreXM, yM: -4 },
      { xM: RINK.lines.goalLinePlusX.centreXM, yM: 9 },
      { xM: circle.xM - RINK.layout.circleRadiusM, yM: -circle.yM },
    ]) {
      const { xPx, yPx } = drawnAt(truth, at)!;
      expect(measurePin(paint, { ...sheet, filmFromIce: truth }, at, xPx, yPx)).toBeNull();
    }
  });
});
