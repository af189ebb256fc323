import { metresOf } from '../units/feet.ts';
import type { Net, Rink } from './rink.ts';
import { ruleRow } from './rule-rows.ts';

const HALF_SOURCE = 'Hockey Canada, U9 game play rules: at most 100 × 85 ft';
const CROSS_SOURCE =
  'IIHF playing rules for players under 10, Sept 2007: one third of the rink, barrier on the blue line';
const SMALL_NET_SOURCE = 'Hockey Alberta game play rules; an Ontario U7 event: 3 × 4 ft';

const SMALL_NET_WIDTH = ruleRow('small goal width', metresOf(4), SMALL_NET_SOURCE, 'sourced');
const SMALL_NET_DEPTH = ruleRow('small goal depth', metresOf(2), 'no source', 'estimate', [0.4, 0.8]);
const CROSS_NET_FROM_SIDE = ruleRow('cross-ice goal from side boards', 1, CROSS_SOURCE, 'sourced');

/**
 * The +x half of a sheet: divider on the centre line, small goals at the edge of the centre circle (an Ontario U7 event's
 * place) and at the usual goal line.
 */
export const halfIceOf = (sheet: Rink): Rink => {
  const side = sheet.boards.widthM / 2;
  return {
    ...sheet,
    area: { minXM: 0, maxXM: sheet.boards.lengthM / 2, minYM: -side, maxYM: side },
    nets: [smallNet(sheet.layout.circleRadiusM, 0, 0), smallNet(sheet.layout.goalLineXM, 0, Math.PI)],
    dividers: [{ fromM: { xM: 0, yM: -side }, toM: { xM: 0, yM: side } }],
    rows: [
      ...sheet.rows,
      ruleRow('half ice length', sheet.boards.lengthM / 2, HALF_SOURCE, 'sourced'),
      SMALL_NET_WIDTH,
      SMALL_NET_DEPTH,
    ],
  };
};

/** The +x end zone played across: divider on the blue line's inner edge, goals 1 m from the side boards. */
export const crossIceOf = (sheet: Rink): Rink => {
  const side = sheet.boards.widthM / 2;
  const dividerXM = sheet.layout.blueLineInnerXM;
  const middleXM = (dividerXM + sheet.boards.lengthM / 2) / 2;
  const fromSide = CROSS_NET_FROM_SIDE.value;
  return {
    ...sheet,
    area: { minXM: dividerXM, maxXM: sheet.boards.lengthM / 2, minYM: -side, maxYM: side },
    nets: [
      smallNet(middleXM, -side + fromSide, Math.PI / 2),
      smallNet(middleXM, side - fromSide, -Math.PI / 2),
    ],
    dividers: [{ fromM: { xM: dividerXM, yM: -side }, toM: { xM: dividerXM, yM: side } }],
    rows: [
      ...sheet.rows,
      ruleRow(
        'cross ice, end boards to divider',
        sheet.boards.lengthM / 2 - dividerXM,
        CROSS_SOURCE,
        'derived',
      ),
      CROSS_NET_FROM_SIDE,
      SMALL_NET_WIDTH,
      SMALL_NET_DEPTH,
    ],
  };
};

const smallNet = (xM: number, yM: number, facingRad: number): Net => ({
  atM: { xM, yM },
  facingRad,
  openingM: SMALL_NET_WIDTH.value,
  depthM: SMALL_NET_DEPTH.value,
  small: true,
});
