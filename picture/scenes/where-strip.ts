import { drawWhereStrip, WHERE_STRIP_HEIGHT_PX } from '../chart/where-strip.ts';
import type { Scene } from './scene.ts';

const hill = (xM: number, spreadM: number, count: number): readonly number[] =>
  Array.from({ length: count }, (_, i) => {
    const three = ((i * 0.618) % 1) + ((i * 0.7549) % 1) + ((i * 0.5698) % 1);
    return xM + spreadM * (three - 1.5);
  });

export default {
  title: 'Where it came along the sheet: full in time, open later',
  viewBox: [0, -4, 912, WHERE_STRIP_HEIGHT_PX + 4],
  digits: 1,
  draw: pen =>
    drawWhereStrip(
      pen,
      {
        fromXM: -31.5,
        toXM: 31.5,
        minXM: -30.5,
        maxXM: 30.5,
        yesXM: hill(-1, 8, 590),
        otherXM: hill(-14, 7, 230),
        lineXM: -7.77,
      },
      912,
    ),
} satisfies Scene;
