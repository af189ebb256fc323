import { along, chase, gap } from './acts.ts';
import { whistle } from './cues.ts';
import type { DemoDrill } from './drill-of.ts';
import { wantsCaught } from './wants.ts';

/** Three hunt one carrier who cuts across before two who keep the gap: caught at about the red line, or go again. */
export const threeOnTheHeels: DemoDrill = {
  title: 'Three on the heels',
  says: 'go at once',
  keyPoints: [
    'First stride on the whistle, no look',
    'Two close, one cuts the middle',
    'D: hold the gap, do not back in',
  ],
  habits: ['hunt', 'firstBack'],
  wanted: wantsCaught('F1', 'centreLine'),
  minutes: 10,
  from: { game: 'game-hunt', freeze: 'turnover', said: 'The puck is lost above their circles' },
  spots: {
    X1: {
      side: 'them',
      at: [13, -2.7],
      facingRad: Math.PI,
      waiting: 4,
      acts: [
        along(
          'carry',
          [
            [7, -2.9],
            [2.5, 0],
            [0, 5],
            [-0.6, 8.2],
          ],
          { cue: whistle, effortRatio: 0.82, stops: true },
        ),
      ],
    },
    F1: {
      side: 'us',
      at: [14.3, 2.3],
      facingRad: Math.PI,
      waiting: 4,
      acts: [chase('X1', { cue: whistle })],
    },
    F2: { side: 'us', at: [17.5, -5], facingRad: Math.PI, waiting: 4, acts: [chase('X1', { cue: whistle })] },
    F3: {
      side: 'us',
      at: [16.6, 6.1],
      facingRad: Math.PI,
      waiting: 4,
      acts: [chase('X1', { cue: whistle })],
    },
    D1: {
      side: 'us',
      at: [7.4, -3.6],
      facingRad: Math.PI / 3,
      waiting: 2,
      acts: [gap('X1', 2.2, { cue: whistle })],
    },
    D2: {
      side: 'us',
      at: [1.5, -3.5],
      facingRad: Math.PI / 4,
      waiting: 2,
      acts: [gap('X1', 6, { cue: whistle })],
    },
    G: { side: 'us', kind: 'goalie', at: [-26.2, 0] },
  },
  pucks: [{ at: [12.3, -2.7], owner: 'X1', count: 6 }],
};
