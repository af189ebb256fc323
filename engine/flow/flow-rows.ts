import type { Row } from '../units/provenance.ts';

/** Defaults of the flow: what a block of many reps is judged and timed by. */

export const HIGH_SPEED_MPS: Row = {
  name: 'high speed from',
  value: 17 / 3.6,
  unit: 'm/s',
  range: [17 / 3.6, 24 / 3.6],
  source:
    'speed zones of a match study on elite youth: slow to 10.9, moderate 11 to 16.9, high 17 to 23.9, sprint over 24 km/h (Front Sports Act Living 2022, 822127)',
  status: 'sourced',
};

export const RETURN_MPS: Row = {
  name: 'back to the line at',
  value: 3,
  unit: 'm/s',
  range: [2, 4],
  source: 'the upper edge of the slow zone, 10.9 km/h, of the same match study: nobody hurries back',
  status: 'estimate',
};

export const SHORT_WORK_S: Row = {
  name: 'a short burst is up to',
  value: 10,
  unit: 's',
  range: [5, 10],
  source: 'alactic work on ice is 5 to 10 s (Chambers, on-ice conditioning, Human Kinetics)',
  status: 'sourced',
};

export const SHORT_WORK_REST: Row = {
  name: 'most rest for each second of a short burst',
  value: 10,
  unit: '',
  range: [6, 10],
  source:
    'work : rest of 1 : 6 to 1 : 10 for bursts of 5 to 10 s (Chambers, on-ice conditioning, Human Kinetics)',
  status: 'sourced',
};

export const LONG_WORK_REST: Row = {
  name: 'most rest for each second of longer work',
  value: 6,
  unit: '',
  range: [3, 6],
  source: 'work : rest of 1 : 3 to 1 : 6 for work over 10 s (Chambers, on-ice conditioning, Human Kinetics)',
  status: 'sourced',
};

export const MOVING_RATIO: Row = {
  name: 'share of skaters moving at once',
  value: 0.43,
  unit: '',
  range: [0.4, 0.75],
  source:
    'an ordinary practice: 9 and 10 year olds moved moderately or harder for 43 % of 70 minutes (Int J Exerc Sci 8(2), 2015); a coaching guideline asks for 14 to 15 of 20',
  status: 'sourced',
};

export const PUCK_BACK_S: Row = {
  name: 'a played puck is back after',
  value: 30,
  unit: 's',
  range: [15, 60],
  source: 'a skater brings it on the way back to the line; common practice, no source',
  status: 'estimate',
};

export const LINE_ROOM_M: Row = {
  name: 'room between a waiting line and a lane',
  value: 1.5,
  unit: 'm',
  range: [1.2, 3],
  source:
    'two skaters with sticks at 1.2 m, and a hand: most injuries are unintended contact (Darling et al. 2010: 66 %)',
  status: 'estimate',
};

export const GAME_CHANGE_S: Row = {
  name: 'change between two goes of a game',
  value: 8,
  unit: 's',
  range: [5, 15],
  source: 'off through the gate or over the divider and a new puck; common practice, no source',
  status: 'estimate',
};

export const ICE_PER_SKATER_SQM: Row = {
  name: 'least ice for each skater of a small game',
  value: 40,
  unit: 'm²',
  range: [30, 80],
  source:
    '2 on 2 on an eighth of a sheet of 60 × 26 m is 48 m² each; studied formats run from an eighth of the ice to all of it (federations of Finland and Sweden, 2019/20); a least figure is common practice, no source',
  status: 'estimate',
};

export const NET_ROOM_M: Row = {
  name: 'room from a net to the boards',
  value: 1,
  unit: 'm',
  range: [1, 4],
  source: 'cross ice for under 10: goals 1 m from the side boards (IIHF, Sept 2007)',
  status: 'sourced',
};

export const SMALL_NET_OPENING_M: Row = {
  name: 'opening of a small net',
  value: 1.219,
  unit: 'm',
  range: [0.9, 1.5],
  source: 'small net for under 7 and under 9: 3 × 4 ft (Hockey Alberta)',
  status: 'sourced',
};

export const NET_DEPTH_RATIO: Row = {
  name: 'depth of a net for its opening',
  value: 0.56,
  unit: '',
  range: [0.5, 0.65],
  source: 'a full net is 1.83 m wide and about 1.0 m deep at the ice; small nets are taken alike',
  status: 'estimate',
};

export const GAME_EDGE_M: Row = {
  name: 'how far into a small game a rep may reach',
  value: 0.5,
  unit: 'm',
  range: [0, 1.5],
  source: 'half a body over an edge that nobody stands at; our choice',
  status: 'estimate',
};
