import { along, pass, screen, shoot } from './acts.ts';
import { reaches, received, whistle } from './cues.ts';
import type { DemoDrill } from './drill-of.ts';
import { wantsPass } from './wants.ts';

/** A stick stands in the lane out of our end: D1 has to lift the puck over it to a wing who is on her way. */
export const overTheStick: DemoDrill = {
  title: 'Over the stick',
  says: 'come along',
  keyPoints: [
    'D1: eyes up, stick in the lane: over it',
    'F1: skate, blade on the ice',
    'F2: along through the middle',
  ],
  habits: ['five'],
  wanted: wantsPass('D1', 1),
  minutes: 9,
  spots: {
    D1: {
      side: 'us',
      at: [-23.5, 4],
      waiting: 4,
      acts: [pass('F1', 14, { way: 'saucer', cue: reaches('F1', [-8.5, -4.2], 2) })],
    },
    X1: {
      side: 'them',
      at: [-19.5, 2.6],
      facingRad: Math.PI,
      acts: [screen('D1', 'F1', 0.2, { cue: whistle })],
    },
    F1: {
      side: 'us',
      at: [-14, -1.6],
      waiting: 4,
      acts: [
        along(
          'skate',
          [
            [-8.5, -4.2],
            [-1, -7],
          ],
          { cue: whistle, effortRatio: 0.8 },
        ),
        along(
          'carry',
          [
            [7, -6.4],
            [15.5, -3.4],
          ],
          { cue: received('F1'), effortRatio: 0.9 },
        ),
        shoot('plusX'),
      ],
    },
    F2: {
      side: 'us',
      at: [-16, 9.5],
      waiting: 4,
      acts: [
        along(
          'skate',
          [
            [-4, 7],
            [8, 3],
            [19, 2.6],
          ],
          { cue: whistle, effortRatio: 0.8, stops: true },
        ),
      ],
    },
    G: { side: 'them', kind: 'goalie', at: [26.2, 0], facingRad: Math.PI },
  },
  pucks: [{ at: [-24, 4.8], count: 10 }],
  flow: { goesTo: { D1: 'F1', F1: 'F2', F2: 'D1' } },
};
