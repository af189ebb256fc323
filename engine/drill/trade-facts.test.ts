import { describe, expect, it } from 'vitest';
import { type Random, randomOf } from '../random/random.ts';
import { levelOf } from '../skater/level.ts';
import type { LevelId, SkaterModel } from '../skater/model.ts';
import type { SpotId } from '../units/ids.ts';
import type { IcePoint } from '../units/points.ts';
import type { DrillPlan } from './drill.ts';
import { at, named, planOf, playableFrom, skate, type TestSpot } from './drill-shorthand.reference.ts';
import { runDrill } from './run-drill.ts';
import type { Run } from './run-result.ts';

// Facts of the trade: common practice, no source. The model is held against them, no number is fitted to them.

const REPS = 100;
const BLUE_LINE_XM = 7.7724;

/** One skater of a level: top speed by the level's own spread; τ by 5 % and the reaction by 20 %, both estimates. */
const drawn = (level: SkaterModel, random: Random): SkaterModel => ({
  ...level,
  topSpeedMps: level.topSpeedMps * (1 + level.topSpeedSdRatio * random.normal()),
  tauS: level.tauS * (1 + 0.05 * random.normal()),
  reactionS: Math.max(0.1, level.reactionS * (1 + 0.2 * random.normal())),
});

const repsOf = (plan: DrillPlan, levelId: LevelId, seed: number): Run[] => {
  const playable = playableFrom(plan, levelId);
  const random = randomOf(seed);
  return Array.from({ length: REPS }, () => {
    const models = Object.fromEntries(
      Object.keys(plan.spots).map(spot => [spot, drawn(playable.level.model, random)]),
    ) as Record<SpotId, SkaterModel>;
    return runDrill(playable, { models });
  });
};

describe('three forwards chase one carrier with a short lead out of the attacking zone, two defenders in a tight gap', () => {
  const chaser = (role: string, atM: IcePoint): TestSpot => ({
    role,
    atM,
    facingRad: Math.PI,
    acts: [{ kind: 'chase', whom: named('X1'), effortRatio: 1, cue: { on: 'whistle' } }],
  });
  /** The one free choice is the carrier's way: straight on, or across before the defenders who stand in it. */
  const backcheck = (levelId: LevelId, leadM: number, wayM: readonly IcePoint[]): DrillPlan => {
    const gapM = levelOf(levelId).model.blueLineGapM;
    return planOf([
      {
        role: 'X1',
        side: 'them',
        atM: at(11, 4),
        facingRad: Math.PI,
        puck: true,
        acts: [skate(wayM, { kind: 'carry' })],
      },
      chaser('F1', at(11 + leadM, 4)),
      chaser('F2', at(14, -2)),
      chaser('F3', at(16, 9)),
      { role: 'D1', atM: at(2, 5), acts: [{ kind: 'gap', whom: named('X1'), distanceM: gapM }] },
      { role: 'D2', atM: at(1, -1), acts: [{ kind: 'gap', whom: named('X1'), distanceM: 2 * gapM }] },
    ]);
  };
  const ACROSS = [at(5, 5), at(1, 1), at(-1, -6), at(-8, -9), at(-24, -2)];
  const STRAIGHT = [at(2, 7), at(-8, 6), at(-24, 2)];
  const shareInNeutralZone = (runs: readonly Run[]): number =>
    runs.filter(run =>
      run.events.some(event => event.kind === 'caught' && Math.abs(event.atM.xM) < BLUE_LINE_XM),
    ).length / runs.length;

  it.each([
    ['u18', 2.5],
    ['collegeWomen', 2.5],
    ['collegeWomen', 4],
    ['collegeMen', 3],
    ['pro', 4],
  ] as const)(
    '%s, %s m lead: caught in the neutral zone in most runs when the gap makes him cut across',
    (id, lead) => {
      const share = shareInNeutralZone(repsOf(backcheck(id, lead, ACROSS), id, 31));
      expect(share).toBeGreaterThan(0.5);
    },
  );

  it('is not so when the defenders leave the way open: straight on, the lead holds to their blue line', () => {
    // Why the gap matters: with ρ = 0.94 a lead of one stick is made up over about thirty metres.
    const share = shareInNeutralZone(repsOf(backcheck('collegeWomen', 3, STRAIGHT), 'collegeWomen', 32));
    expect(share).toBeLessThan(0.5);
  });
});

describe('one defender joins the breakout', () => {
  /** How far the defender is behind the puck when it crosses the centre line, metres; below 0: ahead. */
  const behindM = (levelId: LevelId, delayS: number): number => {
    const run = runDrill(
      playableFrom(
        planOf([
          {
            role: 'F1',
            atM: at(-21, 9),
            puck: true,
            acts: [skate([at(-10, 10), at(12, 8)], { kind: 'carry' })],
          },
          {
            role: 'D1',
            atM: at(-22, -3),
            acts: [skate([at(-10, -2), at(14, 0)], { cue: { on: 'after', seconds: delayS } })],
          },
        ]),
        levelId,
      ),
    );
    const crossed = run.events.find(event => event.kind === 'puckCrosses' && event.line === 'centreLine');
    if (!crossed) throw new Error('the puck does not reach the centre line');
    return -run.tracks[1]!.xM[Math.round(crossed.timeS * run.stepHz)]!;
  };
  /** Level: no more than a stick and an arm behind. */
  const LEVEL_M = 2;
  const latestDelayS = (levelId: LevelId): number => {
    let low = 0;
    let high = 3;
    while (high - low > 1e-3) {
      const middle = (low + high) / 2;
      if (behindM(levelId, middle) <= LEVEL_M) low = middle;
      else high = middle;
    }
    return low;
  };

  it.each(['u14', 'u18', 'collegeWomen', 'collegeMen', 'pro'] as const)(
    '%s: level with the puck at the centre line when he starts at once, lost when he waits',
    id => {
      expect(behindM(id, 0)).toBeLessThanOrEqual(LEVEL_M);
      const delayS = latestDelayS(id);
      expect(delayS).toBeGreaterThan(0.05);
      expect(delayS).toBeLessThan(1.2);
      // A second later there is no catching up: every tenth of a second is most of a metre.
      expect(behindM(id, delayS + 1)).toBeGreaterThan(LEVEL_M + 5);
    },
  );

  it('college women, from these places: the delay at which it is lost is between one and three tenths of a second', () => {
    expect(latestDelayS('collegeWomen')).toBeGreaterThan(0.1);
    expect(latestDelayS('collegeWomen')).toBeLessThan(0.3);
  });
});
