import { STEP_HZ } from '../drill/step-hz.ts';
import type { Actor } from './actor.ts';
import { ACTOR_NUMBERS } from './actor-numbers.ts';
import type { PuckPlay } from './puck-play.ts';
import type { Recorder } from './recorded.ts';
import { COLUMNS, ROWS, writeColumns } from './track-columns.ts';
import { keepEnds } from './within-stretch.ts';

/** About ten seconds, which most reps are shorter than; doubled once it holds twenty. */
const FIRST_CAPACITY = 1216;

/** Memory that runs can write into one after the other: made by `runMemory`, owned by the caller. */
export interface RunMemory {
  last: Recorder | null;
  /**
   * What the last run was played with; nobody reads it. Compiled code goes with the kinds of object it was made for, and is thrown away with
   * them when memory is cleared while no object of a kind is alive: the next run then took five times as long.
   */
  keepsAlive: object | null;
}

/** Memory without anything in it yet; the first run that writes into it makes it as large as it needs. */
export const runMemory = (): RunMemory => ({ last: null, keepsAlive: null });

/**
 * A recorder with nothing in it; takes over the block of the memory's last run when that has room for so many actors: a spot taken out and
 * put back makes no memory anew.
 */
export const recorderOf = (actorCount: number, writesColumns: boolean, memory?: RunMemory): Recorder => {
  const last = memory?.last;
  if (last && last.mostActors >= actorCount && last.writesColumns === writesColumns) {
    beginAgain(last, actorCount);
    return last;
  }
  const capacity = last?.capacity ?? FIRST_CAPACITY;
  const rowCapacity = writesColumns ? ROWS : capacity;
  const recorder: Recorder = {
    actorCount,
    mostActors: actorCount,
    capacity,
    count: 0,
    nextS: 0,
    numbers: new Float64Array(capacity * actorCount * COLUMNS),
    actIndexes: new Int16Array(capacity * actorCount),
    pucks: [],
    puckCount: 0,
    rows: new Float64Array(rowCapacity * actorCount * ACTOR_NUMBERS),
    rowCapacity,
    writesColumns,
    between: new Float64Array(actorCount * ACTOR_NUMBERS),
    nths: new Uint8Array(capacity),
    shares: new Float64Array(capacity),
    lengthsS: new Float64Array(capacity),
    columnCount: 0,
    distancesM: new Float64Array(actorCount),
    mostStepsM: new Float64Array(actorCount),
    facings: new Float64Array(2 * actorCount),
  };
  if (memory) memory.last = recorder;
  return recorder;
};

const beginAgain = (recorder: Recorder, actorCount: number): void => {
  if (recorder.actorCount !== actorCount) {
    recorder.actorCount = actorCount;
    recorder.between = new Float64Array(actorCount * ACTOR_NUMBERS);
  }
  recorder.count = 0;
  recorder.nextS = 0;
  recorder.columnCount = 0;
  recorder.puckCount = 0;
  recorder.distancesM.fill(0);
  recorder.mostStepsM.fill(0);
  recorder.nths.fill(0);
};

/** Whom and what a sample is of. */
interface Sampled {
  readonly recorder: Recorder;
  readonly actors: readonly Actor[];
  readonly pucks: readonly PuckPlay[];
}

interface StretchEnds {
  readonly numbers: Float64Array;
  readonly stretch: { readonly lengthS: number };
}

/** A sample of the skaters in this row, and of the pucks that part of their way. A puck that is new among them has lain where it is until now. */
export const addSample = ({ recorder, actors, pucks }: Sampled, row: Float64Array, share: number): void => {
  if (recorder.count === recorder.capacity) grow(recorder);
  const { rows, rowCapacity, count } = recorder;
  rows.set(row, (count % rowCapacity) * row.length);
  addRest({ recorder, actors, pucks }, share);
};

/** A sample within the stretch of which these are the numbers at both ends, the how-manieth of it, that part of the way along it. */
export const addWithin = (run: Sampled & StretchEnds, nth: number, share: number): void => {
  const { recorder, numbers, stretch } = run;
  // The first row takes the one end, the second the other.
  if (recorder.count + 1 >= recorder.capacity) grow(recorder);
  const { count } = recorder;
  if (nth === 1) keepEnds(recorder, numbers);
  recorder.nths[count] = nth;
  recorder.shares[count] = share;
  recorder.lengthsS[count] = stretch.lengthS;
  addRest(run, share);
};

const addRest = ({ recorder, actors, pucks }: Sampled, share: number): void => {
  const { actIndexes, capacity, count: i } = recorder;
  for (let a = 0; a < actors.length; a++) actIndexes[a * capacity + i] = actors[a]!.actIndex;
  while (recorder.puckCount < pucks.length) addPuck(recorder, pucks[recorder.puckCount]!);
  for (let p = 0; p < pucks.length; p++) {
    const puck = pucks[p]!;
    const columns = recorder.pucks[p]!;
    columns.xM[i] = puck.xM + share * (puck.next.xM - puck.xM);
    columns.yM[i] = puck.yM + share * (puck.next.yM - puck.yM);
    columns.owner[i] = puck.owner ? puck.owner.index : -1;
  }
  recorder.count = i + 1;
  recorder.nextS = recorder.count / STEP_HZ;
  if (recorder.writesColumns && recorder.count % ROWS === 0) writeColumns(recorder);
};

const addPuck = (recorder: Recorder, puck: PuckPlay): void => {
  const { capacity, count, puckCount } = recorder;
  const columns = (recorder.pucks[puckCount] ??= {
    xM: new Float64Array(capacity),
    yM: new Float64Array(capacity),
    owner: new Int16Array(capacity),
  });
  columns.xM.fill(puck.xM, 0, count);
  columns.yM.fill(puck.yM, 0, count);
  columns.owner.fill(-1, 0, count);
  recorder.puckCount++;
};

const grow = (recorder: Recorder): void => {
  const { capacity, mostActors } = recorder;
  recorder.numbers = spread(
    new Float64Array(2 * capacity * mostActors * COLUMNS),
    recorder.numbers,
    capacity,
  );
  if (!recorder.writesColumns) {
    const rows = new Float64Array(2 * recorder.rows.length);
    rows.set(recorder.rows);
    recorder.rows = rows;
    recorder.rowCapacity = 2 * capacity;
  }
  recorder.nths = spread(new Uint8Array(2 * capacity), recorder.nths, capacity);
  recorder.shares = spread(new Float64Array(2 * capacity), recorder.shares, capacity);
  recorder.lengthsS = spread(new Float64Array(2 * capacity), recorder.lengthsS, capacity);
  recorder.actIndexes = spread(new Int16Array(2 * capacity * mostActors), recorder.actIndexes, capacity);
  for (const columns of recorder.pucks) {
    columns.xM = spread(new Float64Array(2 * capacity), columns.xM, capacity);
    columns.yM = spread(new Float64Array(2 * capacity), columns.yM, capacity);
    columns.owner = spread(new Int16Array(2 * capacity), columns.owner, capacity);
  }
  recorder.capacity = 2 * capacity;
};

/** Copies columns of length `capacity` to the starts of columns twice as long. */
const spread = <Numbers extends Float64Array | Int16Array | Uint8Array>(
  into: Numbers,
  from: Numbers,
  capacity: number,
): Numbers => {
  for (let start = 0; start < from.length; start += capacity) {
    into.set(from.subarray(start, start + capacity), 2 * start);
  }
  return into;
};
