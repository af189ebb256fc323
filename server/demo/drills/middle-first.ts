import { along, gap, pass, shoot } from './acts.ts';
import { received, whistle } from './cues.ts';
import type { DemoDrill } from './drill-of.ts';

/** F3 reads the lost puck, turns, and has the middle before it is over our line. */
export const middleFirst: DemoDrill = {
  title: 'Middle first',
  says: 'turn, look, middle',
  keyPoints: ['F3: read, turn, inside the dots', 'Level before our blue line', 'D1: close before the line'],
  habits: ['firstBack', 'gap'],
  minutes: 12,
  from: { game: 'game-hunt', freeze: 'ourLine', said: 'The puck is over our blue line' },
  spots: {
    Co: { side: 'them', kind: 'coach', at: [18, -7], acts: [pass('X2', 13, { cue: whistle })] },
    X1: {
      side: 'them',
      at: [6.5, 9.6],
      facingRad: Math.PI,
      waiting: 4,
      acts: [
        along(
          'carry',
          [
            [-2, 9.8],
            [-9, 8.4],
            [-17, 4.6],
          ],
          { cue: received('X1'), effortRatio: 0.78 },
        ),
        shoot('minusX'),
      ],
    },
    X2: {
      side: 'them',
      at: [13.5, 6.2],
      facingRad: Math.PI,
      waiting: 4,
      acts: [
        pass('X1', 13, { cue: received('X2') }),
        along(
          'skate',
          [
            [4, 3.5],
            [-8, 1.5],
            [-16, 1.2],
          ],
          { stops: true, effortRatio: 0.85 },
        ),
      ],
    },
    D1: {
      side: 'us',
      at: [0.8, 5.8],
      facingRad: 0,
      waiting: 2,
      acts: [gap('X1', 2.4, { cue: received('X1') })],
    },
    F3: {
      side: 'us',
      at: [11, -2],
      facingRad: 0,
      waiting: 4,
      acts: [
        along(
          'skate',
          [
            [2, -1.4],
            [-8, -0.9],
            [-18, -0.6],
          ],
          { cue: received('X2'), stops: true },
        ),
      ],
    },
    G: { side: 'us', kind: 'goalie', at: [-26.2, 0] },
  },
  pucks: [{ at: [18.6, -7.6], owner: 'Co', count: 8 }],
};
