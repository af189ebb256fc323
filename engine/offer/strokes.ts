import { halfSpanAtY } from '../rink/boards.ts';
import type { Rink } from '../rink/rink.ts';
import type { IcePoint } from '../units/points.ts';

/** What is painted on a sheet as one line: its middle from point to point, metres. */
export interface Stroke {
  readonly colour: 'red' | 'blue';
  readonly widthM: number;
  readonly pointsM: readonly IcePoint[];
}

/** A painted disc, metres. */
export interface Disc {
  readonly colour: 'red' | 'blue';
  readonly atM: IcePoint;
  readonly radiusM: number;
}

const SIGNS = [-1, 1] as const;

/** All painted lines of a sheet but the officials' crease, in metres. Source: the layout of the sheet, with the rule it comes from. */
export const strokesOf = (rink: Rink): Stroke[] => {
  const { layout, lines } = rink;
  const { thinLineM: widthM, circleRadiusM } = layout;
  const across = Object.values(lines).map(
    ({ colour, centreXM: xM, minXM, maxXM, halfSpanM }): Stroke => ({
      colour,
      widthM: maxXM - minXM,
      pointsM: [
        { xM, yM: -halfSpanM },
        { xM, yM: halfSpanM },
      ],
    }),
  );
  const radiusM = circleRadiusM - widthM / 2;
  const centre: Stroke = {
    colour: 'blue',
    widthM,
    pointsM: arcOf({ xM: 0, yM: 0 }, radiusM, 0, 2 * Math.PI),
  };
  const quarters = SIGNS.flatMap(x => SIGNS.flatMap(y => quarterStrokes(rink, x, y)));
  return [...across, centre, ...quarters, ...SIGNS.map(x => creaseStroke(rink, x))];
};

/** The officials' crease: the one marking that tells the two sides of a sheet apart, metres. Source: the layout. */
export const refCreaseOf = ({ layout, boards }: Rink): Stroke => ({
  colour: 'red',
  widthM: layout.thinLineM,
  pointsM: arcOf(
    { xM: 0, yM: -boards.widthM / 2 },
    layout.refCreaseRadiusM - layout.thinLineM / 2,
    0,
    Math.PI,
  ),
});

/** The spots of a sheet, metres. Source: the layout. */
export const discsOf = ({ layout }: Rink): Disc[] => {
  const { neutralSpotM, endSpotM } = layout;
  const red = [neutralSpotM, endSpotM].flatMap(({ xM, yM }) =>
    SIGNS.flatMap(x =>
      SIGNS.map(
        (y): Disc => ({
          colour: 'red',
          atM: { xM: x * xM, yM: y * yM },
          radiusM: layout.spotDiameterM / 2,
        }),
      ),
    ),
  );
  return [...red, { colour: 'blue', atM: { xM: 0, yM: 0 }, radiusM: layout.centreSpotDiameterM / 2 }];
};

const quarterStrokes = (rink: Rink, x: number, y: number): Stroke[] => {
  const { layout, boards } = rink;
  const { endSpotM: spot, thinLineM: widthM, circleRadiusM, hash, lMark, trapezoid, goalLineXM } = layout;
  const red = (pointsM: readonly IcePoint[]): Stroke => ({ colour: 'red', widthM, pointsM });
  const at = (xM: number, yM: number): IcePoint => ({ xM: x * xM, yM: y * yM });
  const inset = widthM / 2;
  const marks = SIGNS.flatMap(sx =>
    SIGNS.flatMap(sy => {
      const from = (dxM: number, dyM: number) => at(spot.xM + sx * dxM, spot.yM + sy * dyM);
      const { startDxM, longM, innerDyM, shortEndDyM } = lMark;
      return [
        red([from(hash.dxM, hash.dyFromM), from(hash.dxM, hash.dyToM)]),
        red([
          from(startDxM + longM, innerDyM + inset),
          from(startDxM + inset, innerDyM + inset),
          from(startDxM + inset, shortEndDyM),
        ]),
      ];
    }),
  );
  const behind =
    trapezoid === null
      ? []
      : [
          red([
            at(goalLineXM, trapezoid.goalLineHalfM),
            at(halfSpanAtY(boards, trapezoid.boardsHalfM), trapezoid.boardsHalfM),
          ]),
        ];
  const circle = arcOf(at(spot.xM, spot.yM), circleRadiusM - inset, 0, 2 * Math.PI);
  return [red(circle), ...marks, ...behind];
};

const creaseStroke = ({ layout }: Rink, x: number): Stroke => {
  const { goalLineXM, crease, thinLineM } = layout;
  const radiusM = crease.radiusM - thinLineM / 2;
  const halfM = crease.halfWidthM - thinLineM / 2;
  const reachRad = Math.asin(Math.min(1, halfM / radiusM));
  const arc = arcOf({ xM: 0, yM: 0 }, radiusM, -reachRad, reachRad);
  const pointsM = [{ xM: 0, yM: -halfM }, ...arc, { xM: 0, yM: halfM }].map(({ xM, yM }) => ({
    xM: x * (goalLineXM - xM),
    yM,
  }));
  return { colour: 'red', widthM: thinLineM, pointsM };
};

const arcOf = ({ xM, yM }: IcePoint, radiusM: number, fromRad: number, toRad: number): IcePoint[] => {
  const count = Math.ceil((Math.abs(toRad - fromRad) / (2 * Math.PI)) * PIECES);
  return Array.from({ length: count + 1 }, (_, i) => {
    const rad = fromRad + ((toRad - fromRad) * i) / count;
    return { xM: xM + radiusM * Math.cos(rad), yM: yM + radiusM * Math.sin(rad) };
  });
};

/** A circle of so many sides strays from the true one by its radius / 1050: 4 mm. */
const PIECES = 72;
