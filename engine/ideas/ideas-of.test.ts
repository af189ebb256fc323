import { describe, expect, it } from 'vitest';
import type { FreezeScene, FreezeSkater } from '../drill/plan-from-freeze.ts';
import { type Playable, playableOf } from '../drill/playable.ts';
import type { Standard } from '../habit/standard.ts';
import { manyRun } from '../many/many-run.ts';
import { outcomeRate } from '../many/tally-rates.ts';
import { rinkOf } from '../rink/rink-of.ts';
import { at } from '../run/drill-shorthand.reference.ts';
import { levelOf } from '../skater/level.ts';
import { isNone } from '../units/none.ts';
import { drawIdea, IDEA_SHAPES } from './idea-plans.ts';
import { ideasOf, ranked } from './ideas-of.ts';
import { SIMPLER_RATIO, WANTED_RATIO } from './ideas-rows.ts';
import { type Counted, type Idea, playIdea } from './play-idea.ts';
import { problemOf } from './problem-of.ts';

const RINK = rinkOf({ preset: '200x85ft' });
const SETTING = {
  rink: RINK,
  level: levelOf('collegeWomen'),
  seed: 11,
  // Coarser than on the screen, for the clock.
  looks: { scanCount: 7, scanReps: 20, repCount: 60, verifyReps: 60, countReps: 120 },
  flow: { roster: { skaters: 20, goalies: 2 }, minutes: 10, beyondLines: 'join' },
} as const;

const one = (id: string, side: 'us' | 'them', xM: number, yM: number): FreezeSkater => ({
  id,
  side,
  kind: 'skater',
  role: id,
  atM: at(xM, yM),
});

/** Theirs come over our line; our first forward is late. An invented picture. */
const RUSH: FreezeScene = {
  skaters: [
    one('X1', 'them', -8, 7),
    one('X2', 'them', -5, -3),
    one('D1', 'us', -11, 5),
    one('D2', 'us', -13, -2),
    one('F1', 'us', 1, 3),
    one('F2', 'us', 5, -6),
    { ...one('G', 'us', -25.5, 0), kind: 'goalie' },
  ],
  puck: { atM: at(-8.5, 6.5), carrier: 'X1' },
};
const LINE = { at: 'puckCrosses', line: 'blueLineMinusX' } as const;

/** Of the difference of two shares about 0.6, of 60 and of 400 reps. */
const THREE_SDS = 3 * Math.sqrt(0.24 / 60 + 0.24 / 400);

const rateOf = ({ counted }: { readonly counted: Counted }): number => counted.rate?.rateRatio ?? 0;

const ids = () => {
  let next = 0;
  return () => `id-${next++}`;
};
const problemFor = (standard: Standard, scene = RUSH, attacks: 'plusX' | 'minusX' = 'plusX') => {
  const problem = problemOf(scene, attacks, standard, RINK);
  if (isNone(problem)) throw new Error(problem.reason);
  return problem;
};
const ideasFor = (standard: Standard, scene = RUSH, attacks: 'plusX' | 'minusX' = 'plusX'): Idea[] => {
  return [...ideasOf(problemFor(standard, scene, attacks), SETTING, ids())];
};

const STANDARDS: readonly (readonly [string, Standard])[] = [
  [
    'first forward goal-side',
    { kind: 'goalSide', who: 'firstForwardBack', whom: 'puck', withinM: 1, when: LINE },
  ],
  [
    'a defender within three metres',
    { kind: 'within', who: 'nearestDefender', whom: 'carrier', withinM: 3, when: LINE },
  ],
  [
    'the nearest hunts',
    { kind: 'within', who: 'anyOfUs', whom: 'puck', withinM: 4, when: { at: 'weLoseThePuck' } },
  ],
  ['two before the net', { kind: 'numbers', zone: 'house', atLeastCount: 2, when: { at: 'theyShoot' } }],
];

