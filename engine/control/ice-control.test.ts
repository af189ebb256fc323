import { describe, expect, it } from 'vitest';
import { puckModelOf } from '../puck/puck-model.ts';
import { slideTimeAtDistance, slowingOf } from '../puck/slide.ts';
import { randomOf } from '../random/random.ts';
import { boardsOf } from '../rink/boards.ts';
import type { Contestant } from '../skater/contestant.ts';
import { controlAt } from '../skater/control-at.ts';
import { timeTo } from '../skater/reach.ts';
import type { IcePoint } from '../units/points.ts';
import { arrivalField } from './arrival-field.ts';
import { firstToEachCell } from './first-to-each-cell.ts';
import { iceControl } from './ice-control.ts';
import { cellMiddle, iceGridOf } from './ice-grid.ts';
import { someContestants } from './some-contest.reference.ts';

const boards = boardsOf(60.96, 25.908, 8.5344);
const grid = iceGridOf(boards, 1);
const model = puckModelOf();
const puckM = { xM: -6, yM: 3 };

const arrivalOf = (one: Contestant, at: IcePoint): number => {
  const time = timeTo(one.state, one.power, at);
  return typeof time === 'number' ? time : Number.POSITIVE_INFINITY;
};

describe('arrival fields', () => {
  it('agree with the earliest touch of each cell, for skaters at rest and at speed', () => {
    const random = randomOf(5);
    for (let scene = 0; scene < 4; scene++) {
      for (const one of someContestants(random)) {
        const field = arrivalField(grid, one.state, one.power);
        for (let cell = scene; cell < field.length; cell += 5) {
          if (grid.inside[cell] === 0) expect(field[cell]).toBe(Number.POSITIVE_INFINITY);
          else expect(Math.abs(field[cell]! - arrivalOf(one, cellMiddle(grid, cell)))).toBeLessThan(1e-4);
        }
      }
    }
  });
});

describe('ice control', () => {
  it('agrees with the exact integral cell by cell', () => {
    const random = randomOf(8);
    let worst = 0;
    for (let scene = 0; scene < 6; scene++) {
      const contestants = someContestants(random);
      const control = iceControl(grid, { puckM, passSpeedMps: 13, model, contestants });
      for (let cell = scene; cell < control.us.length; cell += 7) {
        if (grid.inside[cell] === 0) {
          expect(control.us[cell]).toBeNaN();
          continue;
        }
        const at = cellMiddle(grid, cell);
        const puckS = slideTimeAtDistance(
          slowingOf(model),
          13,
          Math.hypot(at.xM - puckM.xM, at.yM - puckM.yM),
        );
        const exact = controlAt(
          contestants.map(one => ({ ...one, arrivalS: arrivalOf(one, at) })),
          puckS,
          10,
        );
        worst = Math.max(
          worst,
          Math.abs(exact.us - control.us[cell]!),
          Math.abs(exact.them - control.them[cell]!),
        );
      }
    }
    expect(worst).toBeLessThan(2e-3);
  });

  it('changes sides when the teams do, and always adds up', () => {
    const contestants = someContestants(randomOf(3));
    const swapped = contestants.map(one => ({ ...one, side: one.side === 'us' ? 'them' : 'us' }) as const);
    const there = iceControl(grid, { puckM, passSpeedMps: 13, model, contestants });
    const back = iceControl(grid, { puckM, passSpeedMps: 13, model, contestants: swapped });
    for (let cell = 0; cell < there.us.length; cell++) {
      if (Number.isNaN(there.us[cell]!)) continue;
      expect(there.us[cell]! + there.them[cell]!).toBeCloseTo(1, 6);
      expect(back.them[cell]).toBeCloseTo(there.us[cell]!, 9);
    }
  });

  it('gives all to a side that is alone, and nothing where the puck does not reach', () => {
    const alone = someContestants(randomOf(4)).filter(one => one.side === 'us');
    const control = iceControl(grid, { puckM, passSpeedMps: 13, model, contestants: alone });
    for (const value of control.them) if (!Number.isNaN(value)) expect(Math.abs(value)).toBeLessThan(1e-9);
    const soft = iceControl(grid, { puckM, passSpeedMps: 2, model, contestants: alone });
    expect(Math.max(...soft.us.filter(value => !Number.isNaN(value)))).toBeGreaterThan(0.9);
    expect(soft.us[grid.columnCount * 12 + 55]).toBeNaN();
  });
});

describe('the exact race', () => {
  it('is a fair share of rates when two arrive together, and the closed total otherwise', () => {
    const entry = { arrivalS: 1, spreadS: 0.35, controlRatePerS: 4 } as const;
    const even = controlAt(
      [
        { side: 'us', ...entry },
        { side: 'them', ...entry, controlRatePerS: 12 },
      ],
      0.5,
      10,
    );
    expect(even.us).toBeCloseTo(0.25, 8);
    expect(even.us + even.them).toBeCloseTo(1, 8);
    // Nobody else: 1 − exp(−λ∫f) by the closed form, horizon 0.3 s.
    const scale = (0.35 * Math.sqrt(3)) / Math.PI;
    const soft = (timeS: number) => scale * Math.log1p(Math.exp((timeS - 1) / scale));
    const lone = controlAt([{ side: 'us', ...entry }], 0.5, 0.3);
    expect(lone.us).toBeCloseTo(1 - Math.exp(-4 * (soft(0.8) - soft(0.5))), 9);
  });
});

describe('who is first', () => {
  it('is the one with the earliest touch, with the lead before the other side', () => {
    const contestants = someContestants(randomOf(6));
    const first = firstToEachCell(grid, contestants);
    for (let cell = 0; cell < first.who.length; cell += 11) {
      if (grid.inside[cell] === 0) {
        expect(first.who[cell]).toBe(-1);
        continue;
      }
      const times = contestants.map(one => arrivalOf(one, cellMiddle(grid, cell)));
      expect(first.arrivalS[cell]).toBeCloseTo(Math.min(...times), 3);
      const best = (side: string) =>
        Math.min(...times.filter((_, index) => contestants[index]!.side === side));
      expect(first.leadS[cell]).toBeCloseTo(Math.abs(best('us') - best('them')), 3);
    }
  });
});
