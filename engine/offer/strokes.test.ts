import { describe, expect, it } from 'vitest';
import { landmarksOf } from '../rink/landmarks.ts';
import { rinkOf } from '../rink/rink-of.ts';
import { STRIDE, samplesOf } from './stroke-samples.ts';
import { discsOf, refCreaseOf, strokesOf } from './strokes.ts';

const SHEETS = (['200x85ft', '60x30m', '60x26m', 'college200x100ft'] as const).map(preset =>
  rinkOf({ preset }),
);

// Landmarks are checked against figures from outside in rink-of.test.ts; what is drawn must go through them.
describe('the painted lines of a sheet', () => {
  it('go through every landmark but those of the nets, to half a thick line', () => {
    for (const rink of SHEETS) {
      const strokes = [...strokesOf(rink), refCreaseOf(rink)];
      const samples = samplesOf(strokes, 0.02);
      for (const { id, atM } of landmarksOf(rink)) {
        if (id.startsWith('goalPost')) continue;
        const onSpot = discsOf(rink).some(({ atM: p }) => p.xM === atM.xM && p.yM === atM.yM);
        let nearestM = Number.POSITIVE_INFINITY;
        for (let k = 0; k < samples.count; k++) {
          const [x, y] = [samples.values[k * STRIDE]!, samples.values[k * STRIDE + 1]!];
          nearestM = Math.min(nearestM, Math.hypot(x - atM.xM, y - atM.yM));
        }
        if (!onSpot) expect(nearestM, id).toBeLessThan(rink.layout.thickLineM / 2 + 0.03);
      }
    }
  });

  it('are the same after a half turn and a mirror, but for the officials’ crease', () => {
    for (const rink of SHEETS) {
      const round = (value: number) => (Math.round(value * 1e4) / 1e4 + 0).toFixed(4);
      // A closed line begins and ends at one place: as a set.
      const placesOf = (sx: number, sy: number) => {
        const places = strokesOf(rink).flatMap(({ colour, pointsM }) =>
          pointsM.map(({ xM, yM }) => `${colour} ${round(sx * xM)} ${round(sy * yM)}`),
        );
        return [...new Set(places)].sort();
      };
      const asIs = placesOf(1, 1);
      expect(placesOf(-1, -1)).toEqual(asIs);
      expect(placesOf(1, -1)).toEqual(asIs);
      expect(Math.max(...refCreaseOf(rink).pointsM.map(({ yM }) => yM))).toBeLessThan(0);
    }
  });

  it('are sampled by pieces that together are as long as the lines', () => {
    const strokes = strokesOf(SHEETS[0]!);
    const lengthM = strokes
      .flatMap(({ pointsM }) =>
        pointsM.slice(1).map((p, i) => Math.hypot(p.xM - pointsM[i]!.xM, p.yM - pointsM[i]!.yM)),
      )
      .reduce((sum, one) => sum + one, 0);
    const samples = samplesOf(strokes, 0.1);
    expect(samples.count * 0.1).toBeGreaterThan(0.98 * lengthM);
    expect(samples.count * 0.1).toBeLessThan(1.02 * lengthM);
  });
});
