import { LETTERINGS, type LetteringName } from '../lettering.ts';
import { MARKS, type MarkName } from '../marks.ts';
import type { Drawing } from './pen.ts';

/** Every mark and every lettering once, for the tests of pens. */
export const drawEverything: Drawing = pen => {
  pen.group('everything', { of: 'the tables' }, () => {
    (Object.keys(MARKS) as MarkName[]).forEach((mark, index) => {
      pen.path(mark, sink => {
        sink.moveTo(0, index);
        sink.lineTo(5, index);
        sink.quadraticCurveTo(6, index, 6, index + 1);
        sink.bezierCurveTo(6, index + 2, 5, index + 2, 4, index + 2);
        sink.arc(4, index + 3, 1, 0, Math.PI);
        sink.closePath();
      });
      pen.circle(mark, 8, index, 1);
    });
    (Object.keys(LETTERINGS) as LetteringName[]).forEach((lettering, index) => {
      pen.text(lettering, 'F1 Žižková ± 0.3 m', 10, index, { anchor: 'end', turnRad: 0.1, drop: 0.2 });
    });
  });
  pen.place({ x: 1, y: 2, turnRad: 0.3, scale: 2, k: 1.75, thinFloor: 0.1 }, () =>
    pen.clip(
      sink => sink.rect(0, 0, 5, 5),
      () => pen.circle('skate', 1, 1, 1),
    ),
  );
};
