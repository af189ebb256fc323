import { metresOf } from '../units/feet.ts';
import { type RuleRows, ruleRow } from './rule-rows.ts';

const BOOKS = 'WHL Official Rules 2019-20, ECHL Official Rules 2021-22, OHL Official Rules 2021-22';
const DRAWING = 'ECHL Official Rules 2021-22, rink drawing';
const LIBRARY = 'open rink-drawing code (a library value, no rule text)';

/**
 * Markings of the 200 × 85 ft sheet. The 75 ft of a blue line go to its edge on the neutral zone's side, and the neutral
 * spots are measured from that edge.
 */
export const FEET_TYPE_RULES: RuleRows = {
  goalLineFromEndM: ruleRow(
    'goal line to end boards',
    metresOf(11),
    `${BOOKS}, rule 1.5: to the line's centre`,
    'sourced',
  ),
  thinLineM: ruleRow('thin line width', metresOf(0, 2), `${BOOKS}, rules 1.5, 1.9`, 'sourced'),
  thickLineM: ruleRow('blue and centre line width', metresOf(1), `${BOOKS}, rule 1.5`, 'sourced'),
  blueLineFromEndM: ruleRow('blue line, neutral-zone edge, to end boards', metresOf(75), DRAWING, 'sourced'),
  centreSpotDiameterM: ruleRow('centre spot diameter', metresOf(1), `${BOOKS}, rule 1.9`, 'sourced'),
  spotDiameterM: ruleRow('spot diameter', metresOf(2), `${BOOKS}, rule 1.9`, 'sourced'),
  spotBarInsetM: ruleRow(
    'bars inside a spot, from its edge',
    metresOf(0, 3),
    `${BOOKS}, rule 1.9`,
    'sourced',
  ),
  circleRadiusM: ruleRow('circle radius, outer edge', metresOf(15), `${BOOKS}, rule 1.9`, 'sourced'),
  endSpotFromGoalLineM: ruleRow('end spot to goal line', metresOf(20), `${BOOKS}, rule 1.9`, 'sourced'),
  endSpotFromAxisM: ruleRow('end spot to long axis', metresOf(22), `${BOOKS}, rule 1.9`, 'sourced'),
  neutralSpotFromBlueLineM: ruleRow(
    'neutral spot to near edge of blue line',
    metresOf(5),
    `${BOOKS}, rule 1.9`,
    'sourced',
  ),
  neutralSpotFromAxisM: ruleRow(
    'neutral spot to long axis',
    metresOf(22),
    `${BOOKS}, rule 1.9: 44 ft apart`,
    'derived',
  ),
  hashLengthM: ruleRow('hash mark length', metresOf(2), `${BOOKS}, rule 1.9`, 'sourced'),
  hashGapM: ruleRow(
    'gap inside a pair of hash marks',
    metresOf(5, 7),
    `WHL, ECHL, rule 1.9; ${DRAWING}`,
    'sourced',
    [metresOf(3), metresOf(5, 7)],
  ),
  lClearanceM: ruleRow('L mark, clear of the spot', metresOf(1), `${BOOKS}, rule 1.9`, 'sourced'),
  lLongM: ruleRow('L mark, leg along the side boards', metresOf(4), `${BOOKS}, rule 1.9`, 'sourced'),
  lShortM: ruleRow('L mark, leg along the end boards, line included', metresOf(3), DRAWING, 'sourced'),
  lGapM: ruleRow('gap inside two long legs', metresOf(0, 18), `${BOOKS}, rule 1.9`, 'sourced'),
  creaseRadiusM: ruleRow('crease arc radius', metresOf(6), `${BOOKS}, rule 1.7`, 'sourced'),
  creaseWidthM: ruleRow('crease width, outer', metresOf(8), DRAWING, 'sourced'),
  creaseSideM: ruleRow(
    'crease side length',
    metresOf(4, 6),
    'WHL, ECHL, rule 1.7 (rounded: the arc meets the side at 4.472 ft)',
    'sourced',
  ),
  creaseNotchFromM: ruleRow('crease notch from goal line', metresOf(4), `${BOOKS}, rule 1.7`, 'sourced'),
  creaseNotchM: ruleRow('crease notch length', metresOf(0, 5), `${BOOKS}, rule 1.7`, 'sourced'),
  trapezoidGoalLineM: ruleRow(
    'trapezoid width at goal line',
    metresOf(22),
    `${BOOKS}, rule 1.8 (rule 27.8 of two of the books still prints the older 18 ft)`,
    'sourced',
  ),
  trapezoidBoardsM: ruleRow('trapezoid width at end boards', metresOf(28), `${BOOKS}, rule 1.8`, 'sourced'),
  refCreaseRadiusM: ruleRow("officials' crease radius", metresOf(10), `${BOOKS}, rule 1.7`, 'sourced'),
  postSpacingM: ruleRow(
    'posts, centre to centre',
    metresOf(0, 74.375),
    `${DRAWING} of the goal frame`,
    'sourced',
  ),
  netOpeningM: ruleRow('goal opening', metresOf(6), `${BOOKS}, rule 2.1`, 'sourced'),
  netDepthM: ruleRow('goal depth at the ice', metresOf(0, 40), `${DRAWING} of the goal frame`, 'sourced'),
  postDiameterM: ruleRow('post diameter', metresOf(0, 2.375), `${DRAWING} of the goal frame`, 'sourced'),
  benchLengthM: ruleRow("players' bench length", metresOf(24), 'WHL, ECHL, rule 3.1', 'sourced'),
  benchFromCentreM: ruleRow(
    'bench from centre line',
    2,
    'no rule text; taken from the metric drawing',
    'estimate',
    [0, 6],
  ),
  penaltyBoxLengthM: ruleRow('penalty box length', metresOf(8), LIBRARY, 'estimate', [2, 6]),
  timekeeperLengthM: ruleRow(
    "timekeeper's bench length",
    5.5,
    'no rule text; taken from the metric drawing',
    'estimate',
    [3, 7],
  ),
  boardHeightM: ruleRow('board height', metresOf(0, 42), `${BOOKS}, rule 1.3`, 'sourced', [
    metresOf(0, 40),
    metresOf(0, 48),
  ]),
};
