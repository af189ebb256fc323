import { FEET_TYPE_RULES } from './feet-type-rules.ts';
import { type RuleRows, ruleRow } from './rule-rows.ts';

const BOOK = 'IIHF Official Rule Book 2022/23';
const DRAWING = 'IIHF rink drawing in centimetres';
const NOTE = 'Finnish Ice Hockey Association, note on markings, 30 July 2014';
const ANALOGUE = 'not in the text read; as on the feet-type sheet';

/**
 * Markings of the 60 m sheet, editions 2022/23 and 2023/24. The 22.86 m of a blue line go to its centre, and the neutral
 * spots are measured from that centre.
 */
export const METRIC_TYPE_RULES: RuleRows = {
  goalLineFromEndM: ruleRow('goal line to end boards', 4, `${BOOK}, rule 1.5`, 'sourced'),
  thinLineM: ruleRow('thin line width', 0.05, `${BOOK}, rules 1.5, 1.9`, 'sourced'),
  thickLineM: ruleRow('blue and centre line width', 0.3, `${BOOK}, rule 1.5`, 'sourced'),
  blueLineFromEndM: ruleRow('blue line, centre, to end boards', 22.86, `${DRAWING}; ${NOTE}`, 'sourced'),
  centreSpotDiameterM: ruleRow('centre spot diameter', 0.3, `${BOOK}, rule 1.9`, 'sourced'),
  spotDiameterM: ruleRow('spot diameter', 0.6, `${BOOK}, rule 1.9`, 'sourced'),
  spotBarInsetM: ruleRow('bars inside a spot, from its edge', 0.08, `${BOOK}, rule 1.9`, 'sourced'),
  circleRadiusM: ruleRow('circle radius, outer edge', 4.5, `${BOOK}, rule 1.9`, 'sourced'),
  endSpotFromGoalLineM: ruleRow(
    'end spot to goal line',
    6,
    `${DRAWING}; Swedish rink rules 2022/23, figure 1`,
    'sourced',
  ),
  endSpotFromAxisM: ruleRow(
    'end spot to long axis',
    7,
    `${DRAWING}; Swedish rink rules 2022/23, figure 1`,
    'sourced',
  ),
  neutralSpotFromBlueLineM: ruleRow(
    'neutral spot to centre of blue line',
    1.5,
    `${BOOK}, rule 1.9; Swedish rink rules 2022/23, figure 1`,
    'sourced',
  ),
  neutralSpotFromAxisM: ruleRow('neutral spot to long axis', 7, `${BOOK}, rule 1.9: 14.0 m apart`, 'derived'),
  hashLengthM: ruleRow('hash mark length', 0.6, `${BOOK}, rule 1.9`, 'sourced'),
  hashGapM: ruleRow('gap inside a pair of hash marks', 1.7, `${BOOK}, rule 1.9`, 'sourced'),
  lClearanceM: ruleRow('L mark, clear of the spot', 0.3, `${BOOK}, rule 1.9`, 'sourced'),
  lLongM: ruleRow('L mark, leg along the side boards', 1.2, `${BOOK}, rule 1.9`, 'sourced'),
  lShortM: ruleRow('L mark, leg along the end boards', 0.9, `${BOOK}, rule 1.9`, 'sourced'),
  lGapM: ruleRow('gap inside two long legs', 0.45, `${BOOK}, rule 1.9`, 'sourced'),
  creaseRadiusM: ruleRow('crease arc radius', 1.83, `${BOOK}, rule 1.7`, 'sourced'),
  creaseWidthM: ruleRow('crease width, outer', 2.44, ANALOGUE, 'derived', [2.4, 2.5]),
  creaseSideM: ruleRow('crease side length', 1.37, ANALOGUE, 'derived', [1.22, 1.4]),
  creaseNotchFromM: ruleRow('crease notch from goal line', 1.22, ANALOGUE, 'derived'),
  creaseNotchM: ruleRow('crease notch length', 0.13, ANALOGUE, 'derived'),
  trapezoidGoalLineM: ruleRow('trapezoid width at goal line', 6.8, `${BOOK}, rules 1.8, 27.8`, 'sourced'),
  trapezoidBoardsM: ruleRow('trapezoid width at end boards', 8.6, `${BOOK}, rules 1.8, 27.8`, 'sourced'),
  refCreaseRadiusM: ruleRow("officials' crease radius", 3, `${BOOK}, rule 1.7`, 'sourced'),
  postSpacingM: ruleRow(
    'posts, centre to centre',
    1.83 + FEET_TYPE_RULES.postDiameterM.value,
    `opening of ${BOOK}, rule 2.1, plus a post of the feet-type frame`,
    'derived',
    [1.88, 1.9],
  ),
  netOpeningM: ruleRow('goal opening', 1.83, `${BOOK}, rule 2.1`, 'sourced'),
  netDepthM: ruleRow(
    'goal depth at the ice',
    1,
    'open rink-drawing code (a library value, no rule text)',
    'estimate',
    [0.9, 1.12],
  ),
  postDiameterM: ruleRow('post diameter', FEET_TYPE_RULES.postDiameterM.value, ANALOGUE, 'derived'),
  benchLengthM: ruleRow("players' bench length", 10, `${BOOK}, rule 3.1`, 'sourced'),
  benchFromCentreM: ruleRow('bench from centre line', 2, DRAWING, 'sourced'),
  penaltyBoxLengthM: ruleRow('penalty box length', 4, `${BOOK}, rule 3.2: at least`, 'sourced', [4, 6]),
  timekeeperLengthM: ruleRow("scorekeeper's bench length", 5.5, DRAWING, 'sourced'),
  boardHeightM: ruleRow('board height', 1.07, `${BOOK}, rule 1.3`, 'sourced'),
};
