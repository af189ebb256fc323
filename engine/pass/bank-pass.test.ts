import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenly } from '../../test/evenly.ts';
import { puckAt, puckPath } from '../puck/path.ts';
import { type PuckModel, puckModelOf } from '../puck/puck-model.ts';
import { boardsDistance, boardsOf } from '../rink/boards.ts';
import { bankPassesByShooting } from './bank.reference.ts';
import { bankCone, bankSpreadOf } from './bank-cone.ts';
import { bankPasses, bankSearch } from './bank-pass.ts';
import { bankWindows } from './bank-windows.ts';
import { receiverBladeAt } from './blade.ts';
import type { BankPass, Receiver } from './pass-parts.ts';

const RINKS = [boardsOf(60.96, 25.908, 8.5344), boardsOf(60, 30, 8.5), boardsOf(60, 26, 8.5)] as const;

const anyReceiver: fc.Arbitrary<Receiver> = fc
  .record({
    x: evenly(-27, 27),
    y: evenly(-11, 11),
    speed: fc.oneof(fc.constant(0), evenly(0, 9)),
    headingRad: evenly(-Math.PI, Math.PI),
    driveRad: fc.option(evenly(-Math.PI, Math.PI), { nil: undefined }),
  })
  .map(({ x, y, speed, headingRad, driveRad }) => ({
    atM: { xM: x, yM: y },
    velocityMps: { xMps: speed * Math.cos(headingRad), yMps: speed * Math.sin(headingRad) },
    bladeOffsetM: { xM: 0.4, yM: -0.3 },
    ...(driveRad === undefined ? {} : { drive: { topSpeedMps: 8.2, tauS: 1.22, driveRad } }),
  }));

const anyDrawn = fc.record({
  boards: fc.constantFrom(...RINKS),
  passerM: fc.record({ xM: evenly(-29, 29), yM: evenly(-12.4, 12.4) }),
  speedMps: evenly(6, 25),
  maxTimeS: evenly(2, 6),
  receiver: anyReceiver,
  model: fc
    .record({
      restitutionRatio: evenly(0.3, 0.9),
      boardFrictionRatio: evenly(0, 0.35),
      frictionRatio: evenly(0.03, 0.12),
    })
    .map(own => puckModelOf(own)),
});
/** A puck that touches the boards has no way to a first bounce off them. */
const anyCase = anyDrawn.filter(({ boards, passerM }) => boardsDistance(boards, passerM) > 0.1);

type Case = typeof anyCase extends fc.Arbitrary<infer One> ? One : never;

const missOf = ({ boards, model, passerM, receiver }: Case, pass: BankPass): number => {
  // Where the solver says that the puck bounces freely, it does so with rims allowed.
  const path = puckPath(boards, model, passerM, pass.launchRad, pass.launchSpeedMps, {
    rims: !pass.followsBoards,
  });
  const { atM } = puckAt(path, pass.arrivalS);
  const blade = receiverBladeAt(receiver, pass.arrivalS);
  return Math.hypot(atM.xM - blade.xM, atM.yM - blade.yM);
};

const solve = (one: Case, bounceCount: 1 | 2): readonly BankPass[] =>
  bankPasses(one.boards, one.model, one.passerM, one.speedMps, one.receiver, {
    bounceCount,
    maxTimeS: one.maxTimeS,
  });

/** Two bounces need a hard pass and lively boards, or hardly any case has an answer. */
const suited = (one: Case, bounceCount: 1 | 2): Case =>
  bounceCount === 1
    ? one
    : {
        ...one,
        speedMps: one.speedMps + 8,
        maxTimeS: 6,
        model: { ...one.model, restitutionRatio: 0.6 + one.model.restitutionRatio / 3 },
      };

/** Seeds of the random cases; one at which a pass is ever lost stays in this list. */
const KEPT_SEEDS: readonly number[] = [7, 99];

const RUNS = 20;
const SHOTS = 4000;

