import { along, pass } from './acts.ts';
import { received, whistle } from './cues.ts';
import type { DemoDrill } from './drill-of.ts';
import { wantsPass } from './wants.ts';

/** The straight lane is shut by a stick: the boards are the way round it. */
export const offTheBoards: DemoDrill = {
  title: 'Off the boards',
  says: 'lane shut: use the boards',
  keyPoints: [
    'Look first: is the stick in the lane?',
    'Aim nearer than it looks: it leaves flatter',
    'Wing: skate onto it, do not wait',
  ],
  habits: ['five'],
  wanted: wantsPass('D1', 1),
  minutes: 8,
  spots: {
    D1: {
      side: 'us',
      at: [-22, 6.5],
      facingRad: 0,
      waiting: 4,
      acts: [
        pass('F1', 15, { cue: whistle, way: 'bank' }),
        along(
          'skate',
          [
            [-15, -1.5],
            [-5, -2.5],
          ],
          { stops: true },
        ),
      ],
    },
    X1: { side: 'them', at: [-15.6, 8.2], facingRad: Math.PI / 2, waiting: 2 },
    F1: {
      side: 'us',
      at: [-12.6, 9.6],
      facingRad: 0,
      waiting: 4,
      acts: [
        along(
          'carry',
          [
            [-4, 8.4],
            [6, 6.2],
            [15, 4.4],
          ],
          { cue: received('F1'), effortRatio: 0.9, stops: true },
        ),
      ],
    },
  },
  pucks: [{ at: [-22.6, 6], owner: 'D1', count: 8 }],
};
