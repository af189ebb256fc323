import { along, face, pass, pickUp, plain, shoot } from './acts.ts';
import { after, shot, whistle } from './cues.ts';
import type { DemoDrill } from './drill-of.ts';

/** Two come home round the pylons and have to have stopped in the house when the shot goes; the near one has the second puck. */
export const roundAndStop: DemoDrill = {
  title: 'Round and stop',
  says: 'stop, head round, stick',
  keyPoints: [
    'Tight round the pylon, then full',
    'Two bars in the house, not a glide',
    'After the shot: second puck, to the corner',
  ],
  habits: ['house'],
  minutes: 9,
  spots: {
    X1: {
      side: 'them',
      at: [-10.5, -8],
      facingRad: Math.PI,
      waiting: 3,
      acts: [shoot('minusX', 20)].map(act => ({ ...act, cue: after(3.9) })),
    },
    D1: {
      side: 'us',
      at: [-16, 8.8],
      facingRad: 0,
      waiting: 3,
      acts: [
        along(
          'skate',
          [
            [-12, 8],
            [-13, 5],
            [-16, 3.6],
          ],
          { cue: whistle },
        ),
        plain('stop'),
        pickUp({ cue: shot('X1') }),
        pass('Co', 12),
      ],
    },
    F1: {
      side: 'us',
      at: [-2.4, 1],
      facingRad: Math.PI,
      waiting: 3,
      acts: [
        along(
          'skate',
          [
            [-9, 0.5],
            [-14.2, -0.6],
          ],
          { cue: whistle, effortRatio: 0.78 },
        ),
        plain('stop'),
        face('X1'),
      ],
    },
    Co: { side: 'us', kind: 'coach', at: [-25.5, 9.2], facingRad: -Math.PI / 4 },
    G: { side: 'us', kind: 'goalie', at: [-26.2, 0] },
  },
  pucks: [
    { at: [-10, -8.9], count: 10 },
    { at: [-20.5, 4.8], count: 6 },
  ],
  gear: { 'pylon-1': { kind: 'pylon', at: [-13.6, 6.6] } },
  flow: { next: { on: 'every', seconds: 6 } },
};
