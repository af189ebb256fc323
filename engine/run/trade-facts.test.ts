import { describe, expect, it } from 'vitest';
import type { DrillPlan } from '../drill/drill.ts';
import { type Random, randomOf } from '../random/random.ts';
import { levelOf } from '../skater/level.ts';
import type { LevelId, SkaterModel } from '../skater/model.ts';
import type { SpotId } from '../units/ids.ts';
import type { IcePoint } from '../units/points.ts';
import { chanceOf } from './chance.reference.ts';
import type { Chance } from './chance.ts';
import { at, named, planOf, playableFrom, skate, type TestSpot } from './drill-shorthand.reference.ts';
import { runDrill } from './run-drill.ts';

// Facts of the trade: common practice, no source. The model is held against them. One rule had the first of them in view: what counts as
// help, in help.ts; see docs/decisions/a-contest-is-a-hazard.md.

const BLUE_LINE_XM = 7.7724;

/** One skater of a level: top speed by the level's own spread; τ by 5 % and the reaction by 20 %, both estimates. */
const drawn = (level: SkaterModel, random: Random): SkaterModel => ({
  ...level,
  topSpeedMps: level.topSpeedMps * (1 + level.topSpeedSdRatio * random.normal()),
  tauS: level.tauS * (1 + 0.05 * random.normal()),
  reactionS: Math.max(0.1, level.reactionS * (1 + 0.2 * random.normal())),
});

describe('three forwards chase one carrier with a short lead out of the attacking zone, two defenders in a tight gap', () => {
  /** Leads from 2 to 4 m, one after the other. */
  const LEADS_M = [2, 3, 4];
  const REPS_A_ROUTE = 102;
  const ROUTES = {
    'straight at full speed': [at(2, 4), at(-8, 4), at(-24, 2)],
    'straight on, a little wide': [at(2, 7), at(-8, 8), at(-24, 4)],
    'cutting inside': [at(5, 5), at(0, 1), at(-8, -3), at(-24, -2)],
    'cutting outside': [at(4, 6), at(-2, 11), at(-12, 11), at(-24, 4)],
    weaving: [at(5, 6), at(0, 2), at(-6, 6), at(-14, 3), at(-24, 1)],
  } as const;
  const LEVELS = ['u18', 'collegeWomen', 'collegeMen', 'pro'] as const;

  const forward = (role: string, atM: IcePoint): TestSpot => ({
    role,
    atM,
    facingRad: Math.PI,
    acts: [{ kind: 'steal', whom: named('X1'), effortRatio: 1, cue: { on: 'whistle' } }],
  });
  const backcheck = (
    levelId: LevelId,
    leadM: number,
    wayM: readonly IcePoint[],
    withForwards = true,
  ): DrillPlan => {
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
      ...(withForwards
        ? [forward('F1', at(11 + leadM, 4)), forward('F2', at(14, -2)), forward('F3', at(16, 9))]
        : []),
      { role: 'D1', atM: at(6, 4), acts: [{ kind: 'gap', whom: named('X1'), distanceM: gapM }] },
      { role: 'D2', atM: at(4.5, -1), acts: [{ kind: 'gap', whom: named('X1'), distanceM: 2 * gapM }] },
    ]);
  };

  interface Shares {
    readonly neutralZone: number;
    readonly behindBlueLine: number;
  }
  /** Where the puck really changes to the other side: stolen, or picked up loose. */
  const sharesOf = (levelId: LevelId, wayM: readonly IcePoint[], withForwards = true): Shares => {
    const random = randomOf(31);
    let inZone = 0;
    let behind = 0;
    const playables = LEADS_M.map(lead =>
      playableFrom(backcheck(levelId, lead, wayM, withForwards), levelId),
    );
    for (let rep = 0; rep < REPS_A_ROUTE; rep++) {
      const playable = playables[rep % playables.length]!;
      const models = Object.fromEntries(
        playable.spots.map(spot => [spot.id, drawn(playable.level.model, random)]),
      ) as Record<SpotId, SkaterModel>;
      const run = runDrill(playable, { models, chance: chanceOf(rep), limitS: 6 });
      const regained = run.events.find(
        event => (event.kind === 'steal' || event.kind === 'pickUp') && event.spot !== 'X1',
      );
      if (regained && Math.abs(regained.atM.xM) < BLUE_LINE_XM) inZone++;
      if (!regained || regained.atM.xM < -BLUE_LINE_XM) behind++;
    }
    return { neutralZone: inZone / REPS_A_ROUTE, behindBlueLine: behind / REPS_A_ROUTE };
  };

  const everyRoute = LEVELS.flatMap(id =>
    (Object.keys(ROUTES) as (keyof typeof ROUTES)[]).map(way => [id, way] as const),
  );
  it.each(everyRoute)(
    '%s, %s: the puck is regained in the neutral zone in most reps, not behind their own blue line',
    (id, way) => {
      const { neutralZone, behindBlueLine } = sharesOf(id, ROUTES[way]);
      expect(neutralZone).toBeGreaterThan(0.5);
      expect(behindBlueLine).toBeLessThan(0.5);
    },
  );

  it('is so because the forwards chase: without them the defenders contain, and most reps go past the blue line', () => {
    for (const id of ['collegeWomen', 'pro'] as const) {
      expect(sharesOf(id, ROUTES['straight at full speed'], false).neutralZone).toBeLessThan(0.35);
    }
  });

  it('is not held for a way that leads through a defender: bodies stop nobody here, and the run says so', () => {
    const through = [at(5, 5), at(1, 1), at(-1, -6), at(-8, -9), at(-24, -2)];
    const run = runDrill(playableFrom(backcheck('collegeWomen', 3, through)), { chance: unbeaten });
    expect(
      run.findings.some(({ kind, spots }) => kind === 'bodiesTouch' && spots.includes(named('X1'))),
    ).toBe(true);
    expect(sharesOf('collegeWomen', through).neutralZone).toBeGreaterThan(0.3);
  });
});

/** Luck by which every contest is held out. */
const unbeaten: Chance = { uniform: () => 1 - 1e-9, normal: () => 0 };

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
