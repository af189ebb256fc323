import { rinkOf, type SpotId } from '@icewright/engine';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { at, drillWith } from './drill-of-tests.reference.ts';
import { type SnapTo, snapOf } from './snap.ts';
import { othersSnaps } from './snap-to-others.ts';
import { rinkSnaps } from './snap-to-rink.ts';

const rink = rinkOf({ preset: '200x85ft' });
const dot: SnapTo = { kind: 'point', atM: at(5, 5), words: 'dot' };
const across: SnapTo = { kind: 'x', xM: 5.2, words: 'across' };
const along: SnapTo = { kind: 'y', yM: 4.8, words: 'along' };
const circle: SnapTo = { kind: 'circle', centreM: at(0, 0), radiusM: 4, words: 'circle' };

describe('what a hand is drawn to', () => {
  it('a place before lines, lines that meet before one line', () => {
    const all = [across, along, dot];
    expect(snapOf(at(5.1, 4.9), all, 0.5)).toEqual({ atM: at(5, 5), to: [dot] });
    expect(snapOf(at(5.1, 4.9), [across, along], 0.5)).toEqual({ atM: at(5.2, 4.8), to: [across, along] });
    expect(snapOf(at(5.1, 9), all, 0.5)).toEqual({ atM: at(5.2, 9), to: [across] });
    expect(snapOf(at(9, 9), all, 0.5)).toBeNull();
  });

  it('on a circle on the way from its middle', () => {
    const snap = snapOf(at(3.3, 2.4), [circle], 0.5);
    expect(snap?.atM.xM).toBeCloseTo((4 * 3.3) / Math.hypot(3.3, 2.4));
    expect(Math.hypot(snap!.atM.xM, snap!.atM.yM)).toBeCloseTo(4);
    expect(snapOf(at(0, 0), [circle], 5)?.atM).toEqual(at(4, 0));
  });

  it('never draws farther than it catches, and what is drawn stays where it is', () => {
    const lists = fc.constantFrom(
      rinkSnaps(rink, 'plusX'),
      othersSnaps(drillWith({ spots: ['f1', 'f2', 'f3'] }), new Set()),
    );
    const point = fc.record({
      xM: fc.double({ min: -30, max: 30, noNaN: true }),
      yM: fc.double({ min: -13, max: 13, noNaN: true }),
    });
    fc.assert(
      fc.property(
        lists,
        point,
        fc.double({ min: 0.05, max: 2, noNaN: true }),
        (candidates, pointM, catchM) => {
          const snap = snapOf(pointM, candidates, catchM);
          if (snap === null) return;
          // Two lines that meet may each be as far as the catch.
          expect(Math.hypot(snap.atM.xM - pointM.xM, snap.atM.yM - pointM.yM)).toBeLessThanOrEqual(
            catchM * Math.SQRT2 + 1e-9,
          );
          const again = snapOf(snap.atM, snap.to, catchM);
          expect(again?.atM.xM).toBeCloseTo(snap.atM.xM);
          expect(again?.atM.yM).toBeCloseTo(snap.atM.yM);
        },
      ),
      { numRuns: 500, seed: 7 },
    );
  });

  it('knows the markings by the words of the bench', () => {
    const said = (xM: number, yM: number) =>
      snapOf(at(xM, yM), rinkSnaps(rink, 'plusX'), 0.4)?.to.map(to => to.words);
    const { endSpotM, circleRadiusM } = rink.layout;
    expect(said(endSpotM.xM + 0.1, endSpotM.yM - 0.1)).toEqual(['on the dot']);
    expect(said(3, endSpotM.yM + 0.2)).toEqual(['on the dot line']);
    expect(said(0.2, 3)).toEqual(['on the red line']);
    expect(said(0.1, -0.1)).toEqual(['on the centre dot']);
    expect(said(0.1, endSpotM.yM)).toEqual(['on the red line', 'on the dot line']);
    expect(said(circleRadiusM * Math.SQRT1_2, circleRadiusM * Math.SQRT1_2)).toEqual(['on the circle']);
  });

  it('knows the others: level, lane, mirror, and nothing of what is in the hand', () => {
    const drill = drillWith({ spots: ['f1', 'f2'] });
    const moved = {
      ...drill,
      spots: { ...drill.spots, ['f2' as SpotId]: { ...drill.spots['f2' as SpotId]!, atM: at(10, 4) } },
    };
    const snaps = othersSnaps(moved, new Set(['f1' as SpotId]));
    expect(snapOf(at(10.1, -4.1), snaps, 0.4)?.to.map(to => to.words)).toEqual(['mirror of F2']);
    expect(snapOf(at(-10.1, -4.1), snaps, 0.4)?.to.map(to => to.words)).toEqual(['half turn of F2']);
    expect(snapOf(at(10.2, 1), snaps, 0.4)?.to.map(to => to.words)).toEqual(['level with F2']);
    expect(snapOf(at(2, 4.2), snaps, 0.4)?.to.map(to => to.words)).toEqual(['in the lane of F2']);
    expect(snaps.some(to => to.words.includes('F1'))).toBe(false);
  });
});
