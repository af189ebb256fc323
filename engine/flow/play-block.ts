import type { Flow } from '../drill/drill.ts';
import { type End, otherEnd } from '../units/ends.ts';
import { joinQueue, leaveQueue, type Queue, queueOf } from './queue.ts';
import type { RepFacts, SpotFacts } from './rep-facts.ts';

/** One skater's way through the block, while it goes on. Seconds from the first whistle. */
export interface Way {
  readonly line: number;
  /** In the line at the first whistle, from 1. */
  readonly number: number;
  /** Reps by spot. */
  readonly goes: number[];
  goCount: number;
  workS: number;
  waitS: number;
  /** End of the last work. */
  restsFromS: number;
}

export interface Block {
  readonly ways: readonly Way[];
  readonly queues: readonly Queue[];
  readonly startsS: readonly number[];
  readonly repCount: number;
  readonly lateRepCount: number;
  readonly movingSumS: number;
  readonly shots: readonly BlockShot[];
}

export interface BlockShot {
  readonly timeS: number;
  readonly end: End;
  readonly rep: number;
}

/** What the next rep waits for: seconds after the start of the one before, > 0; and the ends it is played at. */
export interface Beat {
  readonly afterS: number;
  readonly ends: Flow['ends'];
}

/** More than rounding, seconds. */
const ROUNDING_S = 1e-6;

/**
 * Plays rep after rep until no further one would end within the block (seconds, > 0). A rep starts at its beat, or later when the
 * next of a line is not back yet; a line that is empty leaves its spot empty, and a rep for which nobody at all is left
 * ends the block. `counts` are the lines at the first whistle: by the spots of the rep, and once more for the other end.
 * Linear in reps. With a beat of 0 or less it throws.
 */
export const playBlock = (rep: RepFacts, counts: readonly number[], beat: Beat, lengthS: number): Block => {
  if (!(beat.afterS > 0)) throw new RangeError(`a rep every ${beat.afterS} s never ends`);
  const block = startOf(rep, counts);
  let plannedS = 0;
  for (let round = 0; ; round++) {
    const ends = endsOf(beat.ends, round);
    const lines = ends.map(end => block.queues.slice(end * rep.spots.length, (end + 1) * rep.spots.length));
    const startS = readyOf(lines.flat(), plannedS);
    if (startS + rep.durationS > lengthS + ROUNDING_S) break;
    if (lines.flat().every(queue => queue.who.length === 0)) break;
    if (startS > plannedS + ROUNDING_S) block.lateRepCount++;
    block.startsS.push(startS);
    for (const end of ends) playRep(block, rep, end, startS);
    plannedS = startS + beat.afterS;
  }
  for (const way of block.ways) if (way.goCount > 0) way.waitS += lengthS - way.restsFromS;
  return block;
};

type OpenBlock = {
  -readonly [Key in keyof Block]: Block[Key] extends readonly (infer Item)[] ? Item[] : Block[Key];
};

const startOf = (rep: RepFacts, counts: readonly number[]): OpenBlock => {
  const queues = counts.map(queueOf);
  const ways: Way[] = [];
  for (const [line, count] of counts.entries())
    for (let number = 1; number <= count; number++) {
      joinQueue(queues[line]!, ways.length, 0);
      const goes = rep.spots.map(() => 0);
      ways.push({ line, number, goes, goCount: 0, workS: 0, waitS: 0, restsFromS: 0 });
    }
  return { ways, queues, startsS: [], repCount: 0, lateRepCount: 0, movingSumS: 0, shots: [] };
};

const DRAWN = [0];
const OTHER = [1];
const BOTH = [0, 1];

const endsOf = (ends: Flow['ends'], round: number): readonly number[] =>
  ends === 'both' ? BOTH : ends === 'byTurns' && round % 2 === 1 ? OTHER : DRAWN;

/** When the next of every line is there; the line that comes last is noted when that is after the beat. */
const readyOf = (lines: readonly Queue[], plannedS: number): number => {
  let readyS = plannedS;
  let last: Queue | undefined;
  for (const queue of lines) {
    const sinceS = queue.sinceS[0];
    if (sinceS === undefined || sinceS <= readyS + ROUNDING_S) continue;
    readyS = sinceS;
    last = queue;
  }
  if (last) last.lateCount++;
  return readyS;
};

const playRep = (block: OpenBlock, rep: RepFacts, end: number, startS: number): void => {
  const first = end * rep.spots.length;
  const went = rep.spots.map((facts, index) => playSpot(block, facts, index, first, startS));
  for (const [index, facts] of rep.spots.entries()) {
    const who = went[index];
    if (who === undefined) continue;
    const to = rep.spots.findIndex(other => other.spot === facts.goesTo);
    joinQueue(block.queues[first + (to < 0 ? index : to)]!, who, startS + facts.freeS + facts.backS);
  }
  for (const shot of rep.shots)
    block.shots.push({
      timeS: startS + shot.timeS,
      end: end === 1 ? otherEnd(shot.end) : shot.end,
      rep: block.repCount,
    });
  block.repCount++;
};

/** The next of a line goes; undefined when the line is empty. */
const playSpot = (
  block: OpenBlock,
  facts: SpotFacts,
  index: number,
  first: number,
  startS: number,
): number | undefined => {
  const queue = block.queues[first + index]!;
  const beginsS = startS + facts.fromS;
  const who = leaveQueue(queue, beginsS);
  if (who === undefined) return undefined;
  const way = block.ways[who]!;
  const restS = beginsS - way.restsFromS;
  if (way.goCount > 0) {
    queue.restCount++;
    queue.restSumS += restS;
  }
  way.waitS += restS;
  way.workS += facts.toS - facts.fromS;
  way.restsFromS = startS + facts.toS;
  way.goCount++;
  way.goes[index]!++;
  block.movingSumS += facts.movingS;
  return who;
};
