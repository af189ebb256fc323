import type { Playable } from '../drill/playable.ts';
import type { PlayableAct } from '../drill/playable-parts.ts';
import { LINE_IDS } from '../rink/lines.ts';
import type { Run } from '../run/run-result.ts';
import type { SpotId } from '../units/ids.ts';
import type { IcePoint } from '../units/points.ts';
import { judgeRep } from './judge-rep.ts';
import { findPuckOver, isLevel } from './level-with-puck.ts';
import { LEVEL_WITHIN_M } from './many-rows.ts';
import type { ContestTally, LineTally, ManyTally, OutcomeTally, PassTally, ShotTally } from './many-tally.ts';
import type { Outcome } from './outcome.ts';
import { passesIn } from './passes-in.ts';
import {
  FEWER_SAMPLES,
  MOST_SAMPLES,
  thousandths,
  type WhereSample,
  type WhereWhen,
  whereWhenOf,
} from './where-when.ts';

/** A tally that is being written: places as lists, counts that grow. */
type Open<Tally> = {
  -readonly [Key in keyof Tally]: Tally[Key] extends WhereWhen
    ? WhereSample[]
    : Key extends CountsKey
      ? Record<SpotId, number>
      : Tally[Key];
};

type CountsKey = 'cutOffBy' | 'levelCount';

/** What is counted of a part of a many-run while it goes on. */
export interface TallyBook {
  readonly playable: Playable;
  repCount: number;
  sumMs: number;
  sumMsMs2: number;
  readonly passes: readonly Open<PassTally>[];
  readonly contests: readonly Open<ContestTally>[];
  readonly shots: readonly Open<ShotTally>[];
  readonly lines: readonly Open<LineTally>[];
  readonly outcomes: readonly Open<OutcomeTally>[];
}

/** An empty book for this drill. With `onlyOutcomes` nothing else is counted. */
export const tallyBookOf = (
  playable: Playable,
  outcomes: readonly Outcome[],
  onlyOutcomes: boolean,
): TallyBook => {
  const acts = onlyOutcomes
    ? []
    : playable.spots.flatMap(spot => spot.acts.map(act => ({ spot: spot.id, act })));
  return {
    playable,
    repCount: 0,
    sumMs: 0,
    sumMsMs2: 0,
    passes: acts.flatMap(({ spot, act }) => openPass(spot, act)),
    contests: acts.flatMap(({ spot, act }) => openContest(spot, act)),
    shots: acts.flatMap(({ spot, act }) =>
      act.kind === 'shoot' ? [{ spot, act: act.id, taken: [], goal: [], save: [], wide: [] }] : [],
    ),
    lines: onlyOutcomes ? [] : LINE_IDS.map(line => ({ line, crossed: [], levelCount: {} })),
    outcomes: outcomes.map(outcome => ({ outcome, unaskedCount: 0, yes: [], other: [] })),
  };
};

const openPass = (spot: SpotId, act: PlayableAct): Open<PassTally>[] =>
  act.kind === 'pass'
    ? [
        {
          spot,
          act: act.id,
          to: act.toSpot,
          madeCount: 0,
          cutOffBy: {},
          received: [],
          cutOff: [],
          missed: [],
        },
      ]
    : [];

const openContest = (spot: SpotId, act: PlayableAct): Open<ContestTally>[] =>
  act.kind === 'chase' || act.kind === 'steal'
    ? [{ spot, act: act.id, whom: act.whom, kind: act.kind, startedCount: 0, won: [], loosened: [] }]
    : [];

/** Counts one rep. `order` is its place in the order in which samples are kept. */
export const addRep = (book: TallyBook, run: Run, order: number, rep: number): void => {
  const sampleAt = (atM: IcePoint, timeS: number): WhereSample => [
    order,
    rep,
    thousandths(atM.xM),
    thousandths(atM.yM),
    thousandths(timeS),
  ];
  const durationMs = thousandths(run.durationS);
  book.repCount++;
  book.sumMs += durationMs;
  book.sumMsMs2 += durationMs * durationMs;
  for (const counted of book.outcomes) {
    const judged = judgeRep(counted.outcome, run, book.playable);
    if (judged.verdict === 'unasked') counted.unaskedCount++;
    if (judged.atM !== undefined) counted[judged.verdict].push(sampleAt(judged.atM, judged.timeS));
  }
  if (book.lines.length === 0) return;
  addPasses(book, run, sampleAt);
  addContests(book, run, sampleAt);
  addShots(book, run, sampleAt);
  addLines(book, run, sampleAt);
};

