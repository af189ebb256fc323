import { metresOf } from '../units/feet.ts';
import type { Row } from '../units/provenance.ts';
import { type Boards, boardsOf, halfSpanAtX } from './boards.ts';
import type { RinkChoice, RinkCode, RinkSize } from './choice.ts';
import { FEET_TYPE_RULES } from './feet-type-rules.ts';
import { layoutOf } from './layout.ts';
import type { LineId } from './lines.ts';
import { METRIC_TYPE_RULES } from './metric-type-rules.ts';
import type { Bench, Divider, IceArea, Net, Rink, RinkLayout, RinkLine } from './rink.ts';
import { type RuleRows, ruleRow } from './rule-rows.ts';
import { crossIceOf, halfIceOf } from './small-ice.ts';

const FEET_SHEET: RinkSize = { lengthM: metresOf(200), widthM: metresOf(85), cornerRadiusM: metresOf(28) };
const COLLEGE_SHEET: RinkSize = {
  lengthM: metresOf(200),
  widthM: metresOf(100),
  cornerRadiusM: metresOf(20),
};
/** Sheets this near to 200 ft are feet-type when only their size is known. */
const FEET_LENGTH_SLACK_M = 0.3;

/**
 * The sheet of a choice, with all markings, metres, and a row with source for every number. Half ice is the +x half of a
 * 200 × 85 ft sheet, cross ice its +x end zone; both keep the whole sheet's frame. An own size follows the metric code.
 * Sizes must make a rounded rectangle (checked where documents are read); throws otherwise.
 */
export const rinkOf = (choice: RinkChoice): Rink => {
  switch (choice.preset) {
    case '200x85ft':
      return rinkOfSize(FEET_SHEET, 'NHL-type');
    case '60x30m':
      return rinkOfSize({ lengthM: 60, widthM: 30, cornerRadiusM: 8.5 }, 'IIHF-type');
    case '60x26m':
      return rinkOfSize({ lengthM: 60, widthM: 26, cornerRadiusM: 8.5 }, 'IIHF-type');
    case 'college200x100ft':
      return sheetOf(COLLEGE_SHEET, 'NHL-type', FEET_TYPE_RULES, false, COLLEGE_ROWS);
    case 'halfIce':
      return halfIceOf(rinkOfSize(FEET_SHEET, 'NHL-type'));
    case 'crossIce':
      return crossIceOf(rinkOfSize(FEET_SHEET, 'NHL-type'));
    case 'own':
      return rinkOfSize(fittingSizeOf(choice), 'IIHF-type');
  }
};

/** A corner can be no rounder than half the shorter side. */
const fittingSizeOf = (size: RinkSize): RinkSize => ({
  lengthM: size.lengthM,
  widthM: size.widthM,
  cornerRadiusM: Math.min(size.cornerRadiusM, size.lengthM / 2, size.widthM / 2),
});

/**
 * The sheet of a bare size, metres. Without `code`, a length of 200 ft means the feet-type rules and anything else the
 * metric ones.
 */
export const rinkOfSize = (size: RinkSize, code: RinkCode = codeOfLength(size.lengthM)): Rink =>
  sheetOf(size, code, code === 'NHL-type' ? FEET_TYPE_RULES : METRIC_TYPE_RULES, true, []);

const codeOfLength = (lengthM: number): RinkCode =>
  Math.abs(lengthM - FEET_SHEET.lengthM) < FEET_LENGTH_SLACK_M ? 'NHL-type' : 'IIHF-type';

const COLLEGE_ROWS: readonly Row[] = [
  ruleRow('corner radius', COLLEGE_SHEET.cornerRadiusM, 'NCAA Ice Hockey Rules 2020-22, rule 1.2', 'sourced'),
];

const sheetOf = (
  size: RinkSize,
  code: RinkCode,
  rules: RuleRows,
  hasTrapezoid: boolean,
  extraRows: readonly Row[],
): Rink => {
  const boards = boardsOf(size.lengthM, size.widthM, size.cornerRadiusM);
  const layout = layoutOf(code, size, rules, hasTrapezoid);
  return {
    code,
    boards,
    area: wholeAreaOf(boards),
    layout,
    lines: linesOf(boards, layout),
    nets: netsOf(layout, rules),
    dividers: [] satisfies Divider[],
    benches: benchesOf(boards, rules),
    rows: [...Object.values(rules), ...extraRows],
  };
};

const wholeAreaOf = (boards: Boards): IceArea => ({
  minXM: -boards.lengthM / 2,
  maxXM: boards.lengthM / 2,
  minYM: -boards.widthM / 2,
  maxYM: boards.widthM / 2,
});

const linesOf = (boards: Boards, layout: RinkLayout): Rink['lines'] => {
  const line = (id: LineId, centreXM: number, widthM: number, colour: RinkLine['colour']): RinkLine => ({
    id,
    centreXM,
    minXM: centreXM - widthM / 2,
    maxXM: centreXM + widthM / 2,
    halfSpanM: halfSpanAtX(boards, centreXM),
    colour,
  });
  return {
    goalLineMinusX: line('goalLineMinusX', -layout.goalLineXM, layout.thinLineM, 'red'),
    blueLineMinusX: line('blueLineMinusX', -layout.blueLineCentreXM, layout.thickLineM, 'blue'),
    centreLine: line('centreLine', 0, layout.thickLineM, 'red'),
    blueLinePlusX: line('blueLinePlusX', layout.blueLineCentreXM, layout.thickLineM, 'blue'),
    goalLinePlusX: line('goalLinePlusX', layout.goalLineXM, layout.thinLineM, 'red'),
  };
};

const netsOf = (layout: RinkLayout, rules: RuleRows): readonly Net[] =>
  [-1, 1].map(sign => ({
    atM: { xM: sign * layout.goalLineXM, yM: 0 },
    facingRad: sign > 0 ? Math.PI : 0,
    openingM: rules.netOpeningM.value,
    depthM: rules.netDepthM.value,
    small: false,
  }));

const benchesOf = (boards: Boards, rules: RuleRows): readonly Bench[] => {
  const side = boards.widthM / 2;
  const team = rules.benchFromCentreM.value;
  const desk = rules.timekeeperLengthM.value / 2;
  const pair = (kind: Bench['kind'], fromM: number, lengthM: number, yM: number): Bench[] => [
    { kind, fromXM: -fromM - lengthM, toXM: -fromM, yM },
    { kind, fromXM: fromM, toXM: fromM + lengthM, yM },
  ];
  return [
    ...pair('team', team, rules.benchLengthM.value, side),
    ...pair('penalty', desk, rules.penaltyBoxLengthM.value, -side),
    { kind: 'timekeeper', fromXM: -desk, toXM: desk, yM: -side },
  ];
};