describe('ideas from a picture and a habit', () => {
  it('three drills, each computed, each with a simpler and a harder one', () => {
    const ideas = ideasFor(STANDARDS[0]![1]);
    expect(ideas.map(idea => idea.shape)).toEqual(['pair', 'started', 'picture']);
    for (const idea of ideas) {
      expect(playableOf(idea.plan, RINK, SETTING.level).kind).toBe('playable');
      expect(idea.terms.reduce((sum, term) => sum + term.valueM, 0)).toBeCloseTo(idea.scoreM, 9);
      expect(idea.tuned.kind).toBe('reached');
      expect(idea.counted.trialCount).toBeGreaterThan(0);
      expect(Math.abs(rateOf(idea) - WANTED_RATIO.value)).toBeLessThan(0.2);
      // A pass that is not brought under control takes the easiest away from what a pass starts.
      if (idea.simpler.kind === 'none') expect(idea.simpler.highestRatio).toBeLessThan(SIMPLER_RATIO.value);
      else expect(rateOf(idea.simpler)).toBeGreaterThan(rateOf(idea));
      expect(idea.harder.kind === 'version' && rateOf(idea.harder)).toBeLessThan(rateOf(idea));
      expect(idea.likeness?.missingCount).toBe(
        RUSH.skaters.length - Object.values(idea.plan.spots).filter(spot => spot.kind !== 'coach').length,
      );
      expect(idea.repsPerMinute).toBeGreaterThan(0);
    }
    // Whoever was about it is there only as far as nobody skates into her.
    for (const idea of ideas)
      for (const { kind, spots } of idea.lookFindings)
        if (kind === 'bodiesTouch' || kind === 'pathsCrossTooFast')
          expect(spots.filter(spot => idea.bystanders.some(one => one.spot === spot))).toEqual([]);
    // Fewer parts is what a pair is for; more of the picture is what the picture is for.
    const [pair, started, picture] = ideas as [Idea, Idea, Idea];
    expect(pair.partCount).toBeLessThan(started.partCount);
    expect(picture.keptRoles.length).toBeGreaterThan(pair.keptRoles.length);
    expect(ranked(ideas)[0]!.scoreM).toBe(Math.min(...ideas.map(idea => idea.scoreM)));
  });

  it('one in which the habit is never held comes after all others, however like the picture it is', () => {
    const [held, never, touching] = [
      { counted: { rate: { rateRatio: 0.6 } }, scoreM: 20, lookFindings: [] },
      { counted: { rate: null }, scoreM: -80, lookFindings: [] },
      { counted: { rate: { rateRatio: 0.6 } }, scoreM: -40, lookFindings: [{ kind: 'bodiesTouch' }] },
    ] as unknown as [Idea, Idea, Idea];
    expect(ranked([never, held])).toEqual([held, never]);
    // Nor is one offered first in which two run into each other, however well it does else.
    expect(ranked([touching, never, held])).toEqual([held, touching, never]);
  });

  it('says of one whose reps never come to the question that it is not asked', () => {
    // Theirs go for our net: their own goal line is never crossed.
    const when = { at: 'puckCrosses', line: 'goalLinePlusX' } as const;
    const problem = problemFor({ kind: 'goalSide', who: 'firstForwardBack', whom: 'puck', withinM: 1, when });
    const looks = { scanCount: 2, scanReps: 5, repCount: 10, verifyReps: 10, countReps: 10 };
    const idea = playIdea(problem, drawIdea(problem, 'pair', RINK, SETTING.level, ids()), {
      ...SETTING,
      looks,
    })!;
    expect(idea.counted).toEqual({ repCount: 10, trialCount: 0, rate: null });
  });

  it('the rate it was set to is met by reps of other people and luck', () => {
    const problem = problemFor(STANDARDS[1]![1]);
    const idea = playIdea(problem, drawIdea(problem, 'pair', RINK, SETTING.level, ids()), SETTING)!;
    const playable = playableOf(idea.plan, RINK, SETTING.level) as Playable;
    const tally = manyRun(playable, {
      seed: 12,
      repCount: 400,
      outcomes: [idea.outcome],
      onlyOutcomes: true,
    });
    expect(Math.abs(tally.outcomes[0]!.yes.count / 400 - rateOf(idea))).toBeLessThan(THREE_SDS);
  });

  it('counts the idea and its versions as any drill is counted: the same reps, of those that come to the question', () => {
    const problem = problemFor(STANDARDS[0]![1]);
    const idea = playIdea(problem, drawIdea(problem, 'started', RINK, SETTING.level, ids()), SETTING)!;
    const asked: number[] = [];
    for (const made of [idea, idea.simpler, idea.harder]) {
      if ('kind' in made && made.kind === 'none') continue;
      const playable = playableOf(made.plan, RINK, SETTING.level) as Playable;
      const { seed } = SETTING;
      const { repCount, trialCount, rate } = made.counted;
      const tally = manyRun(playable, { seed, repCount, outcomes: [idea.outcome], onlyOutcomes: true });
      expect(outcomeRate(tally.outcomes[0]!, repCount)).toEqual(rate);
      asked.push(trialCount / repCount);
    }
    // A harder version is a harder problem, not a start pass that fails more often: eight of ten that come at best still come.
    expect(Math.min(...asked)).toBeGreaterThan(0.7 * Math.max(...asked));
  });

  it.each(STANDARDS)('%s: every shape can be played, from either end the same', (_, standard) => {
    const half = {
      ...RUSH,
      skaters: RUSH.skaters.map(skater => ({ ...skater, atM: at(-skater.atM.xM, -skater.atM.yM) })),
      puck: { ...RUSH.puck!, atM: at(8.5, -6.5) },
    };
    for (const shape of IDEA_SHAPES) {
      const here = drawIdea(problemFor(standard), shape, RINK, SETTING.level, ids());
      const there = drawIdea(problemFor(standard, half, 'minusX'), shape, RINK, SETTING.level, ids());
      expect(playableOf(here.plan, RINK, SETTING.level).kind).toBe('playable');
      expect(there.plan).toEqual(here.plan);
      // Wherever along the sheet the free start is moved: everybody has room for skater and stick.
      const free = here.plan.spots[here.free.spot]!;
      for (const [id, spot] of Object.entries(here.plan.spots))
        if (id !== here.free.spot && spot.kind === 'skater' && here.outcome.kind === 'standardHeld')
          expect(Math.abs(spot.atM.yM - free.atM.yM), `${shape} ${spot.role}`).toBeGreaterThan(2.4);
    }
  });

  it('a hunt is judged by the puck that is won back', () => {
    const problem = problemFor(STANDARDS[2]![1]);
    const idea = playIdea(problem, drawIdea(problem, 'pair', RINK, SETTING.level, ids()), SETTING)!;
    expect(idea.outcome).toEqual({ kind: 'puckRegained', side: 'us', beforeLine: 'goalLineMinusX' });
    expect(rateOf(idea)).toBeGreaterThan(0.2);
    // Nobody wins back a puck from a rink's length away.
    expect(Math.min(...idea.tuned.curve.map(point => point.rate.rateRatio))).toBeLessThan(0.1);
  });

  it('is about whom the freeze names, of several who may be meant', () => {
    const [, standard] = STANDARDS[0]!;
    const nearest = problemFor(standard).workers[0]!.id;
    const other = RUSH.skaters.find(
      ({ id, side, kind }) => side === 'us' && kind === 'skater' && id !== nearest,
    )!;
    const named = problemOf(RUSH, 'plusX', standard, RINK, other.id);
    expect(isNone(named) ? [] : named.workers.map(({ id }) => id)).toEqual([other.id]);
    const nobody = problemOf(RUSH, 'plusX', standard, RINK, 'puck');
    expect(isNone(nobody) ? [] : nobody.workers.map(({ id }) => id)).toEqual([nearest]);
  });

  it('says why there is no problem to be had', () => {
    const standard = STANDARDS[0]![1];
    expect(problemOf({ skaters: RUSH.skaters }, 'plusX', standard, RINK)).toMatchObject({ reason: 'noPuck' });
    const theirs = { ...RUSH, skaters: RUSH.skaters.filter(skater => skater.side === 'them') };
    expect(problemOf(theirs, 'plusX', standard, RINK)).toMatchObject({ reason: 'nobodyOfTheStandard' });
  });
});
