import type { Row } from '../units/provenance.ts';

export const STRAIGHT_AFTER: Row = {
  name: 'length of a meeting straight after the game',
  value: 10,
  unit: 'min',
  range: [5, 10],
  source:
    'Nicholls and others, Int J Sports Sci Coach 14(1):63–71, 2019: 23 analysts, feedback within an hour takes under 10 minutes (abstract read)',
  status: 'sourced',
};

export const NEXT_DAY: Row = {
  name: 'length of a meeting the next day',
  value: 20,
  unit: 'min',
  range: [15, 30],
  source:
    'Nicholls and others, Int J Perform Anal Sport 18(5):764–779, 2018: 18 elite coaches, sessions under 20 minutes (abstract read); 23 analysts asked in 2019 speak of 25 minutes and more the next day: the shorter is taken',
  status: 'sourced',
};

export const BEFORE_MOMENT: Row = {
  name: 'film before a moment that has no stretch of its own',
  value: 4,
  unit: 's',
  range: [0, 15],
  source: 'judgement of this workbench: long enough to see how it came about',
  status: 'estimate',
};

export const AFTER_MOMENT: Row = {
  name: 'film after a moment that has no stretch of its own',
  value: 3,
  unit: 's',
  range: [0, 15],
  source: 'judgement of this workbench: long enough to see what came of it',
  status: 'estimate',
};

export const TALK_A_MOMENT: Row = {
  name: 'talk about one moment of a meeting, to begin with',
  value: 0.5,
  unit: 'min',
  range: [0, 3],
  source: 'judgement of this workbench: ten moments and their film fill ten minutes',
  status: 'estimate',
};

export const STAND_TO_BEGIN_WITH: Row = {
  name: 'how long a picture stands when it stands by the clock, to begin with',
  value: 5,
  unit: 's',
  range: [1, 60],
  source: 'judgement of this workbench',
  status: 'estimate',
};

export const MARKED_STAND: Row = {
  name: 'how long playback stands at a freeze once it has its first mark',
  value: 3,
  unit: 's',
  range: [0, 600],
  source: 'common practice, no source: long enough to see a mark and who it is about',
  status: 'estimate',
};
