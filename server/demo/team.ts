import { type Team, team } from '@icewright/book';

/** The Tern Harbour Lanterns are made up, and so is everyone in this file. */
export function demoTeam(made: { readonly at: string; readonly contents: Team['contents'] }): Team {
  return team.parse({
    kind: 'team',
    schema: 5,
    name: 'Tern Harbour Lanterns',
    season: '2026–27',
    demo: true,
    level: 'collegeWomen',
    rink: { preset: '200x85ft' },
    homeIce: 'Cannery Road, sheet 2',
    usualStart: '19:40',
    lengths: 'metres',
    clockFace: '24',
    skaters: Object.fromEntries(
      ROSTER.map(([number, name, position, group], index) => [
        `lantern-${number}`,
        { rank: index, number, name, position, group, noContact: number === 11, ...timedOf(number) },
      ]),
    ),
    staff: {
      ashdown: { rank: 0, name: 'Ashdown', role: 'head coach' },
      falk: { rank: 1, name: 'Falk', role: 'defence' },
      oyelaran: { rank: 2, name: 'Oyelaran', role: 'forwards' },
      tarn: { rank: 3, name: 'Tarn', role: 'goalies' },
    },
    habits: HABITS,
    momentKeys: MOMENT_KEYS,
    units: Object.fromEntries(
      ['White', 'Blue', 'Grey', 'Red'].map((title, rank) => [
        title.toLowerCase(),
        { rank, title, skaters: inGroup(title) },
      ]),
    ),
    contents: made.contents,
    madeAt: made.at,
  });
}

const ROSTER: readonly (readonly [number, string, 'F' | 'D' | 'G', string])[] = [
  [14, 'Nakatani', 'F', 'White'],
  [21, 'Thornquist', 'F', 'White'],
  [9, 'Amoako', 'F', 'White'],
  [10, 'Varga', 'F', 'Blue'],
  [24, 'Dacosta', 'F', 'Blue'],
  [26, 'Lindqvaer', 'F', 'Blue'],
  [12, 'Rautiola', 'F', 'Grey'],
  [15, 'Okpara', 'F', 'Grey'],
  [19, 'Bergfalk', 'F', 'Grey'],
  [16, 'Castelnau', 'F', 'Red'],
  [23, 'Nkemelu', 'F', 'Red'],
  [11, 'Adeyemi', 'F', 'Red'],
  [4, 'Vask', 'D', 'White'],
  [27, 'Halvorsby', 'D', 'White'],
  [6, 'Ilmaste', 'D', 'Blue'],
  [2, 'Sørmo', 'D', 'Blue'],
  [3, 'Marrin', 'D', 'Grey'],
  [8, 'Brandvold', 'D', 'Grey'],
  [31, 'Kvist', 'G', 'Goalies'],
  [30, 'Arroyo-Beck', 'G', 'Goalies'],
];

/** Sprints in full gear by four gates, as invented as who skated them: seconds at 5, 10, 20 and 30 m. */
const TIMED: Readonly<Record<number, readonly number[]>> = {
  14: [1.48, 2.23, 3.61, 4.83],
  21: [1.54, 2.33, 3.72, 5.03],
  9: [1.52, 2.31, 3.76, 5.07],
  10: [1.55, 2.35, 3.72, 5.03],
  24: [1.59, 2.41, 3.92, 5.27],
  4: [1.56, 2.38, 3.81, 5.19],
  27: [1.58, 2.38, 3.86, 5.16],
  6: [1.63, 2.48, 3.97, 5.4],
};
const GATES_M = [5, 10, 20, 30] as const;

const timedOf = (number: number): Pick<Team['skaters'][never], 'timed'> => {
  const times = TIMED[number];
  return times === undefined
    ? {}
    : { timed: times.map((timeS, gate) => ({ distanceM: GATES_M[gate] ?? 0, timeS })) };
};

const inGroup = (wanted: string): Record<string, { readonly rank: number }> =>
  Object.fromEntries(
    ROSTER.filter(([, , , group]) => group === wanted).map(([number], rank) => [
      `lantern-${number}`,
      { rank },
    ]),
  );

const MOMENT_KEYS = {
  hunted: { rank: 0, key: 'h', habit: 'hunt', verdict: 'done', beforeS: 4, afterS: 3 },
  notHunted: { rank: 1, key: 'n', habit: 'hunt', verdict: 'missed', beforeS: 4, afterS: 3 },
  firstHome: { rank: 2, key: 'b', habit: 'firstBack', verdict: 'done', beforeS: 5, afterS: 2 },
  lateHome: { rank: 3, key: 'v', habit: 'firstBack', verdict: 'missed', beforeS: 5, afterS: 2 },
};

const HABITS = {
  firstBack: {
    rank: 0,
    title: 'First forward back takes the middle',
    says: 'Turn, look, middle.',
    reason:
      'A rush that finds our middle empty ends in the house. Come home inside first; the puck is somebody else’s until you are between it and our net.',
    standard: {
      kind: 'goalSide',
      who: 'firstForwardBack',
      whom: 'puck',
      withinM: 1,
      when: { at: 'puckCrosses', line: 'blueLineMinusX' },
    },
    wantedRatio: 0.75,
    costGoals: 0.11,
    kept: true,
  },
  gap: {
    rank: 1,
    title: 'Gap at our blue line',
    says: 'Close before the line.',
    reason:
      'A carrier with room at the line picks what comes next. With a stick and a half between us, we pick.',
    standard: {
      kind: 'within',
      who: 'nearestDefender',
      whom: 'carrier',
      withinM: 3,
      when: { at: 'puckCrosses', line: 'blueLineMinusX' },
    },
    wantedRatio: 0.7,
    costGoals: 0.08,
    kept: true,
  },
  hunt: {
    rank: 2,
    title: 'The nearest hunts the lost puck',
    says: 'Go at once.',
    reason:
      'The first two seconds after a loss are the cheapest time to win it back: they have not looked up yet.',
    standard: { kind: 'within', who: 'anyOfUs', whom: 'puck', withinM: 4, when: { at: 'weLoseThePuck' } },
    wantedRatio: 0.8,
    costGoals: 0.06,
    kept: true,
  },
  five: {
    rank: 3,
    title: 'Five in the picture',
    says: 'Come along.',
    reason: 'Five close together have five passes. Two far ahead have a hope.',
    standard: {
      kind: 'numbers',
      zone: 'picture',
      atLeastCount: 5,
      when: { at: 'puckCrosses', line: 'centreLine' },
    },
    wantedRatio: 0.6,
    costGoals: 0.03,
    kept: true,
  },
  lateDefender: {
    rank: 4,
    title: 'A defender is level at the red line',
    says: 'Start with the pass.',
    reason:
      'Whoever starts with the first pass is level at the red line. Whoever waits to see it arrive is late for good.',
    standard: {
      kind: 'upWith',
      who: 'nearestDefender',
      whom: 'puck',
      withinM: 2,
      when: { at: 'puckCrosses', line: 'centreLine' },
    },
    wantedRatio: 0.6,
    costGoals: 0.04,
    kept: true,
  },
  house: {
    rank: 5,
    title: 'Two stop in the house',
    says: 'Stop, head round, stick.',
    reason:
      'A shot hurts when somebody is free for the second puck. Two who have stopped there can find a stick.',
    standard: { kind: 'numbers', zone: 'house', atLeastCount: 2, when: { at: 'theyShoot' } },
    wantedRatio: 0.7,
    costGoals: 0.12,
    kept: true,
  },
};
