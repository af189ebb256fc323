import type { Drill } from '@icewright/book';
import type { Lengths, Rink, Run } from '@icewright/engine';
import { drawDrillOnly, drawUpright, svgParts } from '@icewright/picture';

/** The drill as the pen draws it, without the sheet below it. */
export function drillMarkup(of: {
  readonly drill: Drill;
  readonly rink: Rink;
  readonly run: Run | null;
  readonly isUpright: boolean;
  readonly lengths: Lengths;
}): string {
  return svgParts(
    pen => {
      const draw = () =>
        drawDrillOnly(pen, of.drill, of.rink, {
          ...(of.run === null ? {} : { run: of.run }),
          level: of.drill.level,
          lengths: of.lengths,
        });
      of.isUpright ? drawUpright(pen, draw) : draw();
    },
    // A centimetre is a seventh of a pixel here.
    { idPrefix: 'board', digits: 2 },
  );
}
