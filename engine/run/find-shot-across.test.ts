import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenly } from '../../test/evenly.ts';
import type { DrillPlan } from '../drill/drill.ts';
import { puckModelOf } from '../puck/puck-model.ts';
import type { IcePoint } from '../units/points.ts';
import { at, named, planOf, playableFrom, skate, type TestSpot } from './drill-shorthand.reference.ts';
import { findingSentence } from './finding-sentence.ts';
import { runDrill } from './run-drill.ts';
import type { Finding } from './run-result.ts';
import { halfTurned, mirrored } from './turned-plan.reference.ts';

const NET: IcePoint = at(-27.1272, 0);

const across = (plan: DrillPlan): readonly Finding[] =>
  runDrill(playableFrom(plan)).findings.filter(({ kind }) => kind === 'shotAcrossGroup');

/** A shot from a spot towards the net, and one who waits behind a first skater. The first faces +x, so the other stands 1.2 m towards −x. */
const shotPast = (fromM: IcePoint, firstM: IcePoint, speedMps = 26): DrillPlan => {
  const plan = planOf([
    {
      role: 'F1',
      atM: fromM,
      facingRad: Math.atan2(-fromM.yM, NET.xM - fromM.xM),
      puck: true,
      acts: [{ kind: 'shoot', atEnd: 'minusX', speedMps, cue: { on: 'whistle' } }],
    },
    { role: 'F2', atM: firstM },
  ]);
  return {
    ...plan,
    spots: { ...plan.spots, [named('F2')]: { ...plan.spots[named('F2')]!, waitingCount: 1 } },
  };
};

