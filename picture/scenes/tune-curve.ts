import { drawTuneCurve, TUNE_CURVE_HEIGHT_PX, type TuneCurve } from '../chart/tune-curve.ts';
import type { Scene } from './scene.ts';

const points: TuneCurve['points'] = Array.from({ length: 15 }, (_, i) => {
  const value = 3 + (16 * i) / 14;
  const rate = 1 / (1 + Math.exp((value - 11.3) / 1.1));
  const half = 0.01 + 0.1 * Math.sqrt(rate * (1 - rate));
  return { value, rate, lower: Math.max(0, rate - half), upper: Math.min(1, rate + half) };
});

export default {
  title: 'How many in ten are in time, by where she starts; 6 in 10 wanted',
  viewBox: [0, 0, 448, TUNE_CURVE_HEIGHT_PX],
  digits: 1,
  draw: pen =>
    drawTuneCurve(
      pen,
      { low: 3, high: 19, points, wantedRatio: 0.6, now: 11.2, answer: 10.85, unit: 'm' },
      448,
    ),
} satisfies Scene;
