import { RINK_PRESETS, rinkOf } from '@icewright/engine';
import { drawRink, drawUpright, rinkViewBox } from '../ice/rink.ts';
import type { Scene } from './scene.ts';

const COLUMNS = 3;
const CELL_PX = { width: 464, height: 280 } as const;

export default {
  title: 'Every named sheet, and one on end',
  viewBox: [0, 0, COLUMNS * CELL_PX.width, 3 * CELL_PX.height],
  digits: 3,
  draw: pen => {
    RINK_PRESETS.forEach((preset, index) => {
      const rink = rinkOf({ preset });
      const [x, y, width, height] = rinkViewBox(rink);
      const scale = Math.min((CELL_PX.width - 24) / width, (CELL_PX.height - 40) / height);
      const left = (index % COLUMNS) * CELL_PX.width;
      const top = Math.floor(index / COLUMNS) * CELL_PX.height + 24;
      pen.text('name', preset, left, top - 6);
      pen.place({ x: left - x * scale, y: top - y * scale, scale, thinFloor: 0.09 }, () =>
        drawRink(pen, rink, { scaleBar: preset === '60x30m' }),
      );
    });
    const rink = rinkOf({ preset: 'own', lengthM: 56, widthM: 26, cornerRadiusM: 7 });
    const [x, y, , height] = rinkViewBox(rink, true);
    const scale = (CELL_PX.height - 40) / height;
    const top = 2 * CELL_PX.height + 24;
    pen.text('name', 'own size 56 × 26 m, on end', 0, top - 6);
    pen.place({ x: -x * scale, y: top - y * scale, scale, thinFloor: 0.09 }, () =>
      drawUpright(pen, () => drawRink(pen, rink)),
    );
  },
} satisfies Scene;
