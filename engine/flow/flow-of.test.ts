import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { DrillPlan } from '../drill/drill.ts';
import { at, named, planOf, playableFrom, skate } from '../run/drill-shorthand.reference.ts';
import { runDrill } from '../run/run-drill.ts';
import type { SpotId } from '../units/ids.ts';
import { isNone } from '../units/none.ts';
import { everybodyGoesWith } from './everybody-goes-with.ts';
import { flowOf, withMissing } from './flow-of.ts';
import type { FlowResult, FlowSetting } from './flow-result.ts';
import { type Busy, planWith, runWith, shotAt } from './flow-shorthand.reference.ts';
import { TICK_S, watchBlock } from './play-block.reference.ts';
import { playBlock } from './play-block.ts';
import type { RepFacts } from './rep-facts.ts';

const setting = (skaters: number, minutes: number, goalies = 2): FlowSetting => ({
  roster: { skaters, goalies },
  minutes,
  beyondLines: 'join',
});

const played = (...of: Parameters<typeof flowOf>): FlowResult => {
  const flow = flowOf(...of);
  if (isNone(flow)) throw new Error(flow.reason);
  return flow;
};

const withGoalie = (plan: DrillPlan, xM: number): DrillPlan => ({
  ...plan,
  spots: {
    ...plan.spots,
    [named('G')]: { ...Object.values(plan.spots)[0]!, role: 'G', kind: 'goalie', atM: at(xM, 0), acts: {} },
  },
});

const ring = (count: number): Record<SpotId, SpotId> =>
  Object.fromEntries(Array.from({ length: count }, (_, i) => [named(`F${i}`), named(`F${(i + 1) % count}`)]));

describe('the identity: with n skaters, k of them going at once for T, each waits T(n/k − 1)', () => {
  const cases = fc.record({
    spots: fc.integer({ min: 1, max: 6 }),
    each: fc.integer({ min: 1, max: 7 }),
    ticks: fc.integer({ min: 240, max: 2400 }),
    isRing: fc.boolean(),
  });

  it('in lines of their own and in a ring, whatever the numbers', () => {
    fc.assert(
      fc.property(cases, ({ spots, each, ticks, isRing }) => {
        const repS = ticks / 120;
        const busy = Array.from({ length: spots }, () => ({ fromS: 0, toS: repS }));
        // Nobody has a way back to skate here, so the drawn places do not matter for a ring either.
        const plan = planWith(busy, { goesTo: isRing ? ring(spots) : {} });
        const onePlace = {
          ...plan,
          spots: Object.fromEntries(
            Object.entries(plan.spots).map(([id, spot]) => [id, { ...spot, atM: at(0, 0) }]),
          ),
        };
        const run = runWith(busy, repS);
        for (const track of run.tracks) {
          track.xM.fill(0);
          track.yM.fill(0);
        }
        const skaters = spots * each;
        const flow = played(onePlace, run, setting(skaters, (repS * (3 * each + 2)) / 60 + 0.001));
        expect(flow.each.restS).toBeCloseTo(repS * (skaters / spots - 1), 6);
        expect(flow.movingCount).toBeLessThanOrEqual(spots + 1e-9);
      }),
    );
  });
});

describe('nothing is lost', () => {
  const busy = fc.array(
    fc.record({
      from: fc.integer({ min: 0, max: 400 }),
      length: fc.integer({ min: 0, max: 800 }),
      waiting: fc.integer({ min: 0, max: 4 }),
      endsOffM: fc.integer({ min: 0, max: 40 }),
    }),
    { minLength: 1, maxLength: 6 },
  );
  const flows = fc.record({
    next: fc.oneof(
      fc.integer({ min: 1, max: 40 }).map(seconds => ({ on: 'every', seconds }) as const),
      fc.constant({ on: 'end' } as const),
    ),
    ends: fc.constantFrom('one' as const, 'both' as const, 'byTurns' as const),
    pauseS: fc.integer({ min: 0, max: 20 }),
    isRing: fc.boolean(),
    beyondLines: fc.constantFrom('join' as const, 'sitOut' as const),
  });

  it('work, waiting and sitting out together are the minutes of everybody who is here', () => {
    fc.assert(
      fc.property(busy, flows, fc.integer({ min: 1, max: 30 }), (spots, flow, skaters) => {
        const said = spots.map(
          (one): Busy => ({
            fromS: one.from / 120,
            toS: (one.from + one.length) / 120,
            waiting: one.waiting,
            endsOffM: one.endsOffM,
          }),
        );
        const plan = planWith(said, {
          next: flow.next,
          ends: flow.ends,
          pauseS: flow.pauseS,
          goesTo: flow.isRing ? ring(said.length) : {},
        });
        const run = runWith(said, 10);
        const result = flowOf(plan, run, { ...setting(skaters, 10), beyondLines: flow.beyondLines });
        if (isNone(result)) throw new Error(result.reason);
        const sum = result.skaters.reduce((all, one) => all + one.workS + one.waitS + one.sitOutS, 0);
        expect(sum).toBeCloseTo(skaters * 600, 4);
        expect(result.skaters).toHaveLength(skaters);
        for (const one of result.skaters) expect(one.waitS).toBeGreaterThanOrEqual(-1e-9);
        const goes = result.skaters.reduce((all, one) => all + one.goCount, 0);
        const empty = result.unfilled.reduce((all, one) => all + one.repCount, 0);
        expect(goes + empty).toBe(result.repCount * said.length);
      }),
    );
  });
});

