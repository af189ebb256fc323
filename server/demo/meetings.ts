import { type Meeting, meeting } from '@icewright/book';

/** Ten minutes the day after the second game: two that went well, two that did not, the last from the game before. */
export const demoMeeting = (dayOf: string): Meeting =>
  meeting.parse({
    kind: 'meeting',
    schema: 1,
    title: 'Together, or not at all',
    day: dayOf,
    budgetMinutes: 10,
    showsWords: true,
    items: Object.fromEntries(
      ITEMS.map(([game, moment, said, frameIndex, filmTimeS, says, asks, notes, talkMinutes], index) => [
        `item-${index + 1}`,
        {
          rank: index + 1,
          of: { kind: 'moment', game, moment, said },
          says,
          asks,
          notes,
          talkMinutes,
          stop: { frameIndex, filmTimeS },
          hidden: false,
        },
      ]),
    ),
  });

type DemoItem = readonly [
  game: string,
  moment: string,
  said: string,
  frameIndex: number,
  filmTimeS: number,
  says: string,
  asks: string,
  notes: string,
  talkMinutes: number,
];

const ITEMS: readonly DemoItem[] = [
  [
    'game-join',
    'moment-2',
    'Defender joins, 0:06.0',
    360,
    6.006,
    'Gone with the first pass, not after it',
    'What did she see before the pass was made?',
    'Begin with what went well. Let her say it herself.',
    1,
  ],
  [
    'game-join',
    'moment-3',
    'All five, 0:06.0',
    360,
    6.006,
    'Same picture: who is missing?',
    'How far back is the last of us, and why?',
    'Count them on the ice. Two stayed home; it is about the habit, not about the two.',
    1.5,
  ],
  [
    'game-join',
    'moment-4',
    'Hunt the puck, 0:12.8',
    770,
    12.8462,
    'Eyes on the puck, then go',
    'Where is the puck when we lose it?',
    '',
    1,
  ],
  [
    'game-hunt',
    'moment-3',
    'First forward back, 0:07.8',
    234,
    7.8,
    'Inside first, then the puck',
    'Which way is shorter to the middle?',
    'The week before. Say what we do about it on Thursday.',
    1.5,
  ],
];
