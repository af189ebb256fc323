import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { levelOf } from '../skater/level.ts';
import type { IcePoint } from '../units/points.ts';
import { at, named, planOf, playableFrom, skate } from './drill-shorthand.reference.ts';
import type { Body } from './in-boards.ts';
import { referenceChase, referenceGap } from './run.reference.ts';
import { runDrill } from './run-drill.ts';
import type { Run, Track } from './run-result.ts';

const level = levelOf('collegeWomen');

/** Where a track is at any time: straight between samples, standing after the last. */
const along =
  (track: Track) =>
  (timeS: number): Body => {
    const last = track.xM.length - 1;
    const place = Math.min(timeS * 120, last);
    const i = Math.min(Math.floor(place), last - 1);
    const t = place - i;
    const mix = (values: Float64Array): number => values[i]! + t * (values[i + 1]! - values[i]!);
    return { xM: mix(track.xM), yM: mix(track.yM), xMps: mix(track.xMps), yMps: mix(track.yMps) };
  };

const caughtS = (run: Run): number => run.events.find(event => event.kind === 'caught')?.timeS ?? Number.NaN;

/** Middle of the ice, so that no boards come into it: the reference knows none. */
const insidePoint = fc
  .tuple(fc.double({ min: -20, max: 20, noNaN: true }), fc.double({ min: -7, max: 7, noNaN: true }))
  .map(([x, y]): IcePoint => at(x, y));

describe('chase against the plain reference', () => {
  it('follows the same way and catches at the same time', () => {
    fc.assert(
      fc.property(insidePoint, insidePoint, insidePoint, insidePoint, (chaser, from, over, to) => {
        fc.pre(Math.hypot(to.xM - from.xM, to.yM - from.yM) > 2);
        fc.pre(Math.hypot(chaser.xM - from.xM, chaser.yM - from.yM) > 4);
        const run = runDrill(
          playableFrom(
            planOf([
              { role: 'X1', side: 'them', atM: from, acts: [skate([over, to], { stops: true })] },
              { role: 'F1', atM: chaser, acts: [{ kind: 'chase', whom: named('X1'), effortRatio: 1 }] },
            ]),
          ),
        );
        const [whom, chase] = run.tracks as [Track, Track];
        const reference = referenceChase(
          { start: { ...chaser, xMps: 0, yMps: 0 }, power: level.model, startsAtS: 0 },
          along(whom),
          level.model.lungeReachM,
          run.durationS,
        );
        expect(Math.abs(caughtS(run) - reference.caughtS)).toBeLessThan(0.03);
        reference.placesM.forEach((place, i) => {
          if (i / 10 > caughtS(run)) return;
          const here = along(chase)(i / 10);
          expect(Math.hypot(here.xM - place.xM, here.yM - place.yM)).toBeLessThan(0.1);
        });
      }),
      { numRuns: 15, seed: 7, endOnFailure: true },
    );
  });
});

describe('gap against the plain reference', () => {
  it('follows the same way', () => {
    fc.assert(
      fc.property(
        insidePoint,
        insidePoint,
        insidePoint,
        fc.double({ min: 1.5, max: 5, noNaN: true }),
        (keeper, from, to, distanceM) => {
          fc.pre(Math.hypot(to.xM - from.xM, to.yM - from.yM) > 2);
          const run = runDrill(
            playableFrom(
              planOf([
                { role: 'X1', side: 'them', atM: from, acts: [skate([to])] },
                { role: 'D1', atM: keeper, acts: [{ kind: 'gap', whom: named('X1'), distanceM }] },
              ]),
            ),
          );
          const [whom, gap] = run.tracks as [Track, Track];
          const reference = referenceGap(
            { start: { ...keeper, xMps: 0, yMps: 0 }, power: level.model, startsAtS: 0 },
            along(whom),
            at(-27.1272, 0),
            distanceM,
            run.durationS,
          );
          reference.placesM.forEach((place, i) => {
            const here = along(gap)(i / 10);
            expect(Math.hypot(here.xM - place.xM, here.yM - place.yM)).toBeLessThan(0.1);
          });
        },
      ),
      { numRuns: 25, seed: 8, endOnFailure: true },
    );
  });

  it('comes to a standing skater without overshoot and then holds the distance', () => {
    const run = runDrill(
      playableFrom(
        planOf([
          { role: 'X1', side: 'them', atM: at(0, 0), acts: [{ kind: 'hold', seconds: 8 }] },
          { role: 'D1', atM: at(-18, 0), acts: [{ kind: 'gap', whom: named('X1'), distanceM: 3 }] },
        ]),
      ),
    );
    const gap = run.tracks[1]!;
    expect(Math.max(...gap.xM)).toBeLessThan(-2.99);
    expect(gap.xM.at(-1)).toBeCloseTo(-3, 2);
  });

  it('holds the distance to a carrier who comes at it, on the line to our net', () => {
    const run = runDrill(
      playableFrom(
        planOf([
          { role: 'X1', side: 'them', atM: at(10, 6), acts: [skate([at(-10, 4)], { effortRatio: 0.7 })] },
          { role: 'D1', atM: at(4, 4), acts: [{ kind: 'gap', whom: named('X1'), distanceM: 3 }] },
        ]),
      ),
    );
    const [whom, gap] = run.tracks as [Track, Track];
    for (let i = 360; i < run.sampleCount; i++) {
      const apart = Math.hypot(whom.xM[i]! - gap.xM[i]!, whom.yM[i]! - gap.yM[i]!);
      expect(Math.abs(apart - 3)).toBeLessThan(0.5);
    }
  });
});
