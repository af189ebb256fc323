import { describe, expect, it } from 'vitest';
import type { DrillPlan } from '../drill/drill.ts';
import { mendSentence } from '../mends/mend-sentence.ts';
import { mendOf } from '../mends/mends-of.ts';
import { planAfter } from '../mends/plan-after.ts';
import { rinkOf } from '../rink/rink-of.ts';
import { at, planOf, playableFrom, skate } from '../run/drill-shorthand.reference.ts';
import { runDrill } from '../run/run-drill.ts';
import type { Finding, FindingKind, Run } from '../run/run-result.ts';
import { levelOf } from '../skater/level.ts';
import type { ActId, SpotId } from '../units/ids.ts';
import { isNone } from '../units/none.ts';
import { flowOf } from './flow-of.ts';
import type { FlowSetting } from './flow-result.ts';

const setting = (skaters: number, goalies = 1): FlowSetting => ({
  roster: { skaters, goalies },
  minutes: 10,
  beyondLines: 'join',
});

const flowFindings =
  (of: FlowSetting) =>
  (plan: DrillPlan, run: Run): readonly Finding[] => {
    const flow = flowOf(plan, run, of);
    return isNone(flow) ? [] : flow.findings;
  };

/** A mend of a finding, on the sheet and at the level of every case here. */
const mended = (plan: DrillPlan, finding: Finding, more: ReturnType<typeof flowFindings>) =>
  mendOf({
    plan,
    rink: rinkOf({ preset: '200x85ft' }),
    level: levelOf('collegeWomen'),
    finding,
    newAct: 'added act' as ActId,
    newPuck: 'added puck',
    more,
  });

const shooter = (role: string, yM: number, waitS = 0) => ({
  role,
  atM: at(0, yM),
  facingRad: Math.PI,
  puck: true,
  acts: [
    skate([at(-14, yM)], {
      kind: 'carry',
      stops: true,
      ...(waitS > 0 ? { cue: { on: 'after', seconds: waitS } } : {}),
    }),
    { kind: 'shoot', atEnd: 'minusX', speedMps: 14 } as const,
  ],
});

const waiting = (plan: DrillPlan, count: number): DrillPlan => ({
  ...plan,
  spots: Object.fromEntries(
    Object.entries(plan.spots).map(([id, spot]) => [id, { ...spot, waitingCount: count }]),
  ),
});

const cases: readonly {
  readonly kind: FindingKind;
  readonly plan: DrillPlan;
  readonly of: FlowSetting;
  readonly mends: RegExp;
}[] = [
  {
    kind: 'lineStandsTooLong',
    plan: {
      ...waiting(
        planOf([{ role: 'F1', atM: at(-14, 4), acts: [skate([at(14, 4), at(14, -4), at(-12, -2)])] }]),
        3,
      ),
      flow: { next: { on: 'every', seconds: 30 }, ends: 'one', pauseS: 0, goesTo: {} },
    },
    of: setting(4),
    mends: /^Start a rep every \d+ s|^Run it at/,
  },
  {
    kind: 'tooFewSkaters',
    plan: {
      ...planOf([{ role: 'F1', atM: at(-14, 4), acts: [skate([at(14, 4)])] }]),
      flow: { next: { on: 'every', seconds: 4 }, ends: 'one', pauseS: 0, goesTo: {} },
    },
    of: setting(2),
    mends: /^Start a rep every \d+ s/,
  },
  {
    kind: 'goalieHasNoTime',
    plan: waiting(
      planOf([
        shooter('F1', 5),
        shooter('F2', -5, 0.4),
        { role: 'G', side: 'them', kind: 'goalie', atM: at(-26.2, 0) },
      ]),
      3,
    ),
    of: setting(8),
    mends: /F2|F1|Leave|go every/,
  },
  {
    kind: 'lineInTheWay',
    plan: waiting(
      planOf([
        { role: 'F1', atM: at(0, 0), facingRad: Math.PI / 2, acts: [skate([at(0, 9)], { stops: true })] },
        { role: 'F2', atM: at(-12, -1.5), acts: [skate([at(12, -1.5)])] },
      ]),
      2,
    ),
    of: setting(6),
    mends: /F1|F2/,
  },
];

