import { along, pass, pickUp, plain, shoot } from './acts.ts';
import { received, whistle } from './cues.ts';
import type { DemoDrill } from './drill-of.ts';
import { wantsLevel } from './wants.ts';

/** D1 goes back for the puck, passes off the boards, and must be level with it at the red line: no look at her own pass. */
export const backOutAlong: DemoDrill = {
  title: 'Back, out, along',
  says: 'start with the pass',
  keyPoints: [
    'Backward, look over the shoulder, pivot',
    'Pass, and the next stride is forward',
    'Level at the red line',
  ],
  habits: ['lateDefender'],
  wanted: wantsLevel('D1', 'centreLine', 2),
  minutes: 10,
  variantOf: { drill: 'drill-start-with-the-pass', as: 'fewer' },
  spots: {
    D1: {
      side: 'us',
      at: [-12, 2],
      facingRad: Math.PI / 4,
      waiting: 5,
      acts: [
        along('skate', [[-16, 4]], { cue: whistle, facing: 'backward', effortRatio: 0.8 }),
        plain('pivot'),
        pickUp(),
        pass('F1', 14),
        along(
          'skate',
          [
            [-13, 5.4],
            [0, 3],
            [12, 2],
          ],
          { stops: true },
        ),
      ],
    },
    F1: {
      side: 'us',
      at: [-14, 10],
      waiting: 5,
      acts: [
        along(
          'carry',
          [
            [-5, 9.4],
            [5, 8],
            [15.5, 4],
          ],
          { cue: received('F1'), effortRatio: 0.82 },
        ),
        shoot('plusX'),
      ],
    },
    G: { side: 'them', kind: 'goalie', at: [26.2, 0], facingRad: Math.PI },
  },
  pucks: [{ at: [-22, 6], count: 10 }],
};
