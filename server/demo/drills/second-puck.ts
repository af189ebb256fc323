import { along, pass, shoot } from './acts.ts';
import { received, whistle } from './cues.ts';
import type { DemoDrill } from './drill-of.ts';

/** Two stop in the house before the shot and look for the second puck. */
export const secondPuck: DemoDrill = {
  title: 'Second puck',
  says: 'stop, head round, stick',
  keyPoints: ['Stop, do not skate through', 'Head round before the shot', 'No shot until the goalie looks'],
  habits: ['house'],
  minutes: 9,
  spots: {
    Co: { side: 'them', kind: 'coach', at: [-22, -9.6], acts: [pass('X1', 12, { cue: whistle })] },
    X1: {
      side: 'them',
      at: [-12.4, -3],
      facingRad: Math.PI,
      waiting: 3,
      acts: [{ kind: 'hold', seconds: 1.45, cue: received('X1') }, shoot('minusX', 20)],
    },
    D1: {
      side: 'us',
      at: [-13.5, 6.6],
      facingRad: Math.PI,
      waiting: 3,
      acts: [
        along(
          'skate',
          [
            [-16.5, 4.6],
            [-19.5, 2.8],
          ],
          { cue: whistle, stops: true, effortRatio: 0.9 },
        ),
      ],
    },
    F1: {
      side: 'us',
      at: [-7.5, -7.4],
      facingRad: Math.PI,
      waiting: 3,
      acts: [
        along(
          'skate',
          [
            [-13.5, -6.3],
            [-17.4, -4.4],
          ],
          { cue: whistle, stops: true, effortRatio: 0.9 },
        ),
      ],
    },
    G: { side: 'us', kind: 'goalie', at: [-26.2, 0] },
  },
  pucks: [{ at: [-22.6, -10], owner: 'Co', count: 10 }],
  flow: { pauseS: 2 },
};