describe('a small game at the other end', () => {
  const area = { fromM: at(-28, -12), toM: at(-16, 12) };
  const game = { rank: 0, ...area, usCount: 2, themCount: 2, nets: [], resets: 'coach', shiftS: 40 } as const;
  const lines = waiting(
    planOf([{ role: 'F1', atM: at(10, 4), acts: [skate([at(26, 4), at(26, -4), at(10, -2)])] }]),
    7,
  );
  // As soon as that is: only the other end makes more of it.
  const flow = { next: { on: 'every', seconds: 9 }, ends: 'one', pauseS: 0, goesTo: {} } as const;
  const mendFor = (kind: FindingKind, plan: DrillPlan, skaters: number): unknown => {
    const more = flowFindings(setting(skaters));
    const finding = more(plan, runDrill(playableFrom(plan))).find(one => one.kind === kind)!;
    const mend = mended(plan, finding, more);
    return mend.kind === 'mend' ? mend.writes : mend.reason;
  };

  it('is not run through by a mend, which uses that end where it is free', () => {
    const free = mendFor('lineStandsTooLong', { ...lines, flow }, 8);
    const taken = mendFor('lineStandsTooLong', { ...lines, flow, games: { game } }, 12);
    expect(JSON.stringify(free)).toMatch(/"both"|"byTurns"/);
    expect(JSON.stringify(taken)).not.toMatch(/"both"|"byTurns"/);
  });

  it('and when reps go through it, one end is what is offered', () => {
    const plan = { ...lines, flow: { ...flow, ends: 'both' as const }, games: { game } };
    expect(mendFor('repThroughGame', plan, 28)).toEqual([
      { path: ['flow'], value: { ...flow, ends: 'one' } },
    ]);
  });
});

describe.each(cases)('a mend of $kind', ({ kind, plan, of, mends }) => {
  it('makes it go when it is applied, and the flow has nothing new to look at', () => {
    const more = flowFindings(of);
    const allOf = (one: DrillPlan): readonly Finding[] => {
      const run = runDrill(playableFrom(one));
      return [...run.findings, ...more(one, run)];
    };
    const before = allOf(plan);
    const finding = before.find(one => one.kind === kind)!;
    expect(finding).toBeDefined();
    const mend = mended(plan, finding, more);
    if (mend.kind !== 'mend') throw new Error(`${kind}: ${mend.reason} after ${mend.triedCount}`);
    expect(mendSentence(mend, plan)).toMatch(mends);
    const after = allOf(planAfter(plan, mend.writes));
    const alike = (one: Finding) => one.kind === kind && key(one.spots) === key(finding.spots);
    expect(after.filter(alike).length).toBeLessThan(before.filter(alike).length);
    const looks = (all: readonly Finding[]) =>
      all.filter(({ weight }) => weight === 'look').map(one => `${one.kind} ${key(one.spots)}`);
    expect(looks(after).filter(look => !looks(before).includes(look))).toEqual([]);
  });
});

describe('a finding that is only worth knowing and that no single change takes away', () => {
  it('is eased by the change that eases it most, and the sentence says what it becomes', () => {
    const plan: DrillPlan = waiting(planOf([{ role: 'F1', atM: at(-14, 4), acts: [skate([at(14, 4)])] }]), 9);
    const more = flowFindings(setting(10));
    const run = runDrill(playableFrom(plan));
    const finding = more(plan, run).find(one => one.kind === 'lineStandsTooLong')!;
    const mend = mended(plan, finding, more);
    if (mend.kind !== 'mend' || mend.easesTo === undefined) throw new Error('nothing eases it');
    const after = planAfter(plan, mend.writes);
    const [left] = more(after, runDrill(playableFrom(after))).filter(one => one.kind === finding.kind);
    expect(left!.value).toBeCloseTo(mend.easesTo, 9);
    expect(Math.abs(left!.value - left!.threshold)).toBeLessThan(
      0.75 * Math.abs(finding.value - finding.threshold),
    );
    expect(mendSentence(mend, plan)).toMatch(/: \d+(\.\d+)? skaters then, better if not enough\.$/);
  });
});

const key = (spots: readonly SpotId[]): string => [...spots].sort().join(' ');
