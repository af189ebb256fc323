import type { PinFit } from '../film/pins.ts';
import { boardsPointAtArc } from '../rink/along-boards.ts';
import { perimeterOf } from '../rink/boards.ts';
import type { Net, Rink } from '../rink/rink.ts';
import { uprightAt } from '../track/upright.ts';
import type { FilmPoint, IcePoint } from '../units/points.ts';
import { fillConvex, hullOf } from './fill-polygon.ts';

/** A picture’s size, and what is done with each pixel that is hidden: its rank, row by row. */
export interface Hiding {
  readonly width: number;
  readonly height: number;
  readonly hide: (at: number) => void;
}

/** Hides what stands behind the boards, as seen from the camera. */
export const hideBoards = (hiding: Hiding, fit: PinFit, { boards, layout }: Rink): void => {
  const lengthM = perimeterOf(boards);
  let before: Post | null = null;
  for (let piece = 0; piece <= PIECES; piece++) {
    const { pointM } = boardsPointAtArc(boards, (lengthM * piece) / PIECES);
    const now = postAt(fit, pointM, layout.boardHeightM + OVER_M);
    if (now && before && Math.abs(now.footPx.xPx - before.footPx.xPx) < hiding.width) {
      blank(hiding, [before.footPx, now.footPx, now.topPx, before.topPx]);
    }
    before = now;
  }
};
const PIECES = 480;
/** Boards end in a rail. */
const OVER_M = 0.03;

/** Hides the nets: posts and mesh stand on the ice too, and are nobody. */
export const hideNets = (hiding: Hiding, fit: PinFit, { nets }: Rink): void => {
  for (const net of nets) {
    const posts = footprintOf(net).map(atM => postAt(fit, atM, NET_HIGH_M));
    if (!posts.every(post => post !== null)) continue;
    blank(hiding, hullOf(posts.flatMap(post => [post!.footPx, post!.topPx])));
  }
};
/** The crossbar lies 4 ft high; it has a thickness. */
const NET_HIGH_M = 1.3;
const BESIDE_M = 0.1;

const footprintOf = ({ atM, facingRad, openingM, depthM }: Net): IcePoint[] =>
  [-1, 1].flatMap(side =>
    [0, depthM].map(deepM => {
      const asideM = side * (openingM / 2 + BESIDE_M);
      return {
        xM: atM.xM - deepM * Math.cos(facingRad) - asideM * Math.sin(facingRad),
        yM: atM.yM - deepM * Math.sin(facingRad) + asideM * Math.cos(facingRad),
      };
    }),
  );

interface Post {
  readonly footPx: FilmPoint;
  readonly topPx: FilmPoint;
}

const postAt = (fit: PinFit, atM: IcePoint, highM: number): Post | null => {
  const upright = uprightAt(fit, atM);
  if (!upright) return null;
  const { footPx, upPx } = upright;
  return { footPx, topPx: { xPx: footPx.xPx + highM * upPx[0], yPx: footPx.yPx + highM * upPx[1] } };
};

const blank = ({ width, height, hide }: Hiding, polygon: readonly FilmPoint[]): void =>
  fillConvex(polygon, width, height, hide);
