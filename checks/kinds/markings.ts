import { halfSpanAtX, type Rink, type RinkCode, rinkOfSize } from '@icewright/engine';
import type { Compare } from '../compare.ts';
import { CaseShapeError, type Fields } from '../fields.ts';
import type { KindCase } from '../kind.ts';

/** Every figure of a code's markings that the file gives, by its name there. */
export const runMarkings = ({ input, expected, tolerance }: KindCase, compare: Compare): void => {
  const size = input.fields('rink');
  const rink = rinkOfSize(
    {
      lengthM: size.number('lengthM'),
      widthM: size.number('widthM'),
      cornerRadiusM: size.number('cornerRadiusM'),
    },
    codeOf(input),
  );
  const allowed = tolerance.numberOr('markingsM', 1e-6);
  compareNumbers(figuresOf(rink), expected, '', allowed, compare);
  const { lMark, crease, endSpotM, neutralSpotM } = rink.layout;
  if (expected.has('lMark'))
    compareNumbers({ ...lMark }, expected.fields('lMark'), 'lMark.', allowed, compare);
  if (expected.has('crease'))
    compareNumbers({ ...crease }, expected.fields('crease'), 'crease.', allowed, compare);
  for (const [name, spot] of [
    ['endSpotsM', endSpotM],
    ['neutralSpotsM', neutralSpotM],
  ] as const) {
    if (!expected.has(name)) continue;
    for (const [x, y] of expected.pairs(name))
      compare.pair(name, [Math.sign(x) * spot.xM, Math.sign(y) * spot.yM], [x, y], allowed, 'm');
  }
};

const codeOf = (input: Fields): RinkCode => {
  const code = input.text('code');
  if (code !== 'NHL-type' && code !== 'IIHF-type')
    throw new CaseShapeError(`input.code "${code}" is not known`);
  return code;
};

const figuresOf = (rink: Rink): Readonly<Record<string, number>> => {
  const { layout, boards, lines } = rink;
  return {
    centreLineXM: lines.centreLine.centreXM,
    goalLineXM: layout.goalLineXM,
    goalLineHalfSpanM: halfSpanAtX(boards, layout.goalLineXM),
    blueLineXInnerM: layout.blueLineInnerXM,
    blueLineXCentreM: layout.blueLineCentreXM,
    blueLineXOuterM: layout.blueLineOuterXM,
    neutralBetweenInnerEdgesM: 2 * layout.blueLineInnerXM,
    thinLineM: layout.thinLineM,
    thickLineM: layout.thickLineM,
    circleOuterRadiusM: layout.circleRadiusM,
    hashDxM: layout.hash.dxM,
    hashDyFromM: layout.hash.dyFromM,
    hashDyToM: layout.hash.dyToM,
    refCreaseRadiusM: layout.refCreaseRadiusM,
    centreSpotDiameterM: layout.centreSpotDiameterM,
    spotDiameterM: layout.spotDiameterM,
    postCentreYM: layout.postCentreYM,
    ...(layout.trapezoid === null
      ? {}
      : {
          trapezoidGoalLineHalfM: layout.trapezoid.goalLineHalfM,
          trapezoidBoardsHalfM: layout.trapezoid.boardsHalfM,
        }),
  };
};

const compareNumbers = (
  figures: Readonly<Record<string, number>>,
  expected: Fields,
  prefix: string,
  allowed: number,
  compare: Compare,
): void => {
  for (const [name, value] of Object.entries(figures))
    if (expected.has(name)) compare.number(prefix + name, value, expected.number(name), allowed, 'm');
};
