import {
  alongBoardsM,
  boardsDistance,
  boardsRayHit,
  cornerCentreOf,
  halfSpanAtX,
  iceAreaOf,
  isNone,
  nearestBoardsPoint,
  perimeterOf,
} from '@icewright/engine';
import type { Kind, KindCase } from '../kind.ts';
import { boardsOfCase, icePointOf, pairOf } from './ice-values.ts';
import { runMarkings } from './markings.ts';

const METRES = 1e-6;

const lengthsOf = ({ tolerance }: KindCase): number => tolerance.numberOr('absoluteM', METRES);

/** `rink.json`: geometry of the boards, and the markings. */
export const RINK_KINDS: readonly Kind[] = [
  {
    name: 'boards',
    run: (check, compare) => {
      const boards = boardsOfCase(check.input);
      const allowed = lengthsOf(check);
      const corner = cornerCentreOf(boards);
      const { expected } = check;
      compare.number('perimeterM', perimeterOf(boards), expected.number('perimeterM'), allowed, 'm');
      compare.number('areaM2', iceAreaOf(boards), expected.number('areaM2'), allowed, 'm²');
      compare.number('straightSideM', 2 * corner.xM, expected.number('straightSideM'), allowed, 'm');
      compare.number('straightEndM', 2 * corner.yM, expected.number('straightEndM'), allowed, 'm');
      const arcM = (Math.PI / 2) * boards.cornerRadiusM;
      compare.number('cornerArcM', arcM, expected.number('cornerArcM'), allowed, 'm');
      for (const [x, y] of expected.pairs('cornerCentresM')) {
        const centre = [Math.sign(x) * corner.xM, Math.sign(y) * corner.yM] as const;
        compare.pair('cornerCentresM', centre, [x, y], allowed, 'm');
      }
    },
  },
  { name: 'markings', run: runMarkings },
  {
    name: 'crossLine',
    run: (check, compare) => {
      const span = halfSpanAtX(boardsOfCase(check.input), check.input.number('xM'));
      compare.number('halfSpanM', span, check.expected.number('halfSpanM'), lengthsOf(check), 'm');
    },
  },
  {
    name: 'nearest',
    run: (check, compare) => {
      const boards = boardsOfCase(check.input);
      const pointM = icePointOf(check.input.pair('pointM'));
      const found = nearestBoardsPoint(boards, pointM);
      const allowed = lengthsOf(check);
      const { expected, tolerance } = check;
      compare.number('distanceM', boardsDistance(boards, pointM), expected.number('distanceM'), allowed, 'm');
      compare.pair('boardsPointM', pairOf(found.pointM), expected.pair('boardsPointM'), allowed, 'm');
      const normal = tolerance.numberOr('normal', METRES);
      compare.pair('inwardNormal', pairOf(found.normal), expected.pair('inwardNormal'), normal, '1');
      if (!expected.isNull('part')) compare.same('part', found.part, expected.text('part'));
    },
  },
  {
    name: 'ray',
    run: (check, compare) => {
      const { input, expected, tolerance } = check;
      const hit = boardsRayHit(
        boardsOfCase(input),
        icePointOf(input.pair('startM')),
        input.number('directionRad'),
      );
      if (isNone(hit)) return compare.same('hit', hit.reason, 'a hit');
      const angle = tolerance.numberOr('angleRad', METRES);
      const isNearTangent = expected.number('angleFromBoardsRad') < NEAR_TANGENT_RAD;
      const allowed = isNearTangent
        ? tolerance.numberOr('nearTangentDistanceM', lengthsOf(check))
        : lengthsOf(check);
      compare.number('distanceM', hit.distanceM, expected.number('distanceM'), allowed, 'm');
      compare.pair('pointM', pairOf(hit.pointM), expected.pair('pointM'), allowed, 'm');
      const normal = tolerance.numberOr('normal', METRES);
      compare.pair('inwardNormal', pairOf(hit.normal), expected.pair('inwardNormal'), normal, '1');
      compare.angle(
        'angleFromBoardsRad',
        hit.angleFromBoardsRad,
        expected.number('angleFromBoardsRad'),
        angle,
      );
      if (!expected.isNull('part')) compare.same('part', hit.part, expected.text('part'));
    },
  },
  {
    name: 'alongBoards',
    run: (check, compare) => {
      const { input, expected } = check;
      const way = alongBoardsM(
        boardsOfCase(input),
        icePointOf(input.pair('fromM')),
        icePointOf(input.pair('toM')),
      );
      compare.number('shorterWayM', way, expected.number('shorterWayM'), lengthsOf(check), 'm');
    },
  },
];

const NEAR_TANGENT_RAD = Math.PI / 180;
