import type { IcePoint } from '../units/points.ts';
import { boardsDistance, halfSpanAtX, halfSpanAtY } from './boards.ts';
import type { Rink } from './rink.ts';

/** A marking that can be recognised in a picture: its stable id, its place (metres) and what a coach calls it. */
export interface Landmark {
  readonly id: string;
  readonly atM: IcePoint;
  readonly words: string;
}

const SIGNS = [1, -1] as const;
type Sign = (typeof SIGNS)[number];

/**
 * All landmarks of the part of the sheet in use. Ids: name, then the signs of the quarter (`endSpot-x+y`), then which part
 * of the marking. Words call +y the bench side, −y the box side, and the ends plus and minus.
 */
export const landmarksOf = (rink: Rink): readonly Landmark[] =>
  [...middleLandmarks(rink), ...SIGNS.flatMap(x => SIGNS.flatMap(y => quarterLandmarks(rink, x, y)))].filter(
    ({ atM }) =>
      atM.xM >= rink.area.minXM - EDGE_M &&
      atM.xM <= rink.area.maxXM + EDGE_M &&
      boardsDistance(rink.boards, atM) >= -EDGE_M,
  );

/** A landmark on the boards lies on them only to rounding. */
const EDGE_M = 1e-6;

const ax = (sign: Sign): string => (sign > 0 ? '+x' : '-x');
const ay = (sign: Sign): string => (sign > 0 ? '+y' : '-y');
const endWords = (sign: Sign): string => (sign > 0 ? 'plus end' : 'minus end');
const sideWords = (sign: Sign): string => (sign > 0 ? 'bench side' : 'box side');

const middleLandmarks = ({ boards, layout }: Rink): readonly Landmark[] => {
  const half = boards.widthM / 2;
  return [
    { id: 'centreSpot', atM: { xM: 0, yM: 0 }, words: 'Centre spot' },
    ...SIGNS.flatMap(y => [
      {
        id: `centreLine.boards${ay(y)}`,
        atM: { xM: 0, yM: y * half },
        words: `Centre line at the boards, ${sideWords(y)}`,
      },
      {
        id: `centreLine.centreCircle${ay(y)}`,
        atM: { xM: 0, yM: y * layout.circleRadiusM },
        words: `Centre circle on the centre line, ${sideWords(y)}`,
      },
    ]),
    ...SIGNS.map(x => ({
      id: `refCrease.boards${ax(x)}`,
      atM: { xM: x * layout.refCreaseRadiusM, yM: -half },
      words: `Officials' crease at the boards, ${endWords(x)}`,
    })),
  ];
};

const quarterLandmarks = (rink: Rink, x: Sign, y: Sign): readonly Landmark[] => {
  const { boards, layout } = rink;
  const quarter = ax(x) + ay(y);
  const where = `${endWords(x)}, ${sideWords(y)}`;
  const at = (id: string, xM: number, yM: number, words: string): Landmark => ({
    id,
    atM: { xM: x * xM, yM: y * yM },
    words: `${words}, ${where}`,
  });
  const onBoards = (id: string, xM: number, words: string): Landmark =>
    at(`${id}${ax(x)}.boards${ay(y)}`, xM, halfSpanAtX(boards, xM), `${words} at the boards`);
  const { goalLineXM, crease, trapezoid } = layout;
  return [
    onBoards('centreLineEdge', layout.thickLineM / 2, 'Centre line edge'),
    onBoards('blueLineInner', layout.blueLineInnerXM, 'Blue line, centre-ice edge,'),
    onBoards('blueLineOuter', layout.blueLineOuterXM, 'Blue line, net-side edge,'),
    onBoards('goalLine', goalLineXM, 'Goal line'),
    at(`neutralSpot${quarter}`, layout.neutralSpotM.xM, layout.neutralSpotM.yM, 'Neutral spot'),
    at(`endSpot${quarter}`, layout.endSpotM.xM, layout.endSpotM.yM, 'End spot'),
    at(`goalPost${quarter}`, goalLineXM, layout.postCentreYM, 'Goal post foot'),
    at(`crease${quarter}.goalLine`, goalLineXM, crease.halfWidthM, 'Crease on the goal line'),
    at(
      `crease${quarter}.arcCorner`,
      goalLineXM - crease.arcMeetsSideM,
      crease.halfWidthM,
      'Crease, side meets arc',
    ),
    ...(trapezoid === null
      ? []
      : [
          at(
            `trapezoid${quarter}.goalLine`,
            goalLineXM,
            trapezoid.goalLineHalfM,
            'Trapezoid on the goal line',
          ),
          at(
            `trapezoid${quarter}.boards`,
            halfSpanAtY(boards, trapezoid.boardsHalfM),
            trapezoid.boardsHalfM,
            'Trapezoid at the end boards',
          ),
        ]),
    ...spotMarks(rink, quarter, at),
  ];
};

const spotMarks = (
  { layout }: Rink,
  quarter: string,
  at: (id: string, xM: number, yM: number, words: string) => Landmark,
): readonly Landmark[] => {
  const { endSpotM: spot, hash, lMark } = layout;
  return SIGNS.flatMap(goalwards =>
    SIGNS.flatMap(boardwards => {
      const part = `${goalwards > 0 ? 'goalSide' : 'blueSide'}.${boardwards > 0 ? 'boardsSide' : 'middleSide'}`;
      const words = `${goalwards > 0 ? 'goal side' : 'blue-line side'}, towards the ${boardwards > 0 ? 'boards' : 'middle'}`;
      return [
        at(
          `hashEnd${quarter}.${part}`,
          spot.xM + goalwards * hash.dxM,
          spot.yM + boardwards * hash.dyToM,
          `Hash mark tip, ${words}`,
        ),
        at(
          `lCorner${quarter}.${part}`,
          spot.xM + goalwards * lMark.startDxM,
          spot.yM + boardwards * lMark.innerDyM,
          `L mark corner, ${words}`,
        ),
      ];
    }),
  );
};
