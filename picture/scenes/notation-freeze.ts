import { drawCue } from '../ice/cue.ts';
import { drawErrorEllipse, drawGoing, drawPin, drawUnseen, drawWay, drawZone } from '../ice/freeze-marks.ts';
import { drawLane, type LaneState } from '../ice/lane.ts';
import { drawLevel, drawLink } from '../ice/link.ts';
import { drawFlag } from '../ice/things.ts';
import type { Pen } from '../pen/pen.ts';
import { markSheet } from './mark-sheet.ts';
import { someone } from './scene-people.ts';

const lane = (pen: Pen, state: LaneState, words: string, cutXM?: number): void => {
  drawLane(pen, {
    fromM: { xM: -5.4, yM: 0 },
    toM: { xM: 5.4, yM: 0 },
    state,
    words,
    ...(cutXM === undefined ? {} : { cutAtM: { xM: cutXM, yM: 0 } }),
  });
  someone(pen, 'X1', -5.4, 0);
  someone(pen, 'X2', 5.4, 0);
};

export default markSheet('When, and on a freeze', [
  {
    name: 'Cue, whistle, seconds',
    says: 'full fires, open waits for its letter',
    draw: pen => {
      drawCue(pen, { x: -5, y: 0 }, 'a', 'fires');
      drawCue(pen, { x: -2, y: 0 }, 'a', 'waits');
      drawCue(pen, { x: 1.5, y: 0 }, 'w', 'fires');
      drawCue(pen, { x: 4.5, y: 0 }, '2', 'fires');
    },
  },
  {
    name: 'Distance, or a gap that is kept',
    says: 'engineering bars, metres and ±',
    draw: pen => {
      drawLink(pen, { x: -5.6, y: -0.6 }, { x: 5.2, y: 0.5 }, '5.2 ± 0.3 m');
      someone(pen, 'F1', -5.6, 0.6);
      someone(pen, 'X1', 5.2, -0.5);
    },
  },
  {
    name: 'Ghost and way',
    says: 'where she should have been, and how far off',
    draw: pen => {
      drawWay(pen, { xM: -4.5, yM: -0.8 }, { xM: 4.6, yM: 0.7 }, '9.6 m');
      someone(pen, 'F1', 4.6, 0.7, { ghost: true });
      someone(pen, 'F1', -4.5, -0.8);
    },
  },
  {
    name: 'Place with its ±',
    says: '95 % ellipse; longer the way the camera looks',
    draw: pen => {
      drawErrorEllipse(pen, { xM: -3.6, yM: 0 }, { xxM2: 0.05, xyM2: 0.06, yyM2: 0.35 });
      someone(pen, 'D1', -3.6, 0);
      drawErrorEllipse(pen, { xM: 3.6, yM: 0 }, { xxM2: 0.12, xyM2: -0.14, yyM2: 0.7 });
      someone(pen, 'X3', 3.6, 0);
    },
  },
  {
    name: 'Level with',
    says: 'a thin line square to the rink',
    draw: pen => {
      drawLevel(pen, -3.4, 1.35, -1.35, 'level, 0.2 ± 0.3 m');
      someone(pen, 'F1', -3.4, 1.35);
      someone(pen, 'X2', -3.1, -1.35);
    },
  },
  {
    name: 'Lane open',
    says: 'clear between two edges; seconds to spare',
    draw: pen => lane(pen, 'open', 'open, +0.5 s'),
  },
  {
    name: 'Lane contested',
    says: 'ruled one way',
    draw: pen => {
      lane(pen, 'contested', 'contested, +0.1 s');
      someone(pen, 'D1', 1.6, -1.5);
    },
  },
  {
    name: 'Lane shut',
    says: 'ruled both ways, and a bar where it is cut',
    draw: pen => {
      lane(pen, 'shut', 'shut, 0.3 s late', 1.2);
      someone(pen, 'D1', 1.4, -1.35);
    },
  },
  {
    name: 'Where she is going, who is not seen',
    says: 'the next 0.4 s; dotted with a question mark',
    draw: pen => {
      drawGoing(pen, { xM: -5, yM: 0.4 }, { xMps: 8, yMps: -1.4 });
      someone(pen, 'F1', -5, 0.4);
      drawUnseen(pen, { xM: 1.4, yM: 0 }, 'X5, not seen');
    },
  },
  {
    name: 'Zone',
    says: 'a named area, edge dotted like a limit on a chart',
    draw: pen =>
      drawZone(
        pen,
        [
          { xM: -4.4, yM: -1.2 },
          { xM: -1.2, yM: 1.5 },
          { xM: 3.2, yM: 1.5 },
          { xM: 5, yM: -1.2 },
        ],
        'the house',
      ),
  },
  {
    name: 'Finding',
    says: 'a flag, numbered as in the list; full: look at it',
    draw: pen => {
      drawFlag(pen, { xM: -3, yM: -1.2 }, 1, 'look');
      drawFlag(pen, { xM: 2, yM: -1.2 }, 2, 'know');
    },
  },
  {
    name: 'Pin',
    says: 'a cross on a marking; warm when it disagrees',
    draw: pen => {
      drawPin(pen, { xM: -3, yM: 0 }, '3', true);
      drawPin(pen, { xM: 2, yM: 0 }, '7', false);
    },
  },
]);
