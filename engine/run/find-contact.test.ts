import { describe, expect, it } from 'vitest';
import type { DrillPlan } from '../drill/drill.ts';
import { LEVEL_IDS, type LevelId } from '../skater/model.ts';
import { at, named, planOf, playableFrom, skate, type TestSpot } from './drill-shorthand.reference.ts';
import { findingSentence } from './finding-sentence.ts';
import { runDrill } from './run-drill.ts';
import type { Finding } from './run-result.ts';
import { mirrored } from './turned-plan.reference.ts';

const contacts = (plan: DrillPlan, level: LevelId): readonly Finding[] =>
  runDrill(playableFrom(plan, level)).findings.filter(({ kind }) => kind === 'contactBelowAge');

const hunted = (yM: number, hunterM = at(-6, yM - 5)): readonly TestSpot[] => [
  {
    role: 'X1',
    side: 'them',
    atM: at(-12, yM),
    puck: true,
    acts: [skate([at(14, yM)], { kind: 'carry', effortRatio: 0.6, cue: { on: 'whistle' } })],
  },
  {
    role: 'F1',
    atM: hunterM,
    acts: [{ kind: 'chase', whom: named('X1'), effortRatio: 1, cue: { on: 'whistle' } }],
  },
];
const atTheBoards = planOf(hunted(12));

describe('contact below the age allowed', () => {
  it('is said of a catch at the boards at the levels that do not check, and only there', () => {
    const said = LEVEL_IDS.filter(level => contacts(atTheBoards, level).length > 0);
    // Canada checks from 13–14 years since 2013 (Black et al. 2017); women's hockey does not (Tator et al. 2022).
    expect(said).toEqual(['u10', 'u14', 'collegeWomen']);
    const [finding] = contacts(atTheBoards, 'u14');
    expect(finding).toMatchObject({ spots: ['F1', 'X1'], threshold: 0, unit: 'm/s', status: 'sourced' });
    expect(finding!.source).toContain('Black et al. 2017');
    expect(findingSentence(finding!, atTheBoards)).toMatch(/federation's rules decide/);
  });

  it('is not said of the same chase in open ice from behind or the side', () => {
    expect(contacts(planOf(hunted(2, at(-16, 2))), 'u14')).toEqual([]);
  });

  it('is said of a meeting from the front', () => {
    const [front] = contacts(planOf(hunted(2, at(8, 2))), 'u14');
    expect(front!.value).toBeGreaterThan(2);
  });

  it('is not said between two of a side, nor of a catch that nobody hunts for', () => {
    const own = atTheBoards.spots[named('X1')]!;
    const plan = {
      ...atTheBoards,
      spots: { ...atTheBoards.spots, [named('X1')]: { ...own, side: 'us' as const } },
    };
    expect(contacts(plan, 'u10')).toEqual([]);
    expect(contacts(planOf([hunted(12)[0]!, { role: 'F1', atM: at(-6, 12) }]), 'u10')).toEqual([]);
  });

  it('is said of a steal from the front as of a chase', () => {
    const [carrier] = hunted(2);
    const thief: TestSpot = {
      role: 'F1',
      atM: at(8, 2),
      acts: [{ kind: 'steal', whom: named('X1'), effortRatio: 1, cue: { on: 'whistle' } }],
    };
    const [front] = contacts(planOf([carrier!, thief]), 'u14');
    expect(front).toMatchObject({ spots: ['F1', 'X1'] });
    expect(front!.value).toBeGreaterThan(2);
    expect(contacts(planOf([carrier!, thief]), 'u18')).toEqual([]);
  });

  it('mirrored, the drill has the mirrored finding', () => {
    const [one] = contacts(atTheBoards, 'u10');
    const [other] = contacts(mirrored(atTheBoards), 'u10');
    expect(other!.timeS).toBeCloseTo(one!.timeS, 6);
    expect(other!.atM.yM).toBeCloseTo(-one!.atM.yM, 6);
  });
});
