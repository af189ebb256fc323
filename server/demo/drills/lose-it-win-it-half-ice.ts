import { along, pickUp, plain, steal, turn } from './acts.ts';
import { loses, whistle } from './cues.ts';
import type { DemoDrill } from './drill-of.ts';
import { wantsCaught } from './wants.ts';

/** The same on half the ice, with less way to win it back in. */
export const loseItWinItHalfIce: DemoDrill = {
  title: 'Lose it, win it, half ice',
  says: 'go at once',
  keyPoints: ['Lost: turn towards the puck, tight', 'Win it before the blue line', 'Stick only'],
  habits: ['hunt'],
  wanted: wantsCaught('F1', 'blueLineMinusX'),
  minutes: 8,
  ice: 'halfIce',
  variantOf: { drill: 'drill-lose-it-win-it', as: 'halfIce' },
  spots: {
    F1: {
      side: 'us',
      at: [12, -8.5],
      waiting: 3,
      acts: [
        along(
          'carry',
          [
            [16, -8],
            [20, -6],
          ],
          { cue: whistle, effortRatio: 0.7 },
        ),
        plain('leave'),
        turn(-Math.PI),
        steal('X1'),
      ],
    },
    X1: {
      side: 'them',
      at: [24, 0.6],
      facingRad: -Math.PI / 2,
      waiting: 3,
      acts: [
        pickUp({ cue: loses('F1') }),
        along(
          'carry',
          [
            [16, -1],
            [9, 3.6],
          ],
          { effortRatio: 0.8, stops: true },
        ),
      ],
    },
  },
  pucks: [{ at: [12.8, -9.3], count: 8 }],
  flow: { pauseS: 2, goesTo: { F1: 'X1', X1: 'F1' } },
};
