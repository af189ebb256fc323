import type { IceCovariance, IcePoint, IceVelocity, Side } from '@icewright/engine';
import type { Pen } from '../pen/pen.ts';
import { drawSkateHead } from './heads.ts';
import { tracePoints } from './polyline.ts';
import { along, directionRad, distanceOf, sheetPoint, sheetPoints } from './sheet-point.ts';

/** √ of the chi-square quantile 0.95 with two degrees of freedom: half axes of a 95 % ellipse in standard deviations. */
const ELLIPSE_95 = Math.sqrt(5.991464547107979);
const KAPPA = 0.5522847498307936;
const AHEAD_S = 0.4;
const FIX_M = 0.26;
const PIN_HALF_M = 0.7;

/** Where someone is, give or take: the 95 % ellipse of a placed skater. */
export const drawErrorEllipse = (pen: Pen, atM: IcePoint, covariance: IceCovariance): void => {
  const at = sheetPoint(atM);
  const mean = (covariance.xxM2 + covariance.yyM2) / 2;
  const half = (covariance.xxM2 - covariance.yyM2) / 2;
  const reach = Math.hypot(half, covariance.xyM2);
  const long = ELLIPSE_95 * Math.sqrt(mean + reach);
  const short = ELLIPSE_95 * Math.sqrt(Math.max(0, mean - reach));
  const turnRad = -Math.atan2(covariance.xyM2, half) / 2;
  pen.place({ x: at.x, y: at.y, turnRad }, () => {
    for (const mark of ['ellipse', 'ellipseEdge'] as const) {
      pen.path(mark, sink => {
        sink.moveTo(long, 0);
        sink.bezierCurveTo(long, KAPPA * short, KAPPA * long, short, 0, short);
        sink.bezierCurveTo(-KAPPA * long, short, -long, KAPPA * short, -long, 0);
        sink.bezierCurveTo(-long, -KAPPA * short, -KAPPA * long, -short, 0, -short);
        sink.bezierCurveTo(KAPPA * long, -short, long, -KAPPA * short, long, 0);
        sink.closePath();
      });
    }
  });
};

/** Someone placed on a freeze: a small dot where the feet are, so that the ellipse shows, and the role beside it. */
export const drawFix = (
  pen: Pen,
  fix: { readonly side: Side; readonly role: string; readonly atM: IcePoint; readonly selected?: boolean },
): void => {
  const { x, y } = sheetPoint(fix.atM);
  if (fix.selected) pen.circle('selected', x, y, 0.9 * pen.k);
  pen.circle(fix.side === 'us' ? 'fixUs' : 'fixThem', x, y, FIX_M * pen.k);
  pen.text('fixRole', fix.role, x + 0.5 * pen.k, y - 0.45 * pen.k);
};

/** From where she was to where she should have been: dotted and warm, with the distance. */
export const drawWay = (pen: Pen, fromM: IcePoint, toM: IcePoint, words: string): void => {
  const from = sheetPoint(fromM);
  const to = sheetPoint(toM);
  const turnRad = directionRad(from, to);
  const span = distanceOf(from, to);
  if (span < 2.2 * pen.k) return;
  const start = along(from, turnRad, 1.1 * pen.k);
  const tip = along(to, turnRad, -1.1 * pen.k);
  pen.path('way', sink => tracePoints(sink, [start, along(tip, turnRad, -0.5 * pen.k)]));
  drawSkateHead(pen, tip, turnRad, 'wayHead');
  pen.text('labelWarm', words, (from.x + to.x) / 2, (from.y + to.y) / 2, {
    anchor: 'middle',
    drop: -0.6 * pen.k,
  });
};

/** A stroke as long as she goes in the next 0.4 s. */
export const drawGoing = (pen: Pen, atM: IcePoint, going: IceVelocity): void => {
  const from = sheetPoint(atM);
  pen.path('stick', sink =>
    tracePoints(sink, [from, { x: from.x + going.xMps * AHEAD_S, y: from.y - going.yMps * AHEAD_S }]),
  );
};

/** Somebody the picture does not show: dotted, with a question mark; the tool does not guess. */
export const drawUnseen = (pen: Pen, atM: IcePoint, words: string): void => {
  const at = sheetPoint(atM);
  pen.circle('unseen', at.x, at.y, 0.8 * pen.k);
  pen.text('labelBold', '?', at.x, at.y, { anchor: 'middle', drop: 0.36 * pen.k });
  pen.text('label', words, at.x + 1.4 * pen.k, at.y, { drop: 0.3 * pen.k });
};

/** A named area, its edge dotted like a limit on a chart. */
export const drawZone = (pen: Pen, outlineM: readonly IcePoint[], words: string): void => {
  const points = sheetPoints(outlineM);
  pen.path('zone', sink => {
    tracePoints(sink, points);
    sink.closePath();
  });
  const middle = points.reduce((sum, point) => ({ x: sum.x + point.x, y: sum.y + point.y }), { x: 0, y: 0 });
  pen.text('area', words, middle.x / points.length, middle.y / points.length, {
    anchor: 'middle',
    drop: 0.35,
  });
};

/** The limit of the picture on the ice. */
export const drawPictureEdge = (pen: Pen, outlineM: readonly IcePoint[]): void =>
  pen.path('pictureEdge', sink => {
    tracePoints(sink, sheetPoints(outlineM));
    sink.closePath();
  });

/** A cross on a rink marking, with its number; warm when it disagrees with the others. */
export const drawPin = (pen: Pen, atM: IcePoint, name: string, agrees: boolean): void => {
  const { x, y } = sheetPoint(atM);
  const half = PIN_HALF_M * pen.k;
  pen.path(agrees ? 'pin' : 'pinBad', sink => {
    sink.moveTo(x - half, y);
    sink.lineTo(x + half, y);
    sink.moveTo(x, y - half);
    sink.lineTo(x, y + half);
  });
  pen.text(agrees ? 'pinName' : 'pinBadName', name, x + 0.3 * pen.k, y - 0.35 * pen.k);
};
