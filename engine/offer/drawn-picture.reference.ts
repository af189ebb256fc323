import { type Camera, filmFromIceOf } from '../film/camera.reference.ts';
import type { ColourPicture } from '../film/colour-picture.ts';
import { inverse3 } from '../film/matrix.ts';
import { randomOf } from '../random/random.ts';
import { boardsDistance } from '../rink/boards.ts';
import type { Rink } from '../rink/rink.ts';
import { discsOf, refCreaseOf, strokesOf } from './strokes.ts';

/** A picture of a bare sheet by a known camera: ice with noise, markings, darkness round it. Slow and plain, four looks a pixel. */
export const drawnPicture = (rink: Rink, camera: Camera, seed = 1, noise = 3): ColourPicture => {
  const { widthPx, heightPx } = camera;
  const m = inverse3(filmFromIceOf(camera));
  const random = randomOf(seed);
  const paintAt = painterOf(rink);
  const rgba = new Uint8ClampedArray(4 * widthPx * heightPx);
  for (let y = 0; y < heightPx; y++) {
    for (let x = 0; x < widthPx; x++) {
      const sum = [0, 0, 0];
      for (const [dx, dy] of LOOKS) {
        const t = m[6] * (x + dx) + m[7] * (y + dy) + m[8];
        const xM = (m[0] * (x + dx) + m[1] * (y + dy) + m[2]) / t;
        const yM = (m[3] * (x + dx) + m[4] * (y + dy) + m[5]) / t;
        const colour = t > 0 && boardsDistance(rink.boards, { xM, yM }) > 0 ? paintAt(xM, yM) : DARK;
        for (let k = 0; k < 3; k++) sum[k] = sum[k]! + colour[k]! / LOOKS.length;
      }
      for (let k = 0; k < 3; k++) rgba[4 * (y * widthPx + x) + k] = sum[k]! + noise * random.normal();
      rgba[4 * (y * widthPx + x) + 3] = 255;
    }
  }
  return { widthPx, heightPx, rgba };
};

type Colour = readonly [number, number, number];
const DARK: Colour = [20, 22, 28];
const ICE: Colour = [226, 233, 240];
const RED: Colour = [200, 30, 45];
const BLUE: Colour = [35, 75, 170];
const LOOKS = [
  [0.25, 0.25],
  [0.75, 0.25],
  [0.25, 0.75],
  [0.75, 0.75],
] as const;

/** Which colour a place has; pieces are looked up by the square of two metres it lies in. */
const painterOf = (rink: Rink): ((xM: number, yM: number) => Colour) => {
  type Piece = { ax: number; ay: number; bx: number; by: number; half: number; colour: Colour };
  const pieces: Piece[] = [...strokesOf(rink), refCreaseOf(rink)].flatMap(({ colour, widthM, pointsM }) =>
    pointsM.slice(1).map((b, i) => ({
      ax: pointsM[i]!.xM,
      ay: pointsM[i]!.yM,
      bx: b.xM,
      by: b.yM,
      half: widthM / 2,
      colour: colour === 'red' ? RED : BLUE,
    })),
  );
  for (const { colour, atM, radiusM } of discsOf(rink)) {
    pieces.push({
      ax: atM.xM,
      ay: atM.yM,
      bx: atM.xM,
      by: atM.yM,
      half: radiusM,
      colour: colour === 'red' ? RED : BLUE,
    });
  }
  const isOn = ({ ax, ay, bx, by }: Piece, x: number, y: number, within: number): boolean => {
    const square = (bx - ax) ** 2 + (by - ay) ** 2;
    const along = square > 0 ? ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / square : 0;
    const t = Math.max(0, Math.min(1, along));
    return Math.hypot(x - ax - t * (bx - ax), y - ay - t * (by - ay)) <= within;
  };
  const squares = new Map<string, Piece[]>();
  return (xM, yM) => {
    const [i, j] = [Math.floor(xM / 2), Math.floor(yM / 2)];
    const key = `${i},${j}`;
    let near = squares.get(key);
    if (near === undefined) {
      near = pieces.filter(piece => isOn(piece, 2 * i + 1, 2 * j + 1, piece.half + Math.SQRT2));
      squares.set(key, near);
    }
    return near.find(piece => isOn(piece, xM, yM, piece.half))?.colour ?? ICE;
  };
};