describe('a shot across another group', () => {
  it('is found where somebody waits a metre from its line, with place, time, distance and speed', () => {
    const plan = shotPast(at(-8, 0), at(-16.8, 1));
    const [finding, ...more] = across(plan);
    // The first of the line stands there too: one finding for the spot, not two.
    expect(more).toEqual([]);
    expect(finding).toMatchObject({ weight: 'look', spots: ['F2', 'F1'], threshold: 2, unit: 'm' });
    expect(finding!.value).toBeCloseTo(1, 1);
    expect(finding!.atM.xM).toBeCloseTo(-18, 0);
    expect(finding!.speedMps).toBeGreaterThan(24);
    expect(finding!.source).not.toBe('');
    expect(findingSentence(finding!, plan)).toContain('The puck of F1 goes 1.0 m past those at F2');
  });

  it('is gone three metres away, for a soft shot, and when the puck only leaves them', () => {
    expect(across(shotPast(at(-8, 0), at(-16.8, 3.2)))).toEqual([]);
    expect(across(shotPast(at(-8, 0), at(-16.8, 1), 14))).toEqual([]);
    expect(across(shotPast(at(-8, 0), at(-6.5, 0.4)))).toEqual([]);
  });

  it('agrees with the distance of a point from a straight line, wherever the shot and the line are', () => {
    const { frictionRatio, dragPerM } = puckModelOf();
    fc.assert(
      fc.property(
        fc.double({ min: -18, max: -2, noNaN: true }),
        evenly(-8, 8),
        evenly(-26, 4),
        evenly(-10, 10),
        (fromX, fromY, waitX, waitY) => {
          const fromM = at(fromX, fromY);
          const plan = shotPast(fromM, at(waitX + 1.2, waitY));
          const run = runDrill(playableFrom(plan));
          const shot = run.events.find(event => event.kind === 'shot')!;
          // The first of the line has nothing to do, and is not asked.
          const places = [at(waitX, waitY)];
          const slow = places
            .map(place => farFromLine(shot.atM, NET, place))
            .filter(({ alongM }) => alongM > 0.3)
            .sort((a, b) => a.apartM - b.apartM)[0];
          const speedMps = slow ? speedAfter(26, slow.alongM, frictionRatio, dragPerM) : 0;
          const found = run.findings.filter(({ kind }) => kind === 'shotAcrossGroup');
          const isNearEdge =
            places.some(place => Math.abs(farFromLine(shot.atM, NET, place).apartM - 2) < 0.06) ||
            places.some(place => Math.abs(farFromLine(shot.atM, NET, place).alongM) < 0.6) ||
            places.some(place => farFromLine(shot.atM, NET, place).toEndM < 0.8) ||
            Math.abs(speedMps - 15) < 0.5;
          if (isNearEdge) return;
          expect(found.length > 0).toBe(slow !== undefined && slow.apartM < 2);
          // The puck is looked at 120 times a second: at 26 m/s it is up to 0.11 m from its nearest place then.
          if (found[0]) expect(Math.abs(found[0].value - slow!.apartM)).toBeLessThan(0.11);
        },
      ),
      { numRuns: 150, seed: 31 },
    );
  });

  it('mirrored or turned half round, the drill has the mirrored or turned finding', () => {
    const plan = shotPast(at(-8, 3), at(-16.8, 2.5));
    const [one] = across(plan);
    const [other] = across(mirrored(plan));
    const [turned] = across(halfTurned(plan));
    expect(other!.atM.xM).toBeCloseTo(one!.atM.xM, 6);
    expect(other!.atM.yM).toBeCloseTo(-one!.atM.yM, 6);
    expect(turned!.atM.xM).toBeCloseTo(-one!.atM.xM, 6);
    expect(turned!.atM.yM).toBeCloseTo(-one!.atM.yM, 6);
    expect([other!.value, turned!.value]).toEqual([
      expect.closeTo(one!.value, 6),
      expect.closeTo(one!.value, 6),
    ]);
  });

  it('is not said of a pass past opponents, nor of those who only oppose the shooter', () => {
    const shot = { kind: 'shoot', atEnd: 'minusX', speedMps: 26, cue: { on: 'whistle' } } as const;
    const pass = { ...shot, kind: 'pass', toSpot: named('F2'), way: 'direct', speedMps: 18 } as const;
    const past = (deed: typeof shot | typeof pass, side: 'us' | 'them'): DrillPlan =>
      planOf([
        { role: 'F1', atM: at(-8, 0), facingRad: Math.PI, puck: true, acts: [deed] },
        { role: 'X1', side, atM: at(-16, 1.5), acts: [{ kind: 'hold', seconds: 2 }] },
        { role: 'F2', atM: at(-22, 0), facingRad: 0 },
      ]);
    expect(across(past(pass, 'us'))).toEqual([]);
    expect(across(past(shot, 'them'))).toEqual([]);
    expect(across(past(shot, 'us'))).toHaveLength(1);
  });

  it('counts the lane of another group, when they are there within a second, and not one of the own', () => {
    const lane = (delayS: number, linked: boolean): readonly TestSpot[] => [
      {
        role: 'F1',
        atM: at(-8, 0),
        facingRad: Math.PI,
        puck: true,
        acts: [{ kind: 'shoot', atEnd: 'minusX', speedMps: 26, cue: { on: 'after', seconds: 1.5 } }],
      },
      {
        role: 'F2',
        atM: at(-16, -6),
        acts: [
          skate([at(-16, 12)], {
            cue: linked ? { on: 'shot', spot: named('F1') } : { on: 'after', seconds: delayS },
          }),
        ],
      },
    ];
    expect(across(planOf(lane(0.2, false)))).toHaveLength(1);
    expect(across(planOf(lane(6, false)))).toEqual([]);
    expect(across(planOf(lane(0, true)))).toEqual([]);
  });
});

/** Speed after a slide of d metres, v(d)² = (v0² + μg/k)·e^(−2kd) − μg/k: the distance form of v̇ = −(μg + k·v²). */
const speedAfter = (v0: number, d: number, mu: number, k: number): number =>
  Math.sqrt(Math.max(0, (v0 * v0 + (mu * 9.80665) / k) * Math.exp(-2 * k * d) - (mu * 9.80665) / k));

const farFromLine = (
  fromM: IcePoint,
  toM: IcePoint,
  placeM: IcePoint,
): { readonly apartM: number; readonly alongM: number; readonly toEndM: number } => {
  const lengthM = Math.hypot(toM.xM - fromM.xM, toM.yM - fromM.yM);
  const ux = (toM.xM - fromM.xM) / lengthM;
  const uy = (toM.yM - fromM.yM) / lengthM;
  const alongM = (placeM.xM - fromM.xM) * ux + (placeM.yM - fromM.yM) * uy;
  const acrossM = Math.abs((placeM.xM - fromM.xM) * uy - (placeM.yM - fromM.yM) * ux);
  return { apartM: acrossM, alongM, toEndM: lengthM - alongM };
};
