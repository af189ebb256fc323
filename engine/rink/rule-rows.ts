import type { Row } from '../units/provenance.ts';

/** Every length that the markings of a sheet are made of. Metres. */
export const RULE_NAMES = [
  'goalLineFromEndM',
  'thinLineM',
  'thickLineM',
  'blueLineFromEndM',
  'centreSpotDiameterM',
  'spotDiameterM',
  'spotBarInsetM',
  'circleRadiusM',
  'endSpotFromGoalLineM',
  'endSpotFromAxisM',
  'neutralSpotFromBlueLineM',
  'neutralSpotFromAxisM',
  'hashLengthM',
  'hashGapM',
  'lClearanceM',
  'lLongM',
  'lShortM',
  'lGapM',
  'creaseRadiusM',
  'creaseWidthM',
  'creaseSideM',
  'creaseNotchFromM',
  'creaseNotchM',
  'trapezoidGoalLineM',
  'trapezoidBoardsM',
  'refCreaseRadiusM',
  'postSpacingM',
  'netOpeningM',
  'netDepthM',
  'postDiameterM',
  'benchLengthM',
  'benchFromCentreM',
  'penaltyBoxLengthM',
  'timekeeperLengthM',
  'boardHeightM',
] as const;

export type RuleName = (typeof RULE_NAMES)[number];

/** A rule book as rows with their provenance. */
export type RuleRows = Readonly<Record<RuleName, Row>>;

/** A row of a rule table in metres; `slackRatio` is the building tolerance that still counts as that rink. */
export const ruleRow = (
  name: string,
  value: number,
  source: string,
  status: Row['status'],
  range?: readonly [number, number],
): Row => ({ name, value, unit: 'm', range: range ?? [value, value], source, status });
