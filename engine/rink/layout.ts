import type { RinkCode, RinkSize } from './choice.ts';
import type { RinkLayout } from './rink.ts';
import type { RuleName, RuleRows } from './rule-rows.ts';

/** Below this length the metric code's blue lines move with the length (Finnish association, 30 July 2014). */
const BLUE_LINES_FIXED_FROM_M = 58;
const FULL_LENGTH_M = 60;
/** Below these a sheet has no room for full-size circles; all markings shrink together. Our choice, an estimate. */
const FULL_MARKINGS_LENGTH_M = 40;
const FULL_MARKINGS_WIDTH_M = 25;

/**
 * Positions of all markings on a sheet of this size under this code, metres. Sizes other than the code's own: blue lines
 * and neutral spots scale with the length below 58 m; on sheets under 40 m long or 25 m wide every marking but the line
 * widths and the goal shrinks in proportion (estimate).
 */
export const layoutOf = (
  code: RinkCode,
  size: RinkSize,
  rules: RuleRows,
  hasTrapezoid: boolean,
): RinkLayout => {
  const shrink = Math.min(1, size.lengthM / FULL_MARKINGS_LENGTH_M, size.widthM / FULL_MARKINGS_WIDTH_M);
  const full = (name: RuleName): number => rules[name].value;
  const scaled = (name: RuleName): number => rules[name].value * shrink;
  const halfM = size.lengthM / 2;
  const thin = full('thinLineM');
  const thick = full('thickLineM');

  const blueFromEndM = full('blueLineFromEndM') * blueScale(size.lengthM);
  const blueCentreXM = halfM - blueFromEndM + (code === 'NHL-type' ? thick / 2 : 0);
  const blueInnerXM = blueCentreXM - thick / 2;
  const neutralFromXM = code === 'NHL-type' ? blueInnerXM : blueCentreXM;
  const goalLineXM = halfM - scaled('goalLineFromEndM');
  const radius = scaled('circleRadiusM');
  const hashDx = scaled('hashGapM') / 2 + thin / 2;
  const hashFrom = Math.sqrt(radius ** 2 - hashDx ** 2);
  const creaseRadius = full('creaseRadiusM');
  const creaseHalf = full('creaseWidthM') / 2;
  const lInner = scaled('lGapM') / 2;
  return {
    goalLineXM,
    blueLineInnerXM: blueInnerXM,
    blueLineCentreXM: blueCentreXM,
    blueLineOuterXM: blueCentreXM + thick / 2,
    thinLineM: thin,
    thickLineM: thick,
    neutralSpotM: {
      xM: neutralFromXM - scaled('neutralSpotFromBlueLineM'),
      yM: scaled('neutralSpotFromAxisM'),
    },
    endSpotM: { xM: goalLineXM - scaled('endSpotFromGoalLineM'), yM: scaled('endSpotFromAxisM') },
    centreSpotDiameterM: full('centreSpotDiameterM'),
    spotDiameterM: full('spotDiameterM'),
    spotBarInsetM: full('spotBarInsetM'),
    circleRadiusM: radius,
    hash: { dxM: hashDx, dyFromM: hashFrom, dyToM: hashFrom + scaled('hashLengthM') },
    lMark: {
      startDxM: full('spotDiameterM') / 2 + scaled('lClearanceM'),
      longM: scaled('lLongM'),
      innerDyM: lInner,
      outerDyM: lInner + thin,
      shortEndDyM: lInner + scaled('lShortM'),
    },
    crease: {
      radiusM: creaseRadius,
      halfWidthM: creaseHalf,
      sideM: full('creaseSideM'),
      arcMeetsSideM: Math.sqrt(creaseRadius ** 2 - creaseHalf ** 2),
      notchFromM: full('creaseNotchFromM'),
      notchM: full('creaseNotchM'),
    },
    trapezoid: hasTrapezoid
      ? { goalLineHalfM: full('trapezoidGoalLineM') / 2, boardsHalfM: full('trapezoidBoardsM') / 2 }
      : null,
    refCreaseRadiusM: scaled('refCreaseRadiusM'),
    postCentreYM: full('postSpacingM') / 2,
    postDiameterM: full('postDiameterM'),
    netDepthM: full('netDepthM'),
    boardHeightM: full('boardHeightM'),
  };
};

const blueScale = (lengthM: number): number =>
  lengthM < BLUE_LINES_FIXED_FROM_M ? lengthM / FULL_LENGTH_M : 1;
