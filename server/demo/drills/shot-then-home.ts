import { along, pass, shoot, turn } from './acts.ts';
import { received, shot, whistle } from './cues.ts';
import type { DemoDrill } from './drill-of.ts';

/** F1 shoots, and her shot starts their rush: she must turn and be home inside before the puck is over our line. */
export const shotThenHome: DemoDrill = {
  title: 'Shot, then home',
  says: 'turn, look, middle',
  keyPoints: ['Shoot, stop watching, turn', 'Home between the dots', 'Goal side before our blue line'],
  habits: ['firstBack'],
  minutes: 10,
  spots: {
    F1: {
      side: 'us',
      at: [7, -7],
      waiting: 5,
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
            [-6, 0.5],
            [-17, 1],
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
      waiting: 5,
      acts: [
        along(
          'carry',
          [
            [4, 9.4],
            [-7, 8],
            [-17, 4.4],
          ],
          { cue: received('X1'), effortRatio: 0.9 },
        ),
        shoot('minusX'),
      ],
    },
    GA: { side: 'us', kind: 'goalie', at: [-26.2, 0] },
    GB: { side: 'them', kind: 'goalie', at: [26.2, 0], facingRad: Math.PI },
  },
  pucks: [
    { at: [7.8, -7.9], count: 8 },
    { at: [26.6, 6.6], owner: 'Co', count: 8 },
  ],
  flow: { goesTo: { F1: 'X1', X1: 'F1' } },
};
