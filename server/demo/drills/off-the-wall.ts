import { along, chase, pass, steal } from './acts.ts';
import { caught, received, whistle } from './cues.ts';
import type { DemoDrill } from './drill-of.ts';
import { wantsCaught } from './wants.ts';

/** A rim to X1 on the far boards: F1 must be on her before the red line, and F2 takes the puck when F1 is. */
export const offTheWall: DemoDrill = {
  title: 'Off the wall',
  says: 'one on her, one on the puck',
  keyPoints: [
    'F1: go when she has it, from inside',
    'F2: wait for F1, then the puck',
    'Let her off the boards first',
  ],
  habits: ['hunt'],
  wanted: wantsCaught('F1', 'centreLine'),
  minutes: 10,
  spots: {
    Co: {
      side: 'them',
      kind: 'coach',
      at: [26, -10.6],
      acts: [pass('X1', 19, { cue: whistle, way: 'rim' })],
    },
    X1: {
      side: 'them',
      at: [19, 11.6],
      facingRad: Math.PI,
      waiting: 4,
      acts: [
        along(
          'carry',
          [
            [11, 8.8],
            [1, 7],
            [-8.5, 5.5],
          ],
          { cue: received('X1'), effortRatio: 0.8 },
        ),
      ],
    },
    F1: {
      side: 'us',
      at: [23, 1],
      facingRad: Math.PI / 2,
      waiting: 4,
      acts: [chase('X1', { cue: received('X1') })],
    },
    F2: {
      side: 'us',
      at: [9, -1],
      facingRad: Math.PI,
      waiting: 4,
      acts: [steal('X1', { cue: caught('X1') })],
    },
  },
  pucks: [{ at: [26.6, -11], owner: 'Co', count: 10 }],
  flow: { pauseS: 2, goesTo: { F1: 'F2', F2: 'X1', X1: 'F1' } },
};
