import type { DrillPlan, Flow } from '../drill/drill.ts';
import { USUAL_FLOW } from '../drill/usual-flow.ts';
import type { Run } from '../run/run-result.ts';
import { type None, noneBecause } from '../units/none.ts';
import { findingsOfFlow } from './findings-of-flow.ts';
import type { FlowResult, FlowSetting, LineFlow, SkaterFlow } from './flow-result.ts';
import { gamesInBlock } from './games-in-block.ts';
import { goaliesOf, netsOf } from './goalies-of.ts';
import { meanOf } from './mean-of.ts';
import { type Block, playBlock } from './play-block.ts';
import { clearsAtS, type RepFacts, repFactsOf } from './rep-facts.ts';
import { lineCountsOf } from './waiting-lines.ts';

export type NoFlow = 'noSkaterDrawn' | 'nobodyHere' | 'nothingHappens' | 'repLongerThanBlock';

/**
 * The whole block of a drill, rep after rep, from one computed rep: who goes when, who waits how long, who shoots at whom.
 * Seconds and metres; minutes > 0, roster in whole numbers ≥ 0. Every rep is taken to go as the one that was run. A skater
 * who is done skates back to the line (own, or as the flow says) and stands there until it is the turn. Work is from the first motion
 * of a rep to the last; waiting is all else, so that work + waiting is the block for everybody who goes.
 * Those whom small games have (beyond the drawn lines) stand in no line; while they play they count as moving.
 * None when the drill has no skaters, nobody is here, nothing happens in the rep, or not one rep fits in the minutes.
 * Ours: plain discrete events; checked against wait = T(n/k − 1).
 */
export const flowOf = (plan: DrillPlan, run: Run, setting: FlowSetting): FlowResult | None<NoFlow> => {
  const flow = plan.flow ?? USUAL_FLOW;
  const rep = repFactsOf(plan, run);
  if (rep.spots.length === 0) return noneBecause('noSkaterDrawn');
  if (setting.roster.skaters < 1) return noneBecause('nobodyHere');
  const { afterS, neverClears } = beatOf(flow, run);
  if (!(afterS > 0)) return noneBecause('nothingHappens');
  const lengthS = setting.minutes * 60;
  if (rep.durationS > lengthS) return noneBecause('repLongerThanBlock');
  const games = gamesInBlock(plan, setting);
  const inLines = setting.roster.skaters - games.skaterCount;
  const counts = lineCountsOf(plan, flow.ends === 'one' ? 1 : 2, inLines, setting.beyondLines);
  const block = playBlock(rep, counts, { afterS, ends: flow.ends }, lengthS);
  const skaters = skatersOf(rep, block, inLines, lengthS);
  const nets = netsOf(block, setting.roster.goalies);
  const movingCount = block.movingSumS / lengthS + games.playingCount;
  const result = {
    setting,
    repCount: block.repCount,
    repS: rep.durationS,
    everyS: everyOf(block, afterS),
    lateRepCount: block.lateRepCount,
    neverClears,
    lines: linesOf(rep, block, counts),
    skaters,
    each: meanOf(skaters, block),
    goalies: goaliesOf(block, setting.roster.goalies),
    nets,
    inGamesCount: games.skaterCount,
    movingCount,
    movingRatio: movingCount / setting.roster.skaters,
    unfilled: unfilledOf(rep, block),
    sitsOut: skaters.flatMap(one => (one.goCount > 0 ? [] : [{ spot: one.spot, number: one.number }])),
  };
  return { ...result, findings: findingsOfFlow(plan, run, rep, result) };
};

/** The same block with so many skaters fewer, a whole number ≥ 0: none where that leaves nobody. */
export const withMissing = (
  plan: DrillPlan,
  run: Run,
  setting: FlowSetting,
  missing: number,
): FlowResult | None<NoFlow> =>
  flowOf(plan, run, {
    ...setting,
    roster: { ...setting.roster, skaters: Math.max(0, setting.roster.skaters - missing) },
  });

const beatOf = (flow: Flow, run: Run): { afterS: number; neverClears: boolean } => {
  const atEndS = run.durationS + flow.pauseS;
  switch (flow.next.on) {
    case 'every':
      return { afterS: flow.next.seconds, neverClears: false };
    case 'end':
      return { afterS: run.durationS > 0 ? atEndS : 0, neverClears: false };
    case 'clear': {
      const clearS = clearsAtS(run, flow.next.line);
      return { afterS: clearS ?? run.durationS, neverClears: clearS === null };
    }
  }
};

const everyOf = ({ startsS }: Block, afterS: number): number =>
  startsS.length < 2 ? afterS : (startsS.at(-1)! - startsS[0]!) / (startsS.length - 1);

const linesOf = (rep: RepFacts, block: Block, counts: readonly number[]): readonly LineFlow[] =>
  block.queues.map((queue, line) => {
    const facts = rep.spots[line % rep.spots.length]!;
    return {
      spot: facts.spot,
      end: line < rep.spots.length ? 0 : 1,
      skaterCount: counts[line]!,
      goCount: queue.goCount,
      standsLongestS: queue.standsLongestS,
      standsMeanS: queue.goCount === 0 ? 0 : queue.standsSumS / queue.goCount,
      workS: facts.toS - facts.fromS,
      restS: queue.restCount === 0 ? null : queue.restSumS / queue.restCount,
      lateCount: queue.lateCount,
    };
  });

const skatersOf = (rep: RepFacts, block: Block, inLines: number, lengthS: number): readonly SkaterFlow[] => {
  const placed = block.ways.map((way): SkaterFlow => {
    const sum = (of: (facts: RepFacts['spots'][number]) => number): number =>
      rep.spots.reduce((total, facts, index) => total + way.goes[index]! * of(facts), 0);
    return {
      spot: rep.spots[way.line % rep.spots.length]!.spot,
      end: way.line < rep.spots.length ? 0 : 1,
      number: way.number,
      goCount: way.goCount,
      workS: way.workS,
      waitS: way.waitS,
      sitOutS: way.goCount > 0 ? 0 : lengthS,
      distanceM: sum(facts => facts.distanceM),
      highSpeedS: sum(facts => facts.highSpeedS),
      puckS: sum(facts => facts.puckS),
      receiveCount: sum(facts => facts.receiveCount),
      shotCount: sum(facts => facts.shotCount),
    };
  });
  const without = Array.from({ length: inLines - placed.length }, (_, index) => ({
    ...NOTHING,
    number: index + 1,
    sitOutS: lengthS,
  }));
  return [...placed, ...without];
};

const NOTHING: SkaterFlow = {
  spot: null,
  end: 0,
  number: 1,
  goCount: 0,
  workS: 0,
  waitS: 0,
  sitOutS: 0,
  distanceM: 0,
  highSpeedS: 0,
  puckS: 0,
  receiveCount: 0,
  shotCount: 0,
};

/** By spot, the reps in which it stood empty, both ends together. */
const unfilledOf = (rep: RepFacts, block: Block): FlowResult['unfilled'] =>
  rep.spots.flatMap((facts, index) => {
    let repCount = 0;
    for (let line = index; line < block.queues.length; line += rep.spots.length)
      repCount += block.queues[line]!.emptyCount;
    return repCount === 0 ? [] : [{ spot: facts.spot, repCount }];
  });
