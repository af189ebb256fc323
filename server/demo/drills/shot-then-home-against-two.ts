import { along, pass, shoot, turn } from './acts.ts';
import { received, shot, whistle } from './cues.ts';
import type { DemoDrill } from './drill-of.ts';

/** The same against two: the second comes through the middle, and only who is home inside takes the pass away. */
export const shotThenHomeAgainstTwo: DemoDrill = {
  title: 'Shot, then home, against two',
  says: 'turn, look, middle',
  keyPoints: ['Look for the second one as you turn', 'Inside first, the puck is D’s', 'Stick in the lane'],
  habits: ['firstBack', 'gap'],
  minutes: 12,
  variantOf: { drill: 'drill-shot-then-home', as: 'harder' },
  spots: {
    F1: {
      side: 'us',
      at: [7, -7],
      waiting: 4,
      acts: [
        along(
          'carry',
          [
            [12, -6.4],
            [16.5, -4],
          ],
          { cue: whistle, effortRatio: 0.8 },
        ),
        shoot('plusX', 22),
        turn(-Math.PI, 0.3),
        along(
          'skate',
          [
            [6, -2],
            [-6, -0.5],
            [-17, -0.4],
          ],
          { stops: true },
        ),
      ],
    },
    Co: { side: 'them', kind: 'coach', at: [26, 6], acts: [pass('X1', 11, { cue: shot('F1') })] },
    X1: {
      side: 'them',
      at: [18, 9.4],
      facingRad: Math.PI,
      waiting: 4,
      acts: [
        along(
          'carry',
          [
            [4, 9.6],
            [-7, 8.6],
            [-15, 6.5],
          ],
          { cue: received('X1'), effortRatio: 0.9 },
        ),
        pass('X2', 13),
      ],
    },
    X2: {
      side: 'them',
      at: [12, 3.4],
      facingRad: Math.PI,
      waiting: 4,
      acts: [
        along(
          'skate',
          [
            [2, 2.6],
            [-9, 2],
            [-18, 2],
          ],
          { cue: received('X1'), effortRatio: 0.8, stops: true },
        ),
        shoot('minusX'),
      ],
    },
    D1: {
      side: 'us',
      at: [-1, 7],
      facingRad: 0,
      waiting: 4,
      acts: [{ kind: 'gap', whom: 'spot-x1', distanceM: 2.4, cue: received('X1') }],
    },
    GA: { side: 'us', kind: 'goalie', at: [-26.2, 0] },
    GB: { side: 'them', kind: 'goalie', at: [26.2, 0], facingRad: Math.PI },
  },
  pucks: [
    { at: [7.8, -7.9], count: 8 },
    { at: [26.6, 6.6], owner: 'Co', count: 8 },
  ],
};
