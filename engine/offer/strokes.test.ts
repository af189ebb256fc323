import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { landmarksOf } from '../rink/landmarks.ts';
import { rinkOf } from '../rink/rink-of.ts';
import type { OfferedPin } from './offered-pin.ts';
import { spreadPins } from './spread-pins.ts';
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

describe('pins that are spread', () => {
  const place = fc.integer({ min: 0, max: 1280 });
  const pins = fc.array(fc.tuple(place, place, fc.integer({ min: 1, max: 7 })), {
    minLength: 1,
    maxLength: 30,
  });

  it('are as many as were asked for, begin with the best measured, and leave none out that is farther off than those taken', () => {
    fc.assert(
      fc.property(pins, fc.integer({ min: 1, max: 14 }), (all, most) => {
        const offered = all.map(
          ([xPx, yPx, tenths], k): OfferedPin => ({
            landmark: `${k}`,
            filmPx: { xPx, yPx },
            sdPx: tenths / 10,
          }),
        );
        const taken = spreadPins(offered, most);
        expect(taken.length).toBe(Math.min(most, offered.length));
        expect(new Set(taken).size).toBe(taken.length);
        expect(taken[0]!.sdPx).toBe(Math.min(...offered.map(({ sdPx }) => sdPx)));
        if (taken.length < 2) return;
        const away = (one: OfferedPin, others: readonly OfferedPin[]) =>
          Math.min(
            ...others.map(p => Math.hypot(p.filmPx.xPx - one.filmPx.xPx, p.filmPx.yPx - one.filmPx.yPx)),
          ) /
          (1 + one.sdPx);
        const last = taken[taken.length - 1]!;
        const before = taken.slice(0, -1);
        for (const one of offered.filter(p => !taken.includes(p))) {
          expect(away(one, before)).toBeLessThanOrEqual(away(last, before) + 1e-9);
        }
      }),
    );
  });
});
