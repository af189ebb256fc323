import type { Drill } from '../documents/drill.ts';
import type { Game } from '../documents/game.ts';
import type { Meeting } from '../documents/meeting.ts';
import type { Practice } from '../documents/practice.ts';
import type { RinkChoice, Team } from '../documents/team.ts';

/** Documents as they are when a coach has just made one. Days and instants come in; nothing here reads a clock. */

export interface TeamStart {
  readonly name: string;
  readonly level: Team['level'];
  readonly rink: RinkChoice;
  readonly madeAt: string;
  readonly season?: string;
  readonly demo?: boolean;
}

export const emptyTeam = ({ name, level, rink, madeAt, season = '', demo = false }: TeamStart): Team => ({
  kind: 'team',
  schema: 5,
  name,
  season,
  demo,
  level,
  rink,
  homeIce: '',
  usualStart: '19:00',
  lengths: 'metres',
  clockFace: '24',
  skaters: {},
  staff: {},
  habits: {},
  momentKeys: {},
  units: {},
  contents: {},
  madeAt,
});

export interface GameStart {
  readonly opponent: string;
  readonly day: string;
  readonly place?: Game['place'];
}

export const emptyGame = ({ opponent, day, place = 'home' }: GameStart): Game => ({
  kind: 'game',
  schema: 5,
  opponent,
  day,
  place,
  note: '',
  films: {},
  moments: {},
  follows: {},
  opinions: {},
  freezes: {},
  tracks: {},
  marks: {},
});

export interface DrillStart {
  readonly title: string;
  readonly level: Drill['level'];
  readonly rink: RinkChoice;
  readonly madeAt: string;
  readonly from?: NonNullable<Drill['from']>;
}

export const emptyDrill = ({ title, level, rink, madeAt, from }: DrillStart): Drill => ({
  kind: 'drill',
  schema: 4,
  title,
  says: '',
  keyPoints: '',
  habits: [],
  level,
  rink,
  ...(from === undefined ? {} : { from }),
  minutes: 8,
  spots: {},
  pucks: {},
  gear: {},
  games: {},
  madeAt,
});

export interface PracticeStart {
  readonly title: string;
  readonly day: string;
  readonly starts?: string;
  readonly iceMinutes?: number;
}

export const emptyPractice = ({
  title,
  day,
  starts = '19:00',
  iceMinutes = 60,
}: PracticeStart): Practice => ({
  kind: 'practice',
  schema: 1,
  title,
  day,
  starts,
  iceMinutes,
  place: '',
  today: '',
  note: '',
  blocks: {},
  missing: [],
});

export interface MeetingStart {
  readonly title: string;
  readonly day: string;
  readonly budgetMinutes: number;
}

export const emptyMeeting = (start: MeetingStart): Meeting => ({
  kind: 'meeting',
  schema: 1,
  ...start,
  showsWords: true,
  items: {},
});
