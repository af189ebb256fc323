import { expect, it } from 'vitest';
import { recordingOf } from '../pen/recording-pen.ts';
import { MIDDLE_FIRST_SHEET } from '../scenes/drill-sheet.ts';
import { drawDrillPicture, drillPictureSize } from './draw-drill-picture.ts';

it('a title of two hundred letters stays on the picture, in lines or cut within one', () => {
  for (const title of ['late back-checker '.repeat(11), 'y'.repeat(200)]) {
    const drawn = { ...MIDDLE_FIRST_SHEET, title, says: '' };
    let widest = 0;
    let width = 0;
    const calls = recordingOf(pen => {
      ({ width } = drillPictureSize(pen, drawn));
      drawDrillPicture(
        {
          ...pen,
          text: (lettering, words, x, y, set) => {
            if (lettering === 'sectionTitle') widest = Math.max(widest, x + pen.measure(lettering, words));
            pen.text(lettering, words, x, y, set);
          },
        },
        drawn,
      );
    });
    expect(calls.length).toBeGreaterThan(20);
    expect(widest).toBeGreaterThan(width / 2);
    expect(widest).toBeLessThan(width);
  }
});
