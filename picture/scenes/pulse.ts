import { drawPulse, PULSE_HEIGHT_PX, type PulseMoment } from '../chart/pulse.ts';
import type { Scene } from './scene.ts';

const OUTCOMES = ['done', 'missed', 'done', 'unseen', 'missed', 'done'] as const;

const MOMENTS: readonly PulseMoment[] = Array.from({ length: 46 }, (_, index) => ({
  atMinute: 1.2 + index * 1.26,
  outcome: OUTCOMES[(index * 5 + (index % 7)) % OUTCOMES.length] ?? 'done',
  cost: ((index * 37) % 23) / 22,
  chosen: index % 5 < 2,
}));

export default {
  title: 'The pulse of a game: done above, missed below, height is cost',
  viewBox: [0, -4, 912, PULSE_HEIGHT_PX + 4],
  digits: 1,
  draw: pen =>
    drawPulse(
      pen,
      {
        minutes: 60,
        periods: [
          { name: '1st', startMinute: 0 },
          { name: '2nd', startMinute: 20 },
          { name: '3rd', startMinute: 40 },
        ],
        moments: MOMENTS,
        goals: [
          { atMinute: 16, words: '0–1' },
          { atMinute: 38, words: '1–1' },
        ],
        nowMinute: 27.8,
      },
      912,
    ),
} satisfies Scene;
