import { along, gap, pass, shoot } from './acts.ts';
import { received, whistle } from './cues.ts';
import type { DemoDrill } from './drill-of.ts';

/** One on one from the red line, the gap smaller at every line. */
export const gapLadder: DemoDrill = {
  title: 'Gap ladder',
  says: 'close before the line',
  keyPoints: [
    'Two sticks at the red line',
    'A stick and a half at our blue line',
    'Stick in the lane, then body',
  ],
  habits: ['gap'],
  minutes: 10,
  from: { game: 'game-hunt', freeze: 'ourLine', said: 'The puck is over our blue line' },
  spots: {
    Co: { side: 'them', kind: 'coach', at: [20, 1], acts: [pass('X1', 14, { cue: whistle })] },
    X1: {
      side: 'them',
      at: [9.5, -7.8],
      facingRad: Math.PI,
      waiting: 5,
      acts: [
        along(
          'carry',
          [
            [1, -8.2],
            [-8, -7.2],
            [-17.5, -4.6],
          ],
          { cue: received('X1'), effortRatio: 0.75 },
        ),
        shoot('minusX'),
      ],
    },
    D1: {
      side: 'us',
      at: [4.6, -6.2],
      facingRad: -Math.PI / 4,
      waiting: 5,
      acts: [gap('X1', 2.4, { cue: received('X1') })],
    },
    G: { side: 'us', kind: 'goalie', at: [-26.2, 0] },
  },
  pucks: [{ at: [20.6, 1.6], owner: 'Co', count: 10 }],
};
