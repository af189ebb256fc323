import { along, pass, shoot } from './acts.ts';
import { received, whistle } from './cues.ts';
import type { DemoDrill } from './drill-of.ts';
import { wantsLevel } from './wants.ts';

/** The far defender leaves with the first pass and is level at the red line. */
export const startWithThePass: DemoDrill = {
  title: 'Start with the pass',
  says: 'start with the pass',
  keyPoints: [
    'D2 leaves as the first pass leaves',
    'Level with the puck at the red line',
    'Drive the middle, stop in the house',
  ],
  habits: ['lateDefender', 'five'],
  wanted: wantsLevel('D2', 'centreLine', 2),
  minutes: 12,
  from: { game: 'game-join', freeze: 'redLine', said: 'At the red line' },
  spots: {
    D1: {
      side: 'us',
      at: [-23.5, -3],
      facingRad: 0,
      waiting: 3,
      acts: [pass('F1', 14, { cue: whistle })],
    },
    D2: {
      side: 'us',
      at: [-22.6, 7],
      facingRad: 0,
      waiting: 3,
      acts: [
        along(
          'skate',
          [
            [-12, 6.4],
            [0, 3.6],
            [12, 2.6],
            [21, 1.6],
          ],
          { cue: whistle, stops: true },
        ),
      ],
    },
    F1: {
      side: 'us',
      at: [-14, -11.2],
      facingRad: 0,
      waiting: 3,
      acts: [
        pass('F2', 13, { cue: received('F1') }),
        along(
          'skate',
          [
            [-4, -11],
            [6, -9.8],
            [14, -7.5],
          ],
          { effortRatio: 0.85, stops: true },
        ),
      ],
    },
    F2: {
      side: 'us',
      at: [-11.5, -1.5],
      facingRad: 0,
      waiting: 3,
      acts: [
        along(
          'carry',
          [
            [-4, -3.4],
            [5, -4.6],
            [15, -4.6],
          ],
          { cue: received('F2'), effortRatio: 0.9 },
        ),
        shoot('plusX'),
      ],
    },
    G: { side: 'them', kind: 'goalie', at: [26.2, 0], facingRad: Math.PI },
  },
  pucks: [{ at: [-24.1, -3.6], owner: 'D1', count: 8 }],
};
