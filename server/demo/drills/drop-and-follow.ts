import { along, gap, pass, shoot } from './acts.ts';
import { after, crosses, received, whistle } from './cues.ts';
import type { DemoDrill } from './drill-of.ts';
import { wantsLevel } from './wants.ts';

/** The defender backs in with the carrier: who comes close behind has the puck and the room, if she comes at once. */
export const dropAndFollow: DemoDrill = {
  title: 'Drop and follow',
  says: 'come along',
  keyPoints: [
    'F2: three lengths behind, not ten',
    'F1: drop over the line, then drive',
    'F2: shot from the top of the circles',
  ],
  habits: ['five'],
  wanted: wantsLevel('F2', 'blueLinePlusX', 5.5),
  minutes: 9,
  spots: {
    F1: {
      side: 'us',
      at: [-5, -7],
      waiting: 4,
      acts: [
        along(
          'carry',
          [
            [2, -6.8],
            [9, -4],
          ],
          { cue: whistle, effortRatio: 0.85 },
        ),
        pass('F2', 2, { way: 'drop', cue: crosses('F1', 'blueLinePlusX') }),
        along(
          'skate',
          [
            [15, 1.5],
            [21.5, 3.4],
          ],
          { stops: true, effortRatio: 0.8 },
        ),
      ],
    },
    F2: {
      side: 'us',
      at: [-7.7, -9.8],
      waiting: 4,
      acts: [
        along(
          'skate',
          [
            [0, -8.8],
            [8.6, -4.8],
          ],
          { cue: after(0.6), effortRatio: 0.85 },
        ),
        along('carry', [[15.5, -2]], { cue: received('F2'), effortRatio: 0.9 }),
        shoot('plusX'),
      ],
    },
    X1: {
      side: 'them',
      at: [5, -1.6],
      facingRad: -Math.PI / 2,
      waiting: 4,
      acts: [gap('F1', 2.6, { cue: whistle })],
    },
    G: { side: 'them', kind: 'goalie', at: [26.2, 0], facingRad: Math.PI },
  },
  pucks: [{ at: [-4.2, -7.9], count: 10 }],
  flow: { goesTo: { F1: 'F2', F2: 'X1', X1: 'F1' } },
};