type SampleAt = (atM: IcePoint, timeS: number) => WhereSample;

const addPasses = (book: TallyBook, run: Run, sampleAt: SampleAt): void => {
  for (const pass of passesIn(run)) {
    const counted = book.passes.find(one => one.spot === pass.spot && one.act === pass.act);
    if (!counted) throw new Error(`a pass ${pass.act} of ${pass.spot} that the drill does not have`);
    counted.madeCount++;
    if (pass.by !== undefined) counted.cutOffBy[pass.by] = (counted.cutOffBy[pass.by] ?? 0) + 1;
    if (pass.atM && pass.endS !== undefined) counted[pass.end].push(sampleAt(pass.atM, pass.endS));
  }
};

const addContests = (book: TallyBook, run: Run, sampleAt: SampleAt): void => {
  const under = new Map<SpotId, Open<ContestTally> | undefined>();
  for (const event of run.events) {
    const sample = sampleAt(event.atM, event.timeS);
    if (event.kind === 'actStarts') {
      const started = book.contests.find(one => one.spot === event.spot && one.act === event.act);
      under.set(event.spot, started);
      if (started) started.startedCount++;
    } else if (event.kind === 'caught') {
      const chase = under.get(event.by);
      if (chase?.kind === 'chase') chase.won.push(sample);
    } else if (event.kind === 'steal') {
      const steal = under.get(event.spot);
      if (steal?.kind === 'steal') steal.won.push(sample);
    } else if (event.kind === 'loose' && event.by !== undefined) {
      under.get(event.by)?.loosened.push(sample);
    }
  }
};

const addShots = (book: TallyBook, run: Run, sampleAt: SampleAt): void => {
  const lastOf = new Map<number, Open<ShotTally> | undefined>();
  for (const event of run.events) {
    const sample = sampleAt(event.atM, event.timeS);
    if (event.kind === 'shot') {
      const shot = book.shots.find(one => one.spot === event.spot && one.act === event.act);
      lastOf.set(event.puck, shot);
      shot?.taken.push(sample);
    } else if (event.kind === 'goal' || event.kind === 'save' || event.kind === 'wide') {
      lastOf.get(event.puck)?.[event.kind].push(sample);
    }
  }
};

const addLines = (book: TallyBook, run: Run, sampleAt: SampleAt): void => {
  for (const counted of book.lines) {
    const over = findPuckOver(run, counted.line);
    if (!over) continue;
    counted.crossed.push(sampleAt(over.event.atM, over.event.timeS));
    for (const track of run.tracks) {
      if (!isLevel(track, over, over.sample, LEVEL_WITHIN_M.value)) continue;
      counted.levelCount[track.spot] = (counted.levelCount[track.spot] ?? 0) + 1;
    }
  }
};

/** The book closed: sums and samples in an order that does not depend on how it was filled. */
export const tallyOf = (book: TallyBook, seed: number): ManyTally => {
  const whole = (samples: readonly WhereSample[], most = FEWER_SAMPLES): WhereWhen =>
    whereWhenOf(samples, most);
  const sorted = (counts: Readonly<Record<SpotId, number>>): Readonly<Record<SpotId, number>> =>
    Object.fromEntries(Object.entries(counts).sort(([a], [b]) => (a < b ? -1 : 1)));
  return {
    seed,
    repCount: book.repCount,
    sumMs: book.sumMs,
    sumMsMs2: book.sumMsMs2,
    passes: book.passes.map(one => ({
      ...one,
      cutOffBy: sorted(one.cutOffBy),
      received: whole(one.received),
      cutOff: whole(one.cutOff),
      missed: whole(one.missed),
    })),
    contests: book.contests.map(one => ({ ...one, won: whole(one.won), loosened: whole(one.loosened) })),
    shots: book.shots.map(one => ({
      ...one,
      taken: whole(one.taken),
      goal: whole(one.goal),
      save: whole(one.save),
      wide: whole(one.wide),
    })),
    lines: book.lines.map(one => ({
      ...one,
      crossed: whole(one.crossed),
      levelCount: sorted(one.levelCount),
    })),
    outcomes: book.outcomes.map(one => ({
      ...one,
      yes: whole(one.yes, MOST_SAMPLES),
      other: whole(one.other, MOST_SAMPLES),
    })),
  };
};
