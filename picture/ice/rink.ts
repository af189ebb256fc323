import type { IcePoint, Rink } from '@icewright/engine';
import type { MarkName } from '../marks.ts';
import type { Pen } from '../pen/pen.ts';
import { drawNet } from './net.ts';
import { traceBoards, traceCrease, traceSpotMarks } from './rink-outlines.ts';
import { drawScaleBar } from './scale-bar.ts';

export interface RinkSetting {
  /** A scale bar in metres and feet in the lower right of the sheet. */
  readonly scaleBar?: boolean;
  /** The dot lines, lengthwise through the end spots. */
  readonly dotLines?: boolean;
}

/** Margin about the boards in a picture of the whole sheet, metres. */
const MARGIN_M = 0.5;
const CENTRE_SPOT_HALF_M = 0.2;
const SCALE_BAR_FROM_SIDE_M = 2.75;
/** Where the scale bar begins, from the middle towards +x, in shares of the half length. */
const SCALE_BAR_SHARE = 0.433;

/** The sheet, true to size: pale paint, the red line broken so that it reads without red. */
export const drawRink = (pen: Pen, rink: Rink, setting: RinkSetting = {}): void => {
  pen.group('rink', {}, () => {
    if (isWhole(rink)) drawSheet(pen, rink);
    else {
      const { area } = rink;
      pen.clip(
        sink =>
          sink.rect(
            area.minXM - MARGIN_M,
            -area.maxYM - MARGIN_M,
            area.maxXM - area.minXM + 2 * MARGIN_M,
            area.maxYM - area.minYM + 2 * MARGIN_M,
          ),
        () => drawSheet(pen, rink),
      );
    }
    for (const divider of rink.dividers) {
      drawAcross(pen, 'divider', divider.fromM, divider.toM);
    }
    for (const net of rink.nets) drawNet(pen, net, 'net');
    if (setting.dotLines) drawDotLines(pen, rink);
  });
  if (setting.scaleBar) {
    drawScaleBar(pen, {
      x: rink.area.minXM + (rink.area.maxXM - rink.area.minXM) * (0.5 + SCALE_BAR_SHARE / 2),
      y: -rink.area.minYM - SCALE_BAR_FROM_SIDE_M,
    });
  }
};

/** The picture's frame in drawing units: the part in use and a margin. */
export const rinkViewBox = (
  rink: Rink,
  upright = false,
): readonly [x: number, y: number, width: number, height: number] => {
  const { minXM, maxXM, minYM, maxYM } = rink.area;
  const length = maxXM - minXM + 2 * MARGIN_M;
  const width = maxYM - minYM + 2 * MARGIN_M;
  return upright
    ? [-maxYM - MARGIN_M, -maxXM - MARGIN_M, width, length]
    : [minXM - MARGIN_M, -maxYM - MARGIN_M, length, width];
};

/** How a sheet on end is turned. */
export const UPRIGHT_RAD = -Math.PI / 2;

/** The sheet on end: +x up the page, +y to the left. Letters stay upright. */
export const drawUpright = (pen: Pen, draw: () => void): void => pen.place({ turnRad: UPRIGHT_RAD }, draw);

const isWhole = ({ area, boards }: Rink): boolean =>
  area.maxXM - area.minXM >= boards.lengthM - 1e-6 && area.maxYM - area.minYM >= boards.widthM - 1e-6;

const drawSheet = (pen: Pen, rink: Rink): void => {
  const { layout, lines } = rink;
  pen.path('ice', sink => traceBoards(sink, rink.boards, 0));
  for (const end of [-1, 1]) pen.path('crease', sink => traceCrease(sink, layout, end));
  for (const id of ['blueLineMinusX', 'blueLinePlusX'] as const) {
    drawLineAt(pen, 'blueLine', lines[id].centreXM, lines[id].halfSpanM);
  }
  drawLineAt(pen, 'centreLine', 0, lines.centreLine.halfSpanM);
  drawLineAt(pen, 'centreBreak', 0, lines.centreLine.halfSpanM - 0.55);
  for (const id of ['goalLineMinusX', 'goalLinePlusX'] as const) {
    drawLineAt(pen, 'redPaint', lines[id].centreXM, lines[id].halfSpanM);
  }
  pen.path('redPaint', sink => {
    for (const end of [-1, 1]) {
      traceTrapezoid(sink, rink, end);
      traceCrease(sink, layout, end);
      for (const side of [-1, 1]) {
        traceSpotMarks(sink, layout, end * layout.endSpotM.xM, side * layout.endSpotM.yM);
      }
    }
    const ref = layout.refCreaseRadiusM - layout.thinLineM / 2;
    sink.moveTo(-ref, rink.boards.widthM / 2);
    sink.arc(0, rink.boards.widthM / 2, ref, Math.PI, 2 * Math.PI);
  });
  pen.circle('bluePaint', 0, 0, layout.circleRadiusM - layout.thinLineM / 2);
  for (const spot of [layout.endSpotM, layout.neutralSpotM]) {
    for (const end of [-1, 1]) {
      for (const side of [-1, 1]) {
        pen.circle('redSpot', end * spot.xM, side * spot.yM, layout.spotDiameterM / 2);
      }
    }
  }
  pen.circle('blueSpot', 0, 0, Math.max(layout.centreSpotDiameterM / 2, CENTRE_SPOT_HALF_M));
  pen.path('boards', sink => traceBoards(sink, rink.boards, 0.06));
};

const traceTrapezoid = (sink: Parameters<Parameters<Pen['path']>[1]>[0], rink: Rink, end: number): void => {
  const { trapezoid, goalLineXM } = rink.layout;
  if (!trapezoid) return;
  for (const side of [-1, 1]) {
    sink.moveTo(end * goalLineXM, side * trapezoid.goalLineHalfM);
    sink.lineTo((end * rink.boards.lengthM) / 2, side * trapezoid.boardsHalfM);
  }
};

const drawLineAt = (pen: Pen, mark: MarkName, xM: number, halfSpanM: number): void =>
  drawAcross(pen, mark, { xM, yM: halfSpanM }, { xM, yM: -halfSpanM });

const drawAcross = (pen: Pen, mark: MarkName, fromM: IcePoint, toM: IcePoint): void =>
  pen.path(mark, sink => {
    sink.moveTo(fromM.xM, -fromM.yM);
    sink.lineTo(toM.xM, -toM.yM);
  });

const drawDotLines = (pen: Pen, rink: Rink): void => {
  const { endSpotM, goalLineXM } = rink.layout;
  for (const side of [-1, 1]) {
    drawAcross(
      pen,
      'dotLine',
      { xM: -goalLineXM, yM: side * endSpotM.yM },
      { xM: goalLineXM, yM: side * endSpotM.yM },
    );
  }
};
