import { along, pass, shoot } from './acts.ts';
import { after, received, whistle } from './cues.ts';
import type { DemoDrill } from './drill-of.ts';
import { wantsPass } from './wants.ts';

/** The simpler one, across an end zone: the stick only stands in one lane, and F1 passes as soon as F2 is out of it. */
export const pastTheStick: DemoDrill = {
  title: 'Past the stick',
  says: 'come along',
  keyPoints: ['F2: go where the stick is not', 'F1: pass as she gets there', 'Flat and firm'],
  habits: ['five'],
  wanted: wantsPass('F1', 1),
  minutes: 8,
  ice: 'crossIce',
  variantOf: { drill: 'drill-over-the-stick', as: 'simpler' },
  spots: {
    F1: {
      side: 'us',
      at: [16, -9],
      facingRad: Math.PI / 2,
      waiting: 2,
      acts: [
        pass('F2', 14, { cue: after(1.15) }),
        along(
          'skate',
          [
            [14.5, -4],
            [15.5, 4],
          ],
          { effortRatio: 0.8, stops: true },
        ),
      ],
    },
    X1: {
      side: 'them',
      at: [20.2, -5.4],
      facingRad: Math.PI / 2,
    },
    F2: {
      side: 'us',
      at: [24, -6],
      facingRad: Math.PI / 2,
      waiting: 2,
      acts: [
        along(
          'skate',
          [
            [23, -1],
            [22.4, 1.4],
          ],
          { cue: whistle, effortRatio: 0.8 },
        ),
        along('carry', [[20, 6.5]], { cue: received('F2'), effortRatio: 0.8 }),
        shoot('plusX', 14),
      ],
    },
  },
  pucks: [{ at: [15.4, -9.8], count: 8 }],
  flow: { next: { on: 'every', seconds: 5 }, goesTo: { F1: 'F2', F2: 'F1' } },
};
