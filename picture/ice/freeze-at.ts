import type { IceCovariance, IcePoint, Rink, Side } from '@icewright/engine';
import { findFreePlace, type Obstacle } from '../drill/free-place.ts';
import type { Pen } from '../pen/pen.ts';
import { drawErrorEllipse, drawFix, drawPictureEdge, drawWay } from './freeze-marks.ts';
import { drawRink, rinkViewBox } from './rink.ts';
import { type SheetPoint, sheetPoint } from './sheet-point.ts';
import { drawPucks } from './things.ts';

/** A frozen picture on the ice, as it is printed small: who stood where, where she should have been, the edge of the picture. */
export interface FreezeDrawn {
  readonly rink: Rink;
  readonly people: readonly {
    readonly side: Side;
    readonly role: string;
    readonly atM: IcePoint;
    readonly covM2?: IceCovariance;
    readonly wantedM?: IcePoint;
  }[];
  readonly puckM?: IcePoint;
  /** The part of the ice that the picture shows. */
  readonly seenM: readonly IcePoint[];
}

/** Metres of ice across in a drawing of a part of the sheet. */
const CLOSE_UP_M = 40;
/** Letters of a small drawing, whatever its scale; the other marks go with them. */
const LETTER_PT = 8;
/** Of the lettering of a role, and of a dot. */
const LETTER_M = 1.12;
const DOT_M = 0.34;
const THIN_FLOOR_M = 0.12;

/** Height of the drawing at this width: the sheet, or the part of it that the picture shows. */
export const freezeHeight = (freeze: FreezeDrawn, width: number): number => {
  const [, , across, down] = boxOf(freeze);
  return (width * down) / across;
};

/** The freeze with its upper left corner at a place, in units of the page. */
export const drawFreezeAt = (
  pen: Pen,
  freeze: FreezeDrawn,
  at: { readonly left: number; readonly top: number; readonly width: number; readonly letterPt?: number },
): void => {
  const [x, y, across, down] = boxOf(freeze);
  const scale = at.width / across;
  pen.place(
    {
      x: at.left - x * scale,
      y: at.top - y * scale,
      scale,
      k: (at.letterPt ?? LETTER_PT) / LETTER_M / scale,
      thinFloor: THIN_FLOOR_M,
    },
    () =>
      pen.clip(
        sink => sink.rect(x, y, across, down),
        () => drawFreezeOnIce(pen, freeze, [x, y, across, down]),
      ),
  );
};

const drawFreezeOnIce = (pen: Pen, { rink, people, puckM, seenM }: FreezeDrawn, box: Box): void => {
  drawRink(pen, rink);
  if (seenM.length > 2) drawPictureEdge(pen, seenM);
  for (const { atM, covM2 } of people) if (covM2) drawErrorEllipse(pen, atM, covM2);
  for (const { atM, wantedM } of people) if (wantedM) drawWay(pen, atM, wantedM, '');
  for (const { side, atM } of people) drawFix(pen, { side, role: '', atM });
  if (puckM) drawPucks(pen, puckM, 1);
  drawRoles(pen, people, box);
};

/** Roles where they cover neither a dot nor each other: on paper nobody can look closer. */
const drawRoles = (pen: Pen, people: FreezeDrawn['people'], [x, y, across, down]: Box): void => {
  const { k } = pen;
  const size = LETTER_M * k;
  const half = size / 2;
  const obstacles: Obstacle[] = people.map(({ atM }) => ({ at: sheetPoint(atM), radius: DOT_M * k }));
  for (const { role, atM } of people) {
    const long = pen.measure('fixRole', role) / 2;
    const isOnSheet = (at: SheetPoint) =>
      at.x - long > x && at.x + long < x + across && at.y - half > y && at.y + half < y + down;
    const reaches = [1.05 * k, long + 0.55 * k, long + 1.3 * k];
    const extent = { x: Math.max(0, long - half), y: 0 };
    const { place } = findFreePlace(sheetPoint(atM), reaches, half, obstacles, isOnSheet, extent);
    pen.text('fixRole', role, place.x, place.y, { anchor: 'middle', drop: 0.35 * size });
    for (const step of [-1, 0, 1])
      obstacles.push({ at: { x: place.x + step * Math.max(0, long - half), y: place.y }, radius: half });
  }
};

type Box = readonly [x: number, y: number, across: number, down: number];

const boxOf = ({ rink, seenM }: FreezeDrawn): Box => {
  const whole = rinkViewBox(rink);
  const xs = seenM.map(one => one.xM);
  const [from, to] = [Math.min(...xs), Math.max(...xs)];
  if (xs.length === 0 || to - from > CLOSE_UP_M - 4 || whole[2] <= CLOSE_UP_M) return whole;
  const middle = (from + to) / 2 - CLOSE_UP_M / 2;
  const left = Math.max(whole[0], Math.min(whole[0] + whole[2] - CLOSE_UP_M, middle));
  return [left, whole[1], CLOSE_UP_M, whole[3]];
};
