import { describe, expect, it } from 'vitest';
import type { DrillPlan } from '../drill/drill.ts';
import type { IcePoint } from '../units/points.ts';
import { at, named, planOf, playableFrom, skate } from './drill-shorthand.reference.ts';
import { findingSentence } from './finding-sentence.ts';
import { runDrill } from './run-drill.ts';
import type { Finding } from './run-result.ts';
import { mirrored } from './turned-plan.reference.ts';

const left = (plan: DrillPlan): readonly Finding[] =>
  runDrill(playableFrom(plan)).findings.filter(({ kind }) => kind === 'puckLeftBehind');

/** F1 is to shoot; the pucks lie at `lyingM`. */
const shooter = (lyingM: IcePoint): DrillPlan =>
  planOf(
    [
      {
        role: 'F1',
        atM: at(-10, 4),
        acts: [{ kind: 'shoot', atEnd: 'minusX', speedMps: 20, cue: { on: 'whistle' } }],
      },
    ],
    lyingM,
  );

describe('a puck left behind', () => {
  it('is said of pucks that lie out of reach of who waits for one, with how far', () => {
    const [finding, ...more] = left(shooter(at(-4, 4)));
    expect(more).toEqual([]);
    expect(finding).toMatchObject({ weight: 'know', spots: ['F1'], unit: 'm' });
    expect(finding!.value).toBeCloseTo(6, 6);
    expect(finding!.threshold).toBeCloseTo(1.98, 6);
    expect(finding!.atM).toEqual(at(-4, 4));
    expect(findingSentence(finding!, shooter(at(-4, 4)))).toContain('6.0 m from F1');
  });

  it('is gone when they lie within a lunge, and when there are none', () => {
    expect(left(shooter(at(-9, 4.5)))).toEqual([]);
    expect(left({ ...shooter(at(-4, 4)), pucks: {} })).toEqual([]);
  });

  it('is not said of spare pucks nobody wants, of a shot, or of a pass that has its own finding', () => {
    expect(left(planOf([{ role: 'F1', atM: at(0, 0), acts: [skate([at(9, 0)])] }], at(5, 5)))).toEqual([]);
    const wide = planOf([
      {
        role: 'D1',
        atM: at(0, 0),
        puck: true,
        acts: [{ kind: 'pass', toSpot: named('F1'), way: 'direct', speedMps: 6, cue: { on: 'whistle' } }],
      },
      {
        role: 'F1',
        atM: at(2, 8),
        acts: [{ kind: 'chase', whom: named('D1'), effortRatio: 0.3, cue: { on: 'whistle' } }],
      },
    ]);
    expect(left(wide)).toEqual([]);
    const shot = planOf([
      {
        role: 'F1',
        atM: at(5, 3),
        puck: true,
        acts: [{ kind: 'shoot', atEnd: 'minusX', speedMps: 5, cue: { on: 'whistle' } }],
      },
    ]);
    expect(left(shot)).toEqual([]);
  });

  it('too few pucks is said once of all who go without, beside those who have one, and gone with enough', () => {
    const two = (count: number): DrillPlan => {
      const shot = { kind: 'shoot', atEnd: 'minusX', speedMps: 20, cue: { on: 'whistle' } } as const;
      const plan = planOf(
        ['F1', 'F2', 'F3'].map((role, i) => ({ role, atM: at(-10, i / 2), acts: [shot] })),
        at(-9.5, 0.5),
      );
      return { ...plan, pucks: { heap: { atM: at(-9.5, 0.5), count } } };
    };
    const few = (count: number): readonly Finding[] =>
      runDrill(playableFrom(two(count))).findings.filter(({ kind }) => kind === 'tooFewPucks');
    expect(few(1)).toMatchObject([{ value: 3, threshold: 1, unit: 'pucks', spots: ['F2', 'F3'] }]);
    expect(few(2)).toMatchObject([{ value: 3, threshold: 2, spots: ['F3'] }]);
    expect(few(3)).toEqual([]);
    expect(findingSentence(few(1)[0]!, two(1))).toBe('3 pucks are needed, 1 is there: none for F2 and F3.');
  });

  it('mirrored, the drill has the mirrored finding', () => {
    const [one] = left(shooter(at(-4, 4)));
    const [other] = left(mirrored(shooter(at(-4, 4))));
    expect(other!.atM.yM).toBeCloseTo(-one!.atM.yM, 9);
    expect(other!.value).toBeCloseTo(one!.value, 9);
  });
});
