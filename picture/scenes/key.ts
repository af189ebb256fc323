import { drawKey } from '../drill/key.ts';
import { KEY_ENTRIES, usedMarks } from '../drill/used-marks.ts';
import { MIDDLE_FIRST } from './middle-first.plan.ts';
import type { Scene } from './scene.ts';

const KEY = { x: 12, width: 1000, lettering: 'caption', scale: 9 } as const;

export default {
  title: 'The key: every entry, and the entries that Middle first uses',
  viewBox: [0, 0, 1024, 232],
  digits: 2,
  draw: pen => {
    pen.path('ice', sink => sink.rect(0, 0, 1024, 232));
    const height = drawKey(pen, KEY_ENTRIES, { ...KEY, y: 24 });
    drawKey(pen, usedMarks(MIDDLE_FIRST), { ...KEY, y: 24 + height + 24 });
  },
} satisfies Scene;
