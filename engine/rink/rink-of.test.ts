import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenly } from '../../test/evenly.ts';
import { boardsDistance } from './boards.ts';
import { RINK_PRESETS } from './choice.ts';
import { landmarksOf } from './landmarks.ts';
import { LINE_IDS } from './lines.ts';
import { rinkOf, rinkOfSize } from './rink-of.ts';

interface Drawn {
  readonly landmarksM: Readonly<Record<string, readonly [number, number]>>;
}
const drawn = JSON.parse(readFileSync(join(import.meta.dirname, 'landmarks.fixture.json'), 'utf8')) as Drawn;

describe('landmarks', () => {
  // Source: the program that drew the test films, which shares no code with this one (landmarks.fixture.json).
  it('have the names and places of the sheet on which the test films were drawn', () => {
    const ours = new Map(landmarksOf(rinkOf({ preset: '200x85ft' })).map(({ id, atM }) => [id, atM]));
    expect([...ours.keys()].sort()).toEqual(Object.keys(drawn.landmarksM).sort());
    for (const [id, [xM, yM]] of Object.entries(drawn.landmarksM)) {
      const atM = ours.get(id)!;
      // The goal posts there are 0.09 mm further out; every other point is printed to 0.01 mm.
      expect(Math.hypot(atM.xM - xM, atM.yM - yM), id).toBeLessThan(id.startsWith('goalPost') ? 1e-4 : 1e-5);
    }
  });

  it.each(RINK_PRESETS)('%s: ids and words are unique, points on the ice in use', preset => {
    const rink = rinkOf({ preset });
    const landmarks = landmarksOf(rink);
    expect(new Set(landmarks.map(({ id }) => id)).size).toBe(landmarks.length);
    expect(new Set(landmarks.map(({ words }) => words)).size).toBe(landmarks.length);
    for (const { id, atM } of landmarks) {
      expect(boardsDistance(rink.boards, atM), id).toBeGreaterThanOrEqual(-1e-6);
      expect(atM.xM, id).toBeGreaterThanOrEqual(rink.area.minXM - 1e-6);
    }
  });

  it('turn into each other by a half turn, but for the officials’ crease', () => {
    const landmarks = landmarksOf(rinkOf({ preset: '60x26m' })).filter(
      ({ id }) => !id.startsWith('refCrease'),
    );
    for (const { id, atM } of landmarks) {
      const turned = landmarks.filter(
        other => Math.hypot(other.atM.xM + atM.xM, other.atM.yM + atM.yM) < 1e-9,
      );
      expect(turned.length, id).toBe(1);
    }
  });
});

describe('rinks', () => {
  // Source: WHL, ECHL, OHL rule 1.5 and the ECHL drawing; IIHF 2022/23 rule 1.5 and the centimetre drawing.
  it('measure the blue line to its edge on one sheet and to its centre on the other', () => {
    expect(rinkOf({ preset: '200x85ft' }).layout.blueLineInnerXM).toBeCloseTo(25 * 0.3048, 9);
    expect(rinkOf({ preset: '60x30m' }).layout.blueLineCentreXM).toBeCloseTo(7.14, 9);
  });

  it('own sizes follow the metric code; below 58 m the blue lines move with the length', () => {
    const own = (lengthM: number) =>
      rinkOf({ preset: 'own', lengthM, widthM: 28, cornerRadiusM: 8 }).layout.blueLineCentreXM;
    // Source: Finnish association, 30 July 2014: 57 m → 21.71 m from the end boards, 56 m → 21.34 m.
    expect(57 / 2 - own(57)).toBeCloseTo(21.717, 2);
    expect(56 / 2 - own(56)).toBeCloseTo(21.336, 2);
    expect(59 / 2 - own(59)).toBeCloseTo(22.86, 9);
  });

  it('any own size has its markings on the ice, in order from the middle to the end', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 15, max: 75, noNaN: true }),
        fc.double({ min: 10, max: 40, noNaN: true }),
        evenly(0, 12),
        (lengthM, widthM, cornerRadiusM) => {
          const rink = rinkOf({ preset: 'own', lengthM, widthM, cornerRadiusM });
          const { layout, boards } = rink;
          expect(layout.blueLineInnerXM).toBeGreaterThan(0);
          expect(layout.blueLineOuterXM).toBeLessThan(layout.goalLineXM);
          expect(layout.neutralSpotM.xM).toBeLessThan(layout.blueLineInnerXM);
          expect(layout.endSpotM.xM).toBeLessThan(layout.goalLineXM);
          expect(layout.goalLineXM).toBeLessThan(lengthM / 2);
          expect(boardsDistance(boards, layout.endSpotM)).toBeGreaterThan(0);
          expect(layout.endSpotM.yM + layout.circleRadiusM).toBeLessThan(widthM / 2);
        },
      ),
    );
  });

  it('half ice is half a 200 × 85 ft sheet, cross ice 75 ft deep', () => {
    const half = rinkOf({ preset: 'halfIce' });
    expect(half.area.maxXM - half.area.minXM).toBeCloseTo(30.48, 9);
    const cross = rinkOf({ preset: 'crossIce' });
    // Source: IIHF under-10 rules of 2007 (divider on the blue line); 85 × 75 ft derived.
    expect(cross.area.maxXM - cross.area.minXM).toBeCloseTo(22.86, 9);
    for (const rink of [half, cross])
      for (const { atM } of rink.nets) expect(boardsDistance(rink.boards, atM)).toBeGreaterThan(0.9);
  });

  it('every number is a row with a source, and the lines ascend', () => {
    for (const preset of RINK_PRESETS) {
      const rink = rinkOf({ preset });
      for (const row of rink.rows) {
        expect(row.source, row.name).not.toBe('');
        expect(row.range[0]).toBeLessThanOrEqual(row.value);
        expect(row.range[1]).toBeGreaterThanOrEqual(row.value);
      }
      const centres = LINE_IDS.map(id => rink.lines[id].centreXM);
      expect([...centres].sort((a, b) => a - b)).toEqual(centres);
    }
  });

  it('a bare size of 200 ft is feet-type, anything else metric', () => {
    expect(rinkOfSize({ lengthM: 60.96, widthM: 25.908, cornerRadiusM: 8.5344 }).code).toBe('NHL-type');
    expect(rinkOfSize({ lengthM: 60, widthM: 26, cornerRadiusM: 8.5 }).code).toBe('IIHF-type');
  });
});
