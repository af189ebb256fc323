import { rinkOf } from '@icewright/engine';
import { PAGE } from '../card/page-measures.ts';
import type { FreezeDrawn } from '../ice/freeze-at.ts';
import { drawMeetingSheet } from '../meeting/draw-meeting-sheet.ts';
import type { MeetingSheet } from '../meeting/meeting-sheet.ts';
import type { Scene } from './scene.ts';

const at = (xM: number, yM: number) => ({ xM, yM });

const FREEZE: FreezeDrawn = {
  rink: rinkOf({ preset: '200x85ft' }),
  seenM: [at(-28, 12.4), at(5.5, 12.4), at(3, -11.5), at(-15.5, -12.5)],
  puckM: at(-7.4, 7.1),
  people: [
    { side: 'them', role: 'X1', atM: at(-6.2, 7.6) },
    { side: 'them', role: 'X2', atM: at(-2.6, -0.4) },
    { side: 'us', role: 'D1 4', atM: at(-10.6, 5.2), covM2: { xxM2: 0.02, xyM2: 0.01, yyM2: 0.1 } },
    { side: 'us', role: 'F1 21', atM: at(-0.9, 8), wantedM: at(-7.8, 0.2) },
  ],
};

export const TOGETHER_SHEET: MeetingSheet = {
  team: 'Tern Harbour Lanterns',
  title: 'Together, or not at all',
  facts: [
    { small: 'day', strong: 'Thu 26 Nov' },
    { small: 'time for it', strong: '10 min' },
    { small: 'moments', strong: '3' },
  ],
  items: [
    {
      number: 1,
      clock: '0:00',
      line: 'Gone with the first pass, not after it',
      which: 'done, 27 Halvorsby, 0:06.0, Quillback Bay, away',
      asks: 'What did she see before the pass was made?',
      freeze: FREEZE,
    },
    {
      number: 2,
      clock: '1:07',
      line: 'Eyes on the puck, then go',
      which: 'missed, 14 Nakatani, 0:12.8, Quillback Bay, away',
      asks: 'Where is the puck when we lose it?',
    },
    {
      number: 3,
      clock: '3:51',
      line: 'Inside first, then the puck',
      which: 'missed, 21 Thornquist, 0:07.8, Quillback Bay, at home',
      asks: 'Which way is shorter to the middle, and who says so on the ice before it is too late?',
      freeze: { ...FREEZE, seenM: [] },
    },
  ],
};

export default {
  title: 'A meeting on paper: the line, the freeze on the ice, the question, room to write',
  viewBox: [0, 0, PAGE.width, PAGE.height],
  digits: 2,
  draw: pen => drawMeetingSheet(pen, TOGETHER_SHEET),
} satisfies Scene;