describe('against a stopwatch: the slow way, tick by tick', () => {
  it('starts the same reps, and everybody goes as often', () => {
    const spots = fc.array(
      fc.record({
        from: fc.integer({ min: 0, max: 16 }),
        length: fc.integer({ min: 0, max: 40 }),
        back: fc.integer({ min: 0, max: 60 }),
        to: fc.nat(),
        count: fc.integer({ min: 0, max: 5 }),
      }),
      { minLength: 1, maxLength: 5 },
    );
    fc.assert(
      fc.property(spots, fc.integer({ min: 1, max: 120 }), (said, afterTicks) => {
        const rep: RepFacts = {
          durationS: 56 * TICK_S,
          shots: [],
          takenPuckCount: 0,
          spots: said.map((one, i) => ({
            spot: named(`F${i}`),
            fromS: one.from * TICK_S,
            toS: (one.from + one.length) * TICK_S,
            freeS: (one.from + one.length + 1) * TICK_S,
            backS: one.back * TICK_S,
            goesTo: named(`F${one.to % said.length}`),
            movingS: 0,
            distanceM: 0,
            highSpeedS: 0,
            puckS: 0,
            receiveCount: 0,
            shotCount: 0,
          })),
        };
        const counts = said.map(one => one.count);
        const fast = playBlock(rep, counts, { afterS: afterTicks * TICK_S, ends: 'one' }, 300);
        const slow = watchBlock(rep, counts, afterTicks * TICK_S, 300);
        expect(fast.startsS).toEqual(slow.startsS);
        expect(fast.ways.map(way => way.goCount).sort((a, b) => a - b)).toEqual(slow.goes);
        expect(fast.ways.map(way => way.workS).sort((a, b) => a - b)).toEqual(slow.workS);
      }),
    );
  });
});

describe('a block by hand', () => {
  // 20 skaters in four lines of five, a go of 7 s every 11.5 s for ten minutes, both ends by turns, one shot a go.
  // By hand: the last go that ends in 600 s starts at 51 · 11.5 = 586.5, so 52 goes of four: 208 of 20 skaters, 10.4 each;
  // 26 shots at each net, 2 · 11.5 s apart; 52 · 4 · 7 s of motion in 600 s: 2.43 at once.
  const busy = [0, 1, 2, 3].map(() => ({ fromS: 0, toS: 7, waiting: 4 }));
  const plan = planWith(busy, { next: { on: 'every', seconds: 11.5 }, ends: 'byTurns' });
  const flow = played(plan, runWith(busy, 7, [shotAt(6)]), setting(20, 10));

  it('has the goes, the shots and the share moving that a pencil gives', () => {
    expect(flow.repCount).toBe(52);
    expect(flow.each.goCount).toBeCloseTo(10.4, 9);
    expect(flow.goalies.map(goalie => goalie.shotCount)).toEqual([26, 26]);
    for (const goalie of flow.goalies) expect(goalie.betweenS).toBeCloseTo(23, 9);
    expect(flow.movingCount).toBeCloseTo((52 * 4 * 7) / 600, 2);
    expect(flow.everyS).toBeCloseTo(11.5, 9);
    expect(flow.sitsOut).toEqual([]);
    expect(flow.unfilled).toEqual([]);
  });

  it('says that the lines stand too long: 5 lines of 2 or 3 at each end, a turn of each in 23 s', () => {
    // 20 in eight lines: four of three and four of two. In a line of three a skater rests 3 · 23 − 7 = 62 s, of two 39 s.
    const rests = [...new Set(flow.lines.map(line => Math.round(line.restS ?? 0)))].sort((a, b) => a - b);
    expect(rests).toEqual([39, 62]);
    const [found] = flow.findings.filter(finding => finding.kind === 'lineStandsTooLong');
    // 7 s of work may rest 70 s (1 : 10), so it is the share moving that is said: 2.4 of 20 against 43 %.
    expect(found).toMatchObject({ unit: 'skaters', threshold: 8.6 });
  });

  it('with two missing two lines are one shorter, and nobody is missed', () => {
    const fewer = withMissing(plan, runWith(busy, 7, [shotAt(6)]), setting(20, 10), 2);
    if (isNone(fewer)) throw new Error(fewer.reason);
    expect(fewer.each.goCount).toBeCloseTo(208 / 18, 9);
    expect(fewer.lines.map(line => line.skaterCount)).toEqual([3, 3, 2, 2, 2, 2, 2, 2]);
    expect(fewer.unfilled).toEqual([]);
  });
});

