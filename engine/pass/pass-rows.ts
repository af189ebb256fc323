import type { Row } from '../units/provenance.ts';

/** Numbers of passes and lanes that no level table holds. */
export const PASS_ROWS = {
  laneShutM: {
    name: 'a lane with an opponent nearer than this is shut',
    value: 1,
    unit: 'm',
    range: [0.5, 1.5],
    source: 'Inside 1 m the blade is on the line without a stride',
    status: 'estimate',
  },
  laneOpenFromS: {
    name: 'a lane with more time to spare than this is open, with less contested, with none shut',
    value: 0.3,
    unit: 's',
    range: [0.1, 0.6],
    source: 'Our choice: about the spread of a race between two skaters',
    status: 'estimate',
  },
  restitutionSd: {
    name: 'spread of the boards’ restitution about the value used',
    value: 0.075,
    unit: '',
    range: [0.02, 0.15],
    source: 'A quarter of the plausible range 0.30–0.60: the range read as four standard deviations',
    status: 'estimate',
  },
  boardFrictionSd: {
    name: 'spread of the boards’ friction about the value used',
    value: 0.05,
    unit: '',
    range: [0.02, 0.1],
    source: 'A quarter of the plausible range 0.15–0.35: the range read as four standard deviations',
    status: 'estimate',
  },
  longestPassS: {
    name: 'passes that take longer are not looked for',
    value: 6,
    unit: 's',
    range: [3, 10],
    source: 'Our choice',
    status: 'estimate',
  },
  unknownSpeedSdMps: {
    name: 'spread of a skater’s speed that a frozen picture does not tell',
    value: 3,
    unit: 'm/s',
    range: [2, 5],
    source:
      'About the mean game speed of 3.78 m/s in continuous play, measured in the 1970s, in an unknown direction',
    status: 'estimate',
  },
  carryBoardsRoomM: {
    name: 'nobody skates the puck nearer to the boards than this on purpose',
    value: 0.5,
    unit: 'm',
    range: [0.3, 0.8],
    source: 'Half a skater in gear, our choice',
    status: 'estimate',
  },
  carryLookS: {
    name: 'how far ahead skating with the puck is judged',
    value: 2,
    unit: 's',
    range: [1, 3],
    source: 'Our choice',
    status: 'estimate',
  },
} as const satisfies Record<string, Row>;
