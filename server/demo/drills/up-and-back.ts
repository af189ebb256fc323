import { along, gap, pass, plain, shoot } from './acts.ts';
import { received, whistle } from './cues.ts';
import type { DemoDrill } from './drill-of.ts';

/** D1 has to go up before she goes back: the gap is made with the first strides, not at the line. Both ends at once. */
export const upAndBack: DemoDrill = {
  title: 'Up and back',
  says: 'close before the line',
  keyPoints: [
    'Up hard while the puck is on its way',
    'Stop, then backward with her',
    'Two sticks at our line',
  ],
  habits: ['gap'],
  minutes: 9,
  variantOf: { drill: 'drill-gap-ladder', as: 'harder' },
  spots: {
    Co: { side: 'them', kind: 'coach', at: [4, -11], facingRad: 0, acts: [pass('X1', 12, { cue: whistle })] },
    X1: {
      side: 'them',
      at: [14, -6],
      facingRad: Math.PI,
      waiting: 2,
      acts: [
        along(
          'carry',
          [
            [6, -6.4],
            [-6, -6],
            [-17, -4],
          ],
          { cue: received('X1'), effortRatio: 0.82 },
        ),
        shoot('minusX'),
      ],
    },
    D1: {
      side: 'us',
      at: [-6, -2],
      waiting: 2,
      acts: [
        along(
          'skate',
          [
            [-3, -2.8],
            [-0.5, -3.6],
          ],
          { cue: whistle },
        ),
        plain('stop'),
        gap('X1', 2.8),
      ],
    },
    G: { side: 'us', kind: 'goalie', at: [-26.2, 0] },
  },
  pucks: [{ at: [4.6, -11.6], owner: 'Co', count: 8 }],
  flow: { ends: 'both', pauseS: 4 },
};
