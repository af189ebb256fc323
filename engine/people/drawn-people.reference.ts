import { type Camera, drawnAt, filmFromIceOf } from '../film/camera.reference.ts';
import type { ColourPicture } from '../film/colour-picture.ts';
import { fitPins } from '../film/fit-pins.ts';
import { inverse3 } from '../film/matrix.ts';
import { TEST_RINK, theFit } from '../film/pinned-view.reference.ts';
import type { PinFit } from '../film/pins.ts';
import type { Random } from '../random/random.ts';
import { boardsDistance } from '../rink/boards.ts';
import { landmarksOf } from '../rink/landmarks.ts';
import type { FilmPoint, IcePoint } from '../units/points.ts';

type Rgb = readonly [number, number, number];

/** Somebody in a drawn picture: a flat figure of four parts that stands on the ice and faces the camera. */
export interface DrawnPerson {
  readonly atM: IcePoint;
  readonly wears: Rgb;
}

/** A letter or badge that lies flat on the ice, square, its middle and half its side, metres. */
export interface DrawnFigure {
  readonly atM: IcePoint;
  readonly halfM: number;
  readonly ink: Rgb;
}

/** A wide camera high on the −y side, as in most rinks. */
export const WIDE_CAMERA: Camera = {
  placeM: [0, -30, 16],
  panRad: 0.05,
  tiltRad: 0.5,
  rollRad: 0.01,
  focalPx: 950,
  widthPx: 1280,
  heightPx: 720,
};

/** A picture of ice with its broad lines, flat figures and people, by projecting points of space through the camera itself; with its exact tie. */
export const drawnPeople = (
  camera: Camera,
  people: readonly DrawnPerson[],
  figures: readonly DrawnFigure[],
  random: Random,
): { readonly picture: ColourPicture; readonly fit: PinFit } => {
  const { widthPx, heightPx } = camera;
  const filmFromIce = filmFromIceOf(camera);
  const back = inverse3(filmFromIce);
  const rgba = new Uint8ClampedArray(4 * widthPx * heightPx);
  for (let y = 0, at = 0; y < heightPx; y++) {
    for (let x = 0; x < widthPx; x++, at += 4) {
      const t = back[6] * (x + 0.5) + back[7] * (y + 0.5) + back[8];
      const xM = (back[0] * (x + 0.5) + back[1] * (y + 0.5) + back[2]) / t;
      const yM = (back[3] * (x + 0.5) + back[4] * (y + 0.5) + back[5]) / t;
      const colour =
        t > 0 && boardsDistance(TEST_RINK.boards, { xM, yM }) > 0 ? onIce(xM, yM, figures) : STANDS;
      // Light falls off to the sides, and a camera has noise.
      const light = 1 - 0.12 * ((2 * x) / widthPx - 1) ** 2;
      for (let k = 0; k < 3; k++) rgba[at + k] = light * colour[k]! + 2 * random.normal();
    }
  }
  const farthestFirst = [...people].sort((a, b) => b.atM.yM - a.atM.yM);
  for (const person of farthestFirst) drawPerson(rgba, camera, person);
  const pins = landmarksOf(TEST_RINK).flatMap(({ id, atM }) => {
    const px = drawnAt(filmFromIce, atM);
    return px && px.xPx > 0 && px.yPx > 0 && px.xPx < widthPx && px.yPx < heightPx
      ? [{ id, iceM: atM, filmPx: px }]
      : [];
  });
  return { picture: { widthPx, heightPx, rgba }, fit: theFit(fitPins(pins, 0.05)) };
};

const ICE: Rgb = [226, 233, 238];
const STANDS: Rgb = [40, 42, 50];
const SKIN: Rgb = [190, 150, 120];
const BLACK: Rgb = [22, 22, 24];

const onIce = (xM: number, yM: number, figures: readonly DrawnFigure[]): Rgb => {
  for (const { minXM, maxXM, colour } of LINES) {
    if (xM > minXM && xM < maxXM) return colour === 'blue' ? [30, 80, 170] : [190, 40, 60];
  }
  const under = figures.find(
    ({ atM, halfM }) => Math.abs(xM - atM.xM) < halfM && Math.abs(yM - atM.yM) < halfM,
  );
  return under?.ink ?? ICE;
};
const LINES = Object.values(TEST_RINK.lines);

/** Skates, legs, trunk and head, as rectangles in the upright plane that faces the camera: from and to, metres up, and half the width. */
const PARTS = [
  { fromM: 0, toM: 0.12, halfM: 0.2, colour: BLACK },
  { fromM: 0.12, toM: 0.75, halfM: 0.16, colour: undefined },
  { fromM: 0.75, toM: 1.4, halfM: 0.27, colour: undefined },
  { fromM: 1.4, toM: 1.65, halfM: 0.12, colour: SKIN },
] as const;

const drawPerson = (rgba: Uint8ClampedArray, camera: Camera, { atM, wears }: DrawnPerson): void => {
  for (const { fromM, toM, halfM, colour } of PARTS) {
    const corner = (asideM: number, upM: number) => drawnInSpace(camera, atM.xM + asideM, atM.yM, upM);
    const [low, high] = [corner(-halfM, fromM), corner(halfM, toM)];
    for (let y = Math.round(high.yPx); y < Math.round(low.yPx); y++) {
      for (let x = Math.round(low.xPx); x < Math.round(high.xPx); x++) {
        if (x < 0 || y < 0 || x >= camera.widthPx || y >= camera.heightPx) continue;
        rgba.set(colour ?? wears, 4 * (y * camera.widthPx + x));
      }
    }
  }
};

/** A point over the ice through the pinhole: a lower, nearer camera sees it as the ice’s own plane moved down would be seen. */
const drawnInSpace = (camera: Camera, xM: number, yM: number, zM: number): FilmPoint => {
  const [x, y, z] = camera.placeM;
  return drawnAt(filmFromIceOf({ ...camera, placeM: [x, y, z - zM] }), { xM, yM })!;
};
