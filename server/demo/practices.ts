import { type Practice, practice } from '@icewright/book';

/** A block as the demo says it: drill, minutes, changeover, who leads, pucks, ice, groups, words of its own. */
interface DemoBlock {
  readonly drill?: string;
  readonly title: string;
  readonly minutes: number;
  readonly changeover?: number;
  readonly says: string;
  readonly keyPoints: string;
  readonly leads: string;
  readonly pucks?: string;
  readonly ice?: string;
  readonly groups?: string;
}

const WARM_UP: DemoBlock = {
  drill: 'drill-four-corners',
  title: 'Four corners',
  minutes: 10,
  changeover: 1,
  says: 'heads up early',
  keyPoints: 'Pass before the red line\nGoalies: high, low, then free\nEasy first, game pace last three',
  leads: 'Falk',
  pucks: 'two corners',
  ice: 'whole sheet, both ways at once',
  groups: 'all',
};

const TALK: DemoBlock = {
  title: 'Talk',
  minutes: 2,
  says: '',
  keyPoints: 'One thing that went well\nOne thing for Saturday',
  leads: 'Ashdown',
};

export function demoPractices(days: {
  readonly first: string;
  readonly second: string;
  readonly next: string;
}): Record<string, Practice> {
  return {
    'practice-1': practiceOf('Practice 29', days.first, 'The nearest one goes at once.', [
      WARM_UP,
      block(
        'drill-three-on-the-heels',
        'Three on the heels',
        12,
        'go at once',
        'First stride on the whistle, no look\nTwo close, one cuts the middle\nD: hold the gap, do not back in',
        'Ashdown',
        'whole sheet',
      ),
      block(
        'drill-gap-ladder',
        'Gap ladder',
        12,
        'close before the line',
        'Two sticks at the red line\nA stick and a half at our blue line\nStick in the lane, then body',
        'Falk',
        'one side each',
      ),
      block(
        'drill-off-the-boards',
        'Off the boards',
        10,
        'lane shut: use the boards',
        'Look first: is the stick in the lane?\nAim nearer than it looks: it leaves flatter',
        'Oyelaran',
        'both ends',
      ),
      block(
        'drill-second-puck',
        'Second puck',
        10,
        'stop, head round, stick',
        'Stop, do not skate through\nHead round before the shot\nNo shot until the goalie looks',
        'Tarn',
        'both ends',
      ),
      TALK,
    ]),
    'practice-2': practiceOf(
      'Practice 30',
      days.second,
      'Whoever starts with the pass is level at the red line.',
      [
        WARM_UP,
        block(
          'drill-start-with-the-pass',
          'Start with the pass',
          14,
          'start with the pass',
          'D2 leaves as the first pass leaves\nLevel with the puck at the red line\nDrive the middle, stop in the house',
          'Ashdown',
          'whole sheet, ends by turns',
        ),
        block(
          'drill-five-together',
          'Five together',
          12,
          'come along',
          'Short passes, at once\nFar wing: come to the middle\nDefenders: over our line with the puck',
          'Oyelaran',
          'whole sheet',
        ),
        block(
          'drill-gap-ladder',
          'Gap ladder',
          10,
          'close before the line',
          'Two sticks at the red line\nA stick and a half at our blue line',
          'Falk',
          'one side each',
        ),
        block(
          'drill-three-on-the-heels',
          'Three on the heels',
          8,
          'go at once',
          'First stride on the whistle, no look\nTwo close, one cuts the middle',
          'Ashdown',
          'whole sheet',
        ),
        TALK,
      ],
    ),
    'practice-3': practiceOf(
      'Practice 31',
      days.next,
      'The first forward back has the middle before the puck has our line.',
      [
        WARM_UP,
        block(
          'drill-middle-first',
          'Middle first',
          14,
          'turn, look, middle',
          'F3: read, turn, inside the dots\nLevel before our blue line\nD1: close before the line',
          'Ashdown',
          'whole sheet, ends by turns',
        ),
        block(
          'drill-gap-ladder',
          'Gap ladder',
          10,
          'close before the line',
          'Two sticks at the red line\nA stick and a half at our blue line\nStick in the lane, then body',
          'Falk',
          'one side each',
        ),
        block(
          'drill-three-on-the-heels',
          'Three on the heels',
          10,
          'go at once',
          'First stride on the whistle, no look\nTwo close, one cuts the middle\nD: hold the gap, do not back in',
          'Ashdown',
          'whole sheet',
        ),
        block(
          'drill-second-puck',
          'Second puck',
          10,
          'stop, head round, stick',
          'Stop, do not skate through\nHead round before the shot\nNo shot until the goalie looks',
          'Tarn',
          'both ends',
        ),
        block(
          'drill-start-with-the-pass',
          'Start with the pass',
          10,
          'start with the pass',
          'D2 leaves as the first pass leaves\nDrive the middle, stop in the house',
          'Oyelaran',
          'whole sheet',
        ),
        TALK,
      ],
    ),
  };
}

function block(
  drill: string,
  title: string,
  minutes: number,
  says: string,
  keyPoints: string,
  leads: string,
  ice: string,
): DemoBlock {
  return {
    drill,
    title,
    minutes,
    changeover: 1,
    says,
    keyPoints,
    leads,
    ice,
    pucks: 'see the drill',
    groups: 'White and Blue first',
  };
}

function practiceOf(title: string, day: string, today: string, blocks: readonly DemoBlock[]): Practice {
  return practice.parse({
    kind: 'practice',
    schema: 1,
    title,
    day,
    starts: '19:40',
    iceMinutes: 75,
    place: 'Cannery Road, sheet 2',
    today,
    note: '',
    blocks: Object.fromEntries(
      blocks.map(({ changeover, ...each }, rank) => [
        `block-${rank + 1}`,
        { rank, changeoverMinutes: changeover ?? 0, pucks: '', ice: '', groups: '', ...each },
      ]),
    ),
    missing: [],
  });
}
