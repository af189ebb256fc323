import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenly } from '../../test/evenly.ts';
import { GAP_TOLERANCE_RATIO } from '../drill/drill-rows.ts';
import { PIVOT_LOSS_RATIO } from '../motion/body-rows.ts';
import { levelOf } from '../skater/level.ts';
import { LEVEL_IDS, type LevelId } from '../skater/model.ts';
import type { IcePoint } from '../units/points.ts';
import { at, named, planOf, playableFrom, skate } from './drill-shorthand.reference.ts';
import { runDrill } from './run-drill.ts';
import type { Run, Track } from './run-result.ts';

const WANTED_M = 2.4;

const run = (
  fromM: IcePoint,
  wayM: readonly IcePoint[],
  keeperM: IcePoint,
  effortRatio: number,
  level: LevelId = 'collegeWomen',
): Run =>
  runDrill(
    playableFrom(
      planOf([
        { role: 'X1', side: 'them', atM: fromM, acts: [skate(wayM, { effortRatio })] },
        { role: 'D1', atM: keeperM, acts: [{ kind: 'gap', whom: named('X1'), distanceM: WANTED_M }] },
      ]),
      level,
    ),
  );

const tracksOf = ({ tracks }: Run): { readonly whom: Track; readonly keeper: Track } => ({
  whom: tracks[0]!,
  keeper: tracks[1]!,
});
const apartM = (one: Run): number[] => {
  const { whom, keeper } = tracksOf(one);
  return Array.from(whom.xM, (x, i) => Math.hypot(x - keeper.xM[i]!, whom.yM[i]! - keeper.yM[i]!));
};
const turnsOf = (one: Run) => one.events.flatMap(event => (event.kind === 'turnsRound' ? [event] : []));
const speedAt = (track: Track, i: number): number => Math.hypot(track.xMps[i]!, track.yMps[i]!);
/** The part of the speed that goes against the facing. */
const backwardMps = (track: Track, i: number): number =>
  -(track.xMps[i]! * Math.cos(track.facingRad[i]!) + track.yMps[i]! * Math.sin(track.facingRad[i]!));

const place = fc.tuple(evenly(-18, 18), evenly(-9, 9)).map(([x, y]) => at(x, y));

describe('who keeps a gap', () => {
  it('is never faster backward than the level’s row allows, unless it was and is slowing down', () => {
    fc.assert(
      fc.property(
        place,
        fc.array(place, { minLength: 1, maxLength: 3 }),
        place,
        fc.double({ min: 0.4, max: 1, noNaN: true }),
        fc.constantFrom(...LEVEL_IDS),
        (fromM, wayM, keeperM, effortRatio, level) => {
          const { model } = levelOf(level);
          const one = run(fromM, wayM, keeperM, effortRatio, level);
          const { keeper } = tracksOf(one);
          const mostMps = model.backwardRatio * model.topSpeedMps;
          for (let i = 1; i < one.sampleCount; i++) {
            const mps = backwardMps(keeper, i);
            if (mps > 1.01 * mostMps) expect(speedAt(keeper, i)).toBeLessThan(speedAt(keeper, i - 1));
          }
        },
      ),
      { numRuns: 60, seed: 3 },
    );
  });

  it('goes backward all the way before somebody slower than that, and holds the gap', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 0.7, noNaN: true }),
        fc.double({ min: 6, max: 9, noNaN: true }),
        evenly(-4, 4),
        (effortRatio, aheadM, yM) => {
          const one = run(at(14, yM), [at(-20, 0)], at(14 - aheadM, yM), effortRatio);
          const { keeper } = tracksOf(one);
          expect(turnsOf(one)).toEqual([]);
          const off = apartM(one).slice(480);
          for (const m of off)
            expect(Math.abs(m - WANTED_M)).toBeLessThan(GAP_TOLERANCE_RATIO.value * WANTED_M);
          expect(backwardMps(keeper, 480)).toBeGreaterThan(0.9 * speedAt(keeper, 480));
        },
      ),
      { numRuns: 30, seed: 4 },
    );
  });

  it('turns forward before somebody who is faster, once, and then skates faster than backward goes', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.92, max: 1, noNaN: true }),
        fc.double({ min: 8, max: 12, noNaN: true }),
        (effortRatio, aheadM) => {
          const { model } = levelOf('collegeWomen');
          const one = run(at(18, 0), [at(-24, 0)], at(18 - aheadM, 0), effortRatio);
          const { keeper } = tracksOf(one);
          expect(turnsOf(one).map(({ to }) => to)).toEqual(['forward']);
          expect(Math.max(...Array.from(keeper.xM, (_, i) => speedAt(keeper, i)))).toBeGreaterThan(
            model.backwardRatio * model.topSpeedMps,
          );
        },
      ),
      { numRuns: 20, seed: 5 },
    );
  });

  it.each(LEVEL_IDS)('%s: a turn takes the level’s time without a push and its part of the speed', level => {
    const { model } = levelOf(level);
    const one = run(at(22, 0), [at(-24, 0)], at(10, 0), 1, level);
    const { keeper } = tracksOf(one);
    const [turn] = turnsOf(one);
    const from = Math.round(turn!.timeS * 120);
    const to = from + Math.round(model.transitionS * 120);
    const before = speedAt(keeper, from);
    // Evenly: the middle has half of the loss.
    expect(speedAt(keeper, to) / before).toBeCloseTo(1 - PIVOT_LOSS_RATIO.value, 2);
    expect(speedAt(keeper, Math.round((from + to) / 2)) / before).toBeCloseTo(
      1 - PIVOT_LOSS_RATIO.value / 2,
      2,
    );
    expect(backwardMps(keeper, from)).toBeGreaterThan(0.9 * before);
    expect(backwardMps(keeper, to + 6)).toBeLessThan(-0.9 * speedAt(keeper, to + 6));
  });

  it('says what was left of a gap that could not be held: the worst of it', () => {
    // From a stand a stick before a carrier at full speed: nobody skates backward that fast.
    const one = run(at(14, 0), [at(-24, 0)], at(11.6, 0.5), 1);
    const [finding] = one.findings.filter(({ kind }) => kind === 'gapNotHeld');
    const off = apartM(one).map(m => Math.abs(m - WANTED_M));
    expect(finding?.threshold).toBe(WANTED_M);
    expect(Math.abs(finding!.value - WANTED_M)).toBeCloseTo(Math.max(...off), 6);
  });

  it('does the same on the other side of the ice', () => {
    const one = run(at(14, 6), [at(2, 8), at(-20, 3)], at(6, 4), 0.95);
    const other = run(at(14, -6), [at(2, -8), at(-20, -3)], at(6, -4), 0.95);
    const a = tracksOf(one).keeper;
    const b = tracksOf(other).keeper;
    for (let i = 0; i < one.sampleCount; i += 30) {
      expect(b.xM[i]).toBeCloseTo(a.xM[i]!, 6);
      expect(b.yM[i]).toBeCloseTo(-a.yM[i]!, 6);
    }
  });
});