describe('who has no place', () => {
  const busy = [0, 1, 2].map(() => ({ fromS: 0, toS: 5, waiting: 1 }));
  const run = runWith(busy, 5);

  it('with more than the drawn lines hold somebody sits out, when they are not to join', () => {
    const flow = played(planWith(busy), run, { ...setting(8, 5), beyondLines: 'sitOut' });
    expect(flow.sitsOut).toEqual([
      { spot: null, number: 1 },
      { spot: null, number: 2 },
    ]);
  });

  it('with fewer than the spots the last spot stands empty and is named', () => {
    const flow = played(planWith(busy), run, setting(2, 5));
    expect(flow.unfilled.map(one => one.spot)).toEqual(['F2']);
    expect(flow.findings[0]).toMatchObject({ kind: 'tooFewSkaters', value: 2, threshold: 3 });
  });

  it('in a block too short for the line those at its end never go', () => {
    const flow = played(
      planWith([{ fromS: 0, toS: 5 }]),
      runWith([{ fromS: 0, toS: 5 }], 5),
      setting(8, 0.5),
    );
    expect(flow.sitsOut).toEqual([
      { spot: 'F0', number: 7 },
      { spot: 'F0', number: 8 },
    ]);
  });

  it('says with how many nobody sits out and no spot stands empty', () => {
    const plan = planWith(busy);
    const sitting = { ...setting(8, 5), beyondLines: 'sitOut' } as const;
    expect(everybodyGoesWith(plan, run, sitting)).toEqual({ least: 3, most: 6 });
    // Five minutes of 5 s: 60 goes of three, so a hundred would all get one.
    expect(everybodyGoesWith(plan, run, setting(8, 5))).toEqual({ least: 3, most: null });
    // Half a minute: six goes of three.
    expect(everybodyGoesWith(plan, run, setting(8, 0.5))).toEqual({ least: 3, most: 18 });
  });

  it('a line that everybody leaves and nobody joins runs dry', () => {
    const flow = played(planWith(busy, { goesTo: { [named('F0')]: named('F1') } }), run, setting(6, 5));
    expect(flow.unfilled[0]!.spot).toBe('F0');
  });
});

