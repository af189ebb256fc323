import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenly } from '../../test/evenly.ts';
import { BODIES_TOUCH_M, GAP_TOLERANCE_RATIO, KEEP_APART_M, KEEP_APART_S } from '../drill/drill-rows.ts';
import type { Body } from '../drill/in-boards.ts';
import { brakeableMps } from '../motion/push-to-goal.ts';
import { levelOf } from '../skater/level.ts';
import type { IcePoint } from '../units/points.ts';
import { at, named, planOf, playableFrom, skate } from './drill-shorthand.reference.ts';
import { referenceGap } from './gap.reference.ts';
import { referenceChase } from './run.reference.ts';
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
const insidePoint = fc.tuple(evenly(-20, 20), evenly(-7, 7)).map(([x, y]): IcePoint => at(x, y));

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

/** How near two come within the time they mind each other, straight on, looked at every 0.01 s. */
const nearestSoonM = (a: Track, b: Track, k: number): number => {
  let nearestM = Number.POSITIVE_INFINITY;
  for (let t = 0; t <= KEEP_APART_S.value + 0.005; t += 0.01) {
    const x = a.xM[k]! - b.xM[k]! + t * (a.xMps[k]! - b.xMps[k]!);
    const y = a.yM[k]! - b.yM[k]! + t * (a.yMps[k]! - b.yMps[k]!);
    nearestM = Math.min(nearestM, Math.hypot(x, y));
  }
  return nearestM;
};

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
            {
              start: { ...keeper, xMps: 0, yMps: 0 },
              power: level.model,
              startsAtS: 0,
              whomTopMps: level.model.topSpeedMps * level.model.carryRatio,
            },
            along(whom),
            at(-27.1272, 0),
            distanceM,
            run.durationS,
          );
          // A turn is decided once a step: a step sooner or later is some centimetres. The reference does not turn aside for a body: compared until the two would come near.
          const nearAt = whom.xM.findIndex((_, k) => nearestSoonM(whom, gap, k) < KEEP_APART_M.value);
          reference.placesM.forEach((place, i) => {
            if (nearAt >= 0 && i * 12 > nearAt) return;
            const here = along(gap)(i / 10);
            expect(Math.hypot(here.xM - place.xM, here.yM - place.yM)).toBeLessThan(0.15);
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

describe('a gap from anywhere between the carrier and our net', () => {
  it('is never run over: the carrier comes no nearer than the tolerance, and it is right in the end', () => {
    fc.assert(
      fc.property(
        evenly(-10, 2),
        evenly(-9, 3),
        // A tenth slower than a keeper goes backward: faster, and it hangs on how he comes onto the line.
        evenly(0.5, 0.74),
        (xM, yM, effortRatio) => {
          const run = runDrill(
            playableFrom(
              planOf([
                {
                  role: 'X1',
                  side: 'them',
                  atM: at(12, -7),
                  acts: [skate([at(1, -8), at(-8, -7), at(-18, -4.5)], { effortRatio })],
                },
                { role: 'D1', atM: at(xM, yM), acts: [{ kind: 'gap', whom: named('X1'), distanceM: 2.4 }] },
              ]),
            ),
          );
          const [whom, gap] = run.tracks as [Track, Track];
          const apartM = Array.from(whom.xM, (x, i) => Math.hypot(x - gap.xM[i]!, whom.yM[i]! - gap.yM[i]!));
          expect(Math.min(...apartM)).toBeGreaterThan(2.4 * (1 - GAP_TOLERANCE_RATIO.value));
          expect(Math.abs(apartM.at(-1)! - 2.4)).toBeLessThan(2.4 * GAP_TOLERANCE_RATIO.value);
        },
      ),
      { numRuns: 150, seed: 11 },
    );
  });
});

describe('who is beaten is beaten to the side', () => {
  const nearestM = (run: Run, a: number, b: number): number =>
    Math.min(
      ...Array.from(run.tracks[a]!.xM, (x, i) =>
        Math.hypot(x - run.tracks[b]!.xM[i]!, run.tracks[a]!.yM[i]! - run.tracks[b]!.yM[i]!),
      ),
    );

  it('a keeper slower than the carrier is passed, not skated through, and the gap is not held', () => {
    const slow = { ...level.model, topSpeedMps: 0.6 * level.model.topSpeedMps };
    fc.assert(
      fc.property(
        // From nearer nobody gets aside who skates backward at half the carrier's speed.
        evenly(6.4, 12),
        evenly(-2, 2),
        (aheadM, asideM) => {
          const run = runDrill(
            playableFrom(
              planOf([
                { role: 'X1', side: 'them', atM: at(20, 0), acts: [skate([at(-20, 0)])] },
                {
                  role: 'D1',
                  atM: at(20 - aheadM, asideM),
                  acts: [{ kind: 'gap', whom: named('X1'), distanceM: 2.5 }],
                },
              ]),
            ),
            { models: { [named('D1')]: slow } },
          );
          expect(nearestM(run, 0, 1)).toBeGreaterThan(BODIES_TOUCH_M.value);
          expect(run.findings.map(finding => finding.kind)).not.toContain('bodiesTouch');
          expect(run.findings.map(finding => finding.kind)).toContain('gapNotHeld');
          expect(run.tracks[1]!.xM.at(-1)).toBeGreaterThan(run.tracks[0]!.xM.at(-1)!);
        },
      ),
      { numRuns: 40, seed: 9 },
    );
  });

  it('three who chase one do not share a place', () => {
    const chaser = (role: string, atM: IcePoint) => ({
      role,
      atM,
      acts: [{ kind: 'chase', whom: named('X1'), effortRatio: 1 } as const],
    });
    const run = runDrill(
      playableFrom(
        planOf([
          { role: 'X1', side: 'them', atM: at(10, 0), acts: [skate([at(-22, 0)], { effortRatio: 0.7 })] },
          chaser('F1', at(14, 0)),
          chaser('F2', at(16, 0.5)),
          chaser('F3', at(16, -0.8)),
        ]),
      ),
    );
    for (const a of [0, 1, 2, 3]) {
      for (let b = a + 1; b <= 3; b++) expect(nearestM(run, a, b)).toBeGreaterThan(BODIES_TOUCH_M.value);
    }
    expect(run.findings.filter(finding => finding.kind === 'bodiesTouch')).toEqual([]);
  });
});

describe('what can still be taken off before a moving goal', () => {
  it('is the closing speed whose way, added up in small steps, ends at the goal', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 40, noNaN: true }),
        fc.double({ min: 0.05, max: 16, noNaN: true }),
        fc.double({ min: 0.5, max: 2, noNaN: true }),
        (toGoM, spareMps, tauS) => {
          let wayM = 0;
          for (let c = brakeableMps(toGoM, spareMps, tauS); c > 0; ) {
            const next = c - ((spareMps + c) / tauS) * 1e-4;
            wayM += ((c + Math.max(0, next)) / 2) * 1e-4;
            c = next;
          }
          expect(Math.abs(wayM - toGoM)).toBeLessThan(0.005 * toGoM + 0.001);
        },
      ),
      { numRuns: 40, seed: 10 },
    );
  });

  it('is e/τ when there is no speed to spare', () => {
    expect(brakeableMps(3, 0, 1.5)).toBe(2);
  });
});
