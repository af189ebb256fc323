import { along, pass } from './acts.ts';
import { received, whistle } from './cues.ts';
import type { DemoDrill } from './drill-of.ts';

/** Five leave our end close together: three short passes, nobody over twenty metres from the puck. */
export const fiveTogether: DemoDrill = {
  title: 'Five together',
  says: 'come along',
  keyPoints: [
    'Short passes, at once',
    'Far wing: come to the middle',
    'Defenders: over our line with the puck',
  ],
  habits: ['five', 'lateDefender'],
  minutes: 11,
  from: { game: 'game-join', freeze: 'outlet', said: 'The wing has it on the boards' },
  spots: {
    D1: {
      side: 'us',
      at: [-23.2, -7],
      facingRad: 0,
      waiting: 1,
      acts: [
        pass('F1', 13, { cue: whistle }),
        along(
          'skate',
          [
            [-15.5, -7.4],
            [-6, -5.4],
            [2, -3],
          ],
          { stops: true, effortRatio: 0.85 },
        ),
      ],
    },
    D2: {
      side: 'us',
      at: [-22.8, 1.6],
      facingRad: 0,
      waiting: 1,
      acts: [
        along(
          'skate',
          [
            [-14, 3.4],
            [-5, 4.4],
            [3, 4.6],
          ],
          { cue: whistle, stops: true, effortRatio: 0.8 },
        ),
      ],
    },
    F1: {
      side: 'us',
      at: [-16.6, -11],
      facingRad: 0,
      waiting: 1,
      acts: [
        pass('F2', 12, { cue: received('F1') }),
        along(
          'skate',
          [
            [-8, -10.6],
            [2, -9.6],
            [10, -8],
          ],
          { stops: true, effortRatio: 0.85 },
        ),
      ],
    },
    F2: {
      side: 'us',
      at: [-17.5, -3.4],
      facingRad: 0,
      waiting: 1,
      acts: [
        along(
          'carry',
          [
            [-10, -2.6],
            [-2, -1.2],
          ],
          { cue: received('F2'), effortRatio: 0.8 },
        ),
        pass('F3', 13),
        along(
          'skate',
          [
            [6, 0],
            [13, 1],
          ],
          { stops: true, effortRatio: 0.9 },
        ),
      ],
    },
    F3: {
      side: 'us',
      at: [-14.6, 8.2],
      facingRad: 0,
      waiting: 1,
      acts: [
        along(
          'skate',
          [
            [-6, 8.6],
            [3, 7.4],
          ],
          { cue: received('F2'), effortRatio: 0.8 },
        ),
        along(
          'carry',
          [
            [9, 6],
            [15.5, 4],
          ],
          { cue: received('F3'), effortRatio: 0.85, stops: true },
        ),
      ],
    },
  },
  pucks: [{ at: [-23.8, -7.4], owner: 'D1', count: 6 }],
};
