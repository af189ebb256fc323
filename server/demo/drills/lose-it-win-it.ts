import { along, pickUp, plain, steal, turn } from './acts.ts';
import { loses, whistle } from './cues.ts';
import type { DemoDrill } from './drill-of.ts';
import { wantsCaught } from './wants.ts';

/** F1 leaves the puck to X1 and hunts it: for that she must turn tight and be on the stick before our blue line. */
export const loseItWinIt: DemoDrill = {
  title: 'Lose it, win it',
  says: 'go at once',
  keyPoints: [
    'Lost: turn towards the puck, tight',
    'Stick on puck from the side',
    'No push, no hook: stick only',
  ],
  habits: ['hunt'],
  wanted: wantsCaught('F1', 'blueLineMinusX'),
  minutes: 9,
  spots: {
    F1: {
      side: 'us',
      at: [2, -8],
      waiting: 4,
      acts: [
        along(
          'carry',
          [
            [7, -7.6],
            [12, -5],
          ],
          { cue: whistle, effortRatio: 0.75 },
        ),
        plain('leave'),
        turn(-Math.PI),
        steal('X1'),
      ],
    },
    X1: {
      side: 'them',
      at: [17, 1.5],
      facingRad: Math.PI,
      waiting: 4,
      acts: [
        pickUp({ cue: loses('F1') }),
        along(
          'carry',
          [
            [8, -1],
            [0, 1],
            [-8.5, 3],
          ],
          { effortRatio: 0.85 },
        ),
      ],
    },
  },
  pucks: [{ at: [2.8, -8.8], count: 10 }],
  flow: { next: { on: 'every', seconds: 7 }, goesTo: { F1: 'X1', X1: 'F1' } },
};
