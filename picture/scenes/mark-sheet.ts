import type { Pen } from '../pen/pen.ts';
import type { Scene } from './scene.ts';

interface MarkPicture {
  readonly name: string;
  readonly says: string;
  readonly draw: (pen: Pen) => void;
}

const ROW_PX = { count: 5, width: 265.6, height: 82.78, apart: 281.6, below: 150 } as const;
/** Each mark is drawn on a strip of ice 15.4 m long. */
const STRIP_M = { x: -7.7, y: -2.4, width: 15.4, height: 4.8 } as const;

/** A page of the notation: every mark on its strip of ice with its name and what it says. */
export const markSheet = (title: string, marks: readonly MarkPicture[]): Scene => {
  const rows = Math.ceil(marks.length / ROW_PX.count);
  return {
    title: `Notation: ${title.toLowerCase()}`,
    viewBox: [-24, -16, 1440, 60 + rows * ROW_PX.below],
    digits: 2,
    draw: pen => {
      pen.text('sectionTitle', title, 0, 20);
      marks.forEach((mark, index) => {
        const column = index % ROW_PX.count;
        const x = column * ROW_PX.apart;
        const y = 40 + Math.floor(index / ROW_PX.count) * ROW_PX.below;
        pen.path('ice', sink => sink.rect(x, y, ROW_PX.width, ROW_PX.height));
        const scale = ROW_PX.width / STRIP_M.width;
        pen.place({ x: x - STRIP_M.x * scale, y: y - STRIP_M.y * scale, scale }, () => mark.draw(pen));
        pen.text('name', mark.name, x, y + ROW_PX.height + 18);
        pen.text('caption', mark.says, x, y + ROW_PX.height + 34);
      });
    },
  };
};