describe('passes off the boards', () => {
  for (const bounceCount of [1, 2] as const) {
    it(`land where the solver says when the puck is followed, ${bounceCount} bounce(s)`, () => {
      fc.assert(
        fc.property(anyCase, each => {
          const one = suited(each, bounceCount);
          for (const pass of solve(one, bounceCount)) {
            expect(pass.bounces).toHaveLength(bounceCount);
            expect(missOf(one, pass)).toBeLessThan(1e-5);
            expect(pass.arrivalS).toBeLessThanOrEqual(one.maxTimeS);
          }
        }),
        { numRuns: 150 },
      );
    });

    it(`are all those that shooting in ${SHOTS} directions finds, ${bounceCount} bounce(s)`, () => {
      let checkedCount = 0;
      for (const seed of KEPT_SEEDS) {
        fc.assert(
          fc.property(anyCase, each => {
            const one = suited(each, bounceCount);
            const passes = solve(one, bounceCount);
            const hits = bankPassesByShooting(
              one.boards,
              one.model,
              one.passerM,
              one.speedMps,
              one.receiver,
              bounceCount,
              one.maxTimeS,
              SHOTS,
            ).filter(hit => hit.missM < 1e-6);
            checkedCount += hits.length;
            for (const hit of hits) {
              const nearest = Math.min(...passes.map(pass => apartRad(pass.launchRad, hit.launchRad)));
              expect(nearest, `shot ${hit.launchRad}`).toBeLessThan(1e-6);
            }
          }),
          { numRuns: RUNS, seed },
        );
      }
      expect(checkedCount).toBeGreaterThan(20);
    }, 300_000);
  }

  it('are found in their ring of launch directions, each where all round finds it', () => {
    const rings = [
      [0, 0.3],
      [0.3, 0.9],
      [0.9, Math.PI],
    ] as const;
    const perRing = rings.map(() => 0);
    fc.assert(
      fc.property(
        anyCase,
        fc.constantFrom<(1 | 2)[]>(1, 2),
        evenly(-Math.PI, Math.PI),
        (each, bounceCount, rad) => {
          const { boards, model, passerM, speedMps, maxTimeS, receiver } = suited(each, bounceCount);
          const search = bankSearch(boards, model, passerM, speedMps, { bounceCount, maxTimeS });
          const all = search(receiver);
          for (const [i, [beyondRad, withinRad]] of rings.entries()) {
            const isInRing = (pass: BankPass): boolean => {
              const apart = apartRad(pass.launchRad, rad);
              return apart >= beyondRad && apart < withinRad;
            };
            const inRing = search(receiver, { launchRad: rad, withinRad, beyondRad }).filter(isInRing);
            const wanted = all.filter(isInRing);
            expect(inRing.map(pass => pass.launchRad)).toEqual(wanted.map(pass => pass.launchRad));
            perRing[i]! += wanted.length;
          }
        },
      ),
      { numRuns: 150, seed: 5 },
    );
    expect(Math.min(...perRing)).toBeGreaterThan(5);
  });

  it('are the same however many receivers one search has looked at before', { timeout: 60_000 }, () => {
    const [boards] = RINKS;
    const model = puckModelOf();
    const passerM = { xM: -12, yM: 4 };
    const search = bankSearch(boards, model, passerM, 16, { bounceCount: 2 });
    // So many that what is kept of the boards is given up and followed anew more than once.
    for (const [i, receiver] of fc.sample(anyReceiver, { numRuns: 600, seed: 51 }).entries()) {
      const passes = search(receiver);
      if (i % 40 === 0)
        expect(passes).toEqual(bankPasses(boards, model, passerM, 16, receiver, { bounceCount: 2 }));
    }
  });

  it('are the mirror images off the straight boards with e = 1, no friction, standing receiver', () => {
    const model: PuckModel = puckModelOf({
      frictionRatio: 0,
      dragPerM: 0,
      restitutionRatio: 1,
      boardFrictionRatio: 0,
    });
    fc.assert(
      fc.property(evenly(-15, 15), evenly(-9, 9), evenly(-15, 15), evenly(-9, 9), (x0, y0, x1, y1) => {
        const boards = RINKS[0];
        const receiver: Receiver = {
          atM: { xM: x1, yM: y1 },
          velocityMps: { xMps: 0, yMps: 0 },
          bladeOffsetM: { xM: 0, yM: 0 },
        };
        const found = bankPasses(boards, model, { xM: x0, yM: y0 }, 15, receiver, { maxTimeS: 20 });
        for (const side of [1, -1]) {
          const imageY = side * (boards.widthM - 2 * model.puckRadiusM) - y1;
          const aimRad = Math.atan2(imageY - y0, x1 - x0);
          const pass = found.find(one => apartRad(one.launchRad, aimRad) < 1e-9);
          expect(pass?.arrivalS).toBeCloseTo(Math.hypot(imageY - y0, x1 - x0) / 15, 9);
        }
      }),
    );
  });

  it('need a bounce point nearer the passer than the mirror image says', () => {
    // Common consequence of e < 1 and friction: the puck comes off flatter and slower.
    const passerM = { xM: -10, yM: -6 };
    const receiver: Receiver = {
      atM: { xM: 8, yM: -6 },
      velocityMps: { xMps: 0, yMps: 0 },
      bladeOffsetM: { xM: 0, yM: 0 },
    };
    const pass = bankPasses(RINKS[0], puckModelOf(), passerM, 15, receiver).find(
      one => one.bounces[0]!.part === 'minusY',
    )!;
    expect(pass.bounces[0]!.centreM.xM).toBeLessThan(-1);
  });

  it('lie each in a window of aim', () => {
    fc.assert(
      fc.property(anyCase, one => {
        const middle = { ...one.receiver, bladeOffsetM: { xM: 0, yM: 0 } };
        const windows = bankWindows(one.boards, one.model, one.passerM, one.speedMps, middle, 1.2, {
          maxTimeS: one.maxTimeS,
        });
        for (const pass of solve({ ...one, receiver: middle }, 1)) {
          const inside = windows.some(([from, to]) =>
            from <= to
              ? pass.launchRad >= from - 1e-9 && pass.launchRad <= to + 1e-9
              : pass.launchRad >= from - 1e-9 || pass.launchRad <= to + 1e-9,
          );
          expect(inside).toBe(true);
        }
      }),
      { numRuns: 40 },
    );
  });

  it('fan out as far as seeded shooting with the same spreads does', () => {
    const passerM = { xM: -10, yM: -6 };
    const receiver: Receiver = {
      atM: { xM: 4, yM: -5 },
      velocityMps: { xMps: 3, yMps: 0 },
      bladeOffsetM: { xM: 0, yM: 0 },
    };
    const boards = RINKS[0];
    const model = puckModelOf();
    const pass = bankPasses(boards, model, passerM, 15, receiver).find(
      one => one.bounces[0]!.part === 'minusY',
    )!;
    const spread = { restitutionSd: 0.03, boardFrictionSd: 0.02, aimSdRad: 0.02 };
    const cone = bankCone(boards, model, passerM, pass, spread);
    // Two-point rule: every spread up or down by one sd, all eight ways; its variance is that of the spreads to first order.
    let sum = 0;
    let middleX = 0;
    let middleY = 0;
    const places = [-1, 1].flatMap(a =>
      [-1, 1].flatMap(b =>
        [-1, 1].map(c => {
          const path = puckPath(
            boards,
            {
              ...model,
              restitutionRatio: 0.45 + a * spread.restitutionSd,
              boardFrictionRatio: 0.25 + b * spread.boardFrictionSd,
            },
            passerM,
            pass.launchRad + c * spread.aimSdRad,
            15,
            { rims: false },
          );
          return puckAt(path, pass.arrivalS).atM;
        }),
      ),
    );
    for (const place of places) {
      middleX += place.xM / 8;
      middleY += place.yM / 8;
    }
    for (const place of places) sum += ((place.xM - middleX) ** 2 + (place.yM - middleY) ** 2) / 8;
    expect(Math.hypot(cone.atMeetSdM, cone.alongSdM)).toBeCloseTo(Math.sqrt(sum), 1);
    const wider = bankCone(boards, model, passerM, pass, bankSpreadOf(0.04));
    expect(wider.atMeetSdM).toBeGreaterThan(cone.atMeetSdM);
  });
});

const apartRad = (one: number, other: number): number =>
  Math.abs(Math.atan2(Math.sin(one - other), Math.cos(one - other)));
