import { PAGE } from '../card/page-measures.ts';
import { drawFreezeSheet, type FreezeSheet } from '../meeting/draw-freeze-sheet.ts';
import { TOGETHER_SHEET } from './meeting-sheet.ts';
import type { Scene } from './scene.ts';

export const OUR_LINE_SHEET: FreezeSheet = {
  team: TOGETHER_SHEET.team,
  title: 'The puck is over our blue line',
  facts: [
    { small: 'game', strong: 'Quillback Bay, at home' },
    { small: 'at', strong: '0:07.8' },
  ],
  says: 'turn, look, middle',
  freeze: TOGETHER_SHEET.items[0]!.freeze!,
};

export default {
  title: 'One freeze on paper',
  viewBox: [0, 0, PAGE.width, PAGE.height],
  digits: 2,
  draw: pen => drawFreezeSheet(pen, OUR_LINE_SHEET),
} satisfies Scene;
