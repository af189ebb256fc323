import { along, pass, shoot } from './acts.ts';
import { after, received, whistle } from './cues.ts';
import type { DemoDrill } from './drill-of.ts';
import { wantsPass } from './wants.ts';

/** Both ends at once: warm legs, warm hands, warm goalies. */
export const fourCorners: DemoDrill = {
  title: 'Four corners',
  says: 'heads up early',
  keyPoints: [
    'Pass before the red line',
    'Goalies: high, low, then free',
    'Easy first, game pace last three',
  ],
  habits: [],
  wanted: wantsPass('F2', 1),
  minutes: 10,
  spots: {
    F1: {
      side: 'us',
      at: [-23, 8.8],
      facingRad: 0,
      waiting: 4,
      acts: [
        along(
          'skate',
          [
            [-12, 9],
            [-3, 8.6],
          ],
          { cue: whistle, effortRatio: 0.8 },
        ),
        along(
          'carry',
          [
            [6, 6.8],
            [16.5, 2.8],
          ],
          { cue: received('F1'), effortRatio: 0.85 },
        ),
        shoot('plusX', 20),
      ],
    },
    F2: {
      side: 'us',
      at: [14.5, 9.6],
      facingRad: Math.PI,
      acts: [pass('F1', 12, { cue: after(2.4) })],
    },
    F3: {
      side: 'us',
      at: [23, -8.8],
      facingRad: Math.PI,
      waiting: 4,
      acts: [
        along(
          'skate',
          [
            [12, -9],
            [0, -8],
            [-10, -6],
            [-18, -4],
          ],
          { cue: whistle, effortRatio: 0.8, stops: true },
        ),
      ],
    },
    GA: { side: 'us', kind: 'goalie', at: [-26.2, 0] },
    GB: { side: 'them', kind: 'goalie', at: [26.2, 0], facingRad: Math.PI },
  },
  pucks: [{ at: [14.9, 10.2], owner: 'F2', count: 8 }],
};
