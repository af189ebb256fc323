import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenly } from '../../test/evenly.ts';
import type { DrillPlan } from '../drill/drill.ts';
import { rinkOf } from '../rink/rink-of.ts';
import { playableFrom } from '../run/drill-shorthand.reference.ts';
import { findingSentence } from '../run/finding-sentence.ts';
import { runDrill } from '../run/run-drill.ts';
import type { Finding, Run } from '../run/run-result.ts';
import { levelOf } from '../skater/level.ts';
import type { LevelId } from '../skater/model.ts';
import type { ActId, SpotId } from '../units/ids.ts';
import type { Mend } from './mend.ts';
import { mendCandidatesOf } from './mend-candidates.ts';
import { mendSentence } from './mend-sentence.ts';
import { drillsWithFindings } from './mends-of.reference.ts';
import { mendOf, mendSearch } from './mends-of.ts';
import { planAfter } from './plan-after.ts';

const rink = rinkOf({ preset: '200x85ft' });
const ids = { newAct: 'added act' as ActId, newPuck: 'added puck' };
const runOf = (plan: DrillPlan, level: LevelId): Run => runDrill(playableFrom(plan, level));
const keyOf = ({ kind, spots }: Finding): string => `${kind} ${[...spots].sort().join(' ')}`;
const looksOf = (run: Run): readonly string[] =>
  run.findings.filter(({ weight }) => weight === 'look').map(keyOf);

describe.each(drillsWithFindings())(
  'a mend of $kind ($says)',
  ({ kind, plan, level = 'collegeWomen', mends }) => {
    const run = runOf(plan, level);
    const finding = run.findings.find(one => one.kind === kind)!;
    const asked = { plan, rink, level: levelOf(level), finding, ...ids };

    it('the drill has the finding, and says it whole', () => {
      expect(finding).toBeDefined();
      expect(Number.isFinite(finding.value) && Number.isFinite(finding.threshold)).toBe(true);
      expect(finding.unit).not.toBe('');
      expect(finding.source).not.toBe('');
      expect(findingSentence(finding, plan)).not.toMatch(/undefined|NaN|\?/);
    });

    it(
      mends ? 'makes it go when it is applied, with nothing new to look at' : 'is not offered, as none helps',
      () => {
        const before = structuredClone(plan);
        const mend = mendOf(asked);
        // Trying changes nothing: what the coach has is still there, and putting it back is undoing the writes.
        expect(plan).toEqual(before);
        if (!mends) {
          expect(mend.kind).toBe('noMend');
          return;
        }
        expect(mend).toMatchObject({ kind: 'mend', finding });
        const { writes } = mend as Mend;
        const after = runOf(planAfter(plan, writes), level);
        expect(after.findings.filter(one => keyOf(one) === keyOf(finding)).length).toBeLessThan(
          run.findings.filter(one => keyOf(one) === keyOf(finding)).length,
        );
        const old = looksOf(run);
        expect(looksOf(after).filter(look => !old.includes(look))).toEqual([]);
        expect(mendSentence(mend as Mend, plan)).toMatch(mends);
        expect(mendSentence(mend as Mend, plan, 'feet')).not.toMatch(/ m[ .]|undefined|NaN/);
        const undone = planAfter(
          planAfter(plan, writes),
          writes.toReversed().map(({ path }) => ({ path, value: valueAt(plan, path) })),
        );
        expect(runOf(undone, level).findings.map(keyOf)).toEqual(run.findings.map(keyOf));
      },
    );

    it('is the smallest of those tried, in no more than 40 runs', () => {
      const search = mendSearch(asked);
      let runs = 0;
      let step = search.next();
      while (!step.done) {
        runs++;
        step = search.next();
      }
      expect(runs).toBeLessThanOrEqual(40);
      const sizes = mendCandidatesOf({ ...asked, playable: playableFrom(plan, level), run }).map(
        ({ size }) => size,
      );
      expect(sizes).toEqual([...sizes].sort((a, b) => a - b));
      expect(sizes.every(size => size > 0)).toBe(true);
    });
  },
);

const valueAt = (node: unknown, path: readonly string[]): unknown =>
  path.reduce<unknown>((at, key) => (at as Record<string, unknown> | undefined)?.[key], node);

describe('mends of drills moved about', () => {
  it('always take away what they are for, and never leave a drill that cannot be run', () => {
    const drills = drillsWithFindings();
    const moves = evenly(-3, 3);
    fc.assert(
      fc.property(fc.constantFrom(...drills), moves, moves, ({ plan, level = 'collegeWomen' }, byX, byY) => {
        const [first] = Object.keys(plan.spots) as SpotId[];
        const { xM, yM } = plan.spots[first!]!.atM;
        const moved = planAfter(plan, [
          { path: ['spots', first!, 'atM'], value: { xM: xM + byX, yM: yM + byY } },
        ]);
        const run = runOf(moved, level);
        for (const finding of run.findings) {
          const mend = mendOf({ plan: moved, rink, level: levelOf(level), finding, ...ids });
          if (mend.kind !== 'mend') continue;
          const after = runOf(planAfter(moved, mend.writes), level);
          const count = (of: Run) => of.findings.filter(one => keyOf(one) === keyOf(finding)).length;
          expect(count(after)).toBeLessThan(count(run));
        }
      }),
      { numRuns: 40, seed: 7 },
    );
  });
});

describe('a search for a mend', () => {
  it('can be left between any two runs', () => {
    const { kind, plan, level = 'collegeWomen' } = drillsWithFindings()[0]!;
    const finding = runOf(plan, level).findings.find(one => one.kind === kind)!;
    const search = mendSearch({ plan, rink, level: levelOf(level), finding, ...ids });
    expect(search.next().done).toBe(false);
    expect(search.return({ kind: 'noMend', reason: 'noneHelps', triedCount: 0 }).done).toBe(true);
    expect(search.next().done).toBe(true);
  });

  it('offers nothing for a plan that cannot be run', () => {
    const { kind, plan, level = 'collegeWomen' } = drillsWithFindings()[0]!;
    const finding = runOf(plan, level).findings.find(one => one.kind === kind)!;
    const broken = planAfter(plan, [{ path: ['spots', finding.spots[0]!, 'rank'], value: Number.NaN }]);
    expect(mendOf({ plan: broken, rink, level: levelOf(level), finding, ...ids })).toEqual({
      kind: 'noMend',
      reason: 'nothingToTry',
      triedCount: 0,
    });
  });
});