describe('the beat', () => {
  const one: readonly Busy[] = [{ fromS: 0, toS: 6, endsOffM: 30 }];

  it('cannot be kept by one who has 30 m to come back: 6 s and 10 s at 3 m/s', () => {
    const plan = planWith(one, { next: { on: 'every', seconds: 4 } });
    const flow = played(plan, runWith(one, 6), setting(1, 5));
    expect(flow.everyS).toBeCloseTo(16, 6);
    expect(flow.findings.find(finding => finding.kind === 'tooFewSkaters')).toMatchObject({
      value: 1,
      threshold: 4,
    });
    expect(played(plan, runWith(one, 6), setting(4, 5)).lateRepCount).toBe(0);
    expect(played(plan, runWith(one, 6), setting(3, 5)).lateRepCount).toBeGreaterThan(0);
  });

  it('goes on when the puck is over the line, else when the last skater is, else at the end', () => {
    const plan = planWith(one, { next: { on: 'clear', line: 'centreLine' } });
    const crossing = { timeS: 2, atM: at(0, 0), line: 'centreLine' } as const;
    const puck = runWith(one, 6, [{ ...crossing, kind: 'puckCrosses' }]);
    const skater = runWith(one, 6, [{ ...crossing, timeS: 3, kind: 'spotCrosses', spot: named('F0') }]);
    expect(played(plan, puck, setting(12, 5)).everyS).toBeCloseTo(2, 6);
    expect(played(plan, skater, setting(12, 5)).everyS).toBeCloseTo(3, 6);
    expect(played(plan, runWith(one, 6), setting(12, 5))).toMatchObject({ neverClears: true });
  });

  it('a goalie who is shot at twice in three seconds has no time', () => {
    const empty = planWith(one, { pauseS: 10 });
    const plan = withGoalie(empty, 26);
    const twice = runWith(one, 6, [shotAt(2), shotAt(4.5)]);
    const flow = played(plan, twice, setting(6, 5));
    expect(flow.findings.find(finding => finding.kind === 'goalieHasNoTime')).toMatchObject({
      value: 2.5,
      threshold: 4,
      timeS: 4.5,
    });
    const apart = played(plan, runWith(one, 6, [shotAt(2)]), setting(6, 5));
    expect(apart.findings.some(finding => finding.kind === 'goalieHasNoTime')).toBe(false);
    // Goalies of the roster alone are in no net: an empty one, or one at the other end, has nobody who could be late.
    for (const other of [empty, withGoalie(empty, -26)]) {
      const { findings, nets } = played(other, twice, setting(6, 5));
      expect(nets[0]!.leastBetweenS).toBeCloseTo(2.5, 9);
      expect(findings.some(finding => finding.kind === 'goalieHasNoTime')).toBe(false);
    }
  });

  it('two goalies at one net take turns, rep by rep', () => {
    const flow = played(planWith(one, { pauseS: 4 }), runWith(one, 6, [shotAt(2)]), setting(6, 5));
    expect(flow.goalies.map(goalie => goalie.shotCount)).toEqual([15, 15]);
    expect(flow.goalies[0]!.betweenS).toBeCloseTo(20, 6);
  });
});

describe('a rep that was run', () => {
  const plan = planOf([
    {
      role: 'F1',
      atM: at(-20, 8),
      puck: true,
      acts: [skate([at(0, 6)]), { kind: 'pass', toSpot: named('F2'), way: 'direct', speedMps: 14 }],
    },
    {
      role: 'F2',
      atM: at(-6, -6),
      acts: [skate([at(8, -4)]), { kind: 'shoot', atEnd: 'plusX', speedMps: 22 }],
    },
  ]);
  const run = runDrill(playableFrom(plan));

  it('gives distance, touches and shots as the tracks and events have them, times the goes', () => {
    const flow = played(plan, run, setting(2, 10));
    const [first, second] = flow.skaters;
    expect(first!.distanceM).toBeCloseTo(first!.goCount * run.tracks[0]!.distanceM, 6);
    expect(second!.shotCount).toBe(
      second!.goCount * run.events.filter(event => event.kind === 'shot').length,
    );
    expect(second!.receiveCount).toBe(second!.goCount);
    expect(first!.puckS).toBeGreaterThan(0);
    expect(flow.goalies[0]!.shotCount).toBe(Math.ceil(flow.repCount / 2));
  });

  it('says nothing of a drill without skaters, a rep without anything, or nobody here', () => {
    expect(flowOf(planOf([]), run, setting(4, 10))).toMatchObject({ reason: 'noSkaterDrawn' });
    expect(flowOf(plan, run, setting(0, 10))).toMatchObject({ reason: 'nobodyHere' });
    expect(flowOf(plan, { ...run, durationS: 0 }, setting(4, 10))).toMatchObject({
      reason: 'nothingHappens',
    });
    expect(flowOf(plan, run, setting(4, 0.01))).toMatchObject({ reason: 'repLongerThanBlock' });
  });

  it('says that a line stands in the way of a skater', () => {
    const behind = {
      ...plan.spots[named('F1')]!,
      role: 'X',
      rank: 9,
      atM: at(-8, 7),
      facingRad: 0,
      waitingCount: 2,
      acts: {},
    };
    const crowded = { ...plan, spots: { ...plan.spots, X: behind } };
    const flow = played(crowded, runDrill(playableFrom(crowded)), setting(5, 10));
    const [found] = flow.findings.filter(finding => finding.kind === 'lineInTheWay');
    expect(found?.spots).toEqual(['X', 'F1']);
    expect(found!.value).toBeLessThan(1.5);
  });
});
