import { along, pickUp, steal } from './acts.ts';
import { whistle } from './cues.ts';
import type { DemoDrill } from './drill-of.ts';
import { wantsCaught } from './wants.ts';

/** Hunt from behind at one end; behind the divider three against three on small nets, where every loss is hunted at once. */
export const winItSmallNets: DemoDrill = {
  title: 'Win it, small nets',
  says: 'go at once',
  keyPoints: [
    'Lost it? You are the first to go',
    'Small nets: who scored brings the next puck',
    'X1 at the dots with it: lost, go again',
  ],
  habits: ['hunt'],
  wanted: wantsCaught('F1', 'goalLineMinusX'),
  minutes: 12,
  spots: {
    X1: {
      side: 'them',
      at: [5, 5.6],
      facingRad: -Math.PI / 2,
      waiting: 3,
      acts: [
        pickUp({ cue: whistle }),
        along(
          'carry',
          [
            [-11, 4.6],
            [-19, 1],
          ],
          { effortRatio: 0.75, stops: true },
        ),
      ],
    },
    F1: {
      side: 'us',
      at: [4.6, 2.2],
      facingRad: Math.PI / 2,
      waiting: 3,
      acts: [steal('X1', { cue: whistle })],
    },
  },
  pucks: [{ at: [0.6, 6.4], count: 10 }],
  gear: {
    'divider-1': { kind: 'divider', at: [7.2, 0], facingRad: 0 },
    'net-1': { kind: 'smallNet', at: [10.5, 0], facingRad: 0 },
    'net-2': { kind: 'smallNet', at: [24, 0], facingRad: Math.PI },
  },
  games: [
    {
      from: [8, -12.9],
      to: [28, 12.9],
      us: 3,
      them: 3,
      nets: ['net-1', 'net-2'],
      resets: 'whoScored',
      shiftS: 40,
    },
  ],
  flow: { next: { on: 'every', seconds: 6 }, goesTo: { F1: 'X1', X1: 'F1' } },
};
