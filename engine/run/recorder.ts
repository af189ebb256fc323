import type { Actor } from './actor.ts';
import { ACTOR_NUMBERS, FACING_X, FACING_Y, X_MPS, Y, Y_MPS } from './actor-numbers.ts';
import type { PuckPlay } from './puck-play.ts';
import type { PuckTrack, Track } from './run-result.ts';

/** Columns of one actor in the block of samples: place, velocity, facing. */
const COLUMNS = 5;
/** About ten seconds, which most reps are shorter than; doubled once it holds twenty. */
const FIRST_CAPACITY = 1216;
/** Samples that are kept as they come before they are written into the columns: so few that they stay in the nearest memory. */
const ROWS = 32;

/**
 * The samples of a run while it grows. One block of memory for all numbers, doubled when it is full, so that a step
 * itself makes no garbage. A sample is first copied as it lies in the run's own block; every `ROWS` of them are turned into columns.
 */
export interface Recorder {
  readonly actorCount: number;
  capacity: number;
  count: number;
  numbers: Float64Array;
  /** The last samples, each as the first half of the run's block, and how many of them the columns have. */
  readonly rows: Float64Array;
  /** Room for one row that is not as the run has it. */
  readonly between: Float64Array;
  columnCount: number;
  actIndexes: Int16Array;
  /** By puck, as many as any run had; the first `puckCount` are this run's. */
  readonly pucks: PuckColumns[];
  puckCount: number;
  readonly distancesM: Float64Array;
  /** Facing of each actor in the last sample of the columns, as a unit vector. */
  readonly facings: Float64Array;
}

interface PuckColumns {
  xM: Float64Array;
  yM: Float64Array;
  owner: Int16Array;
}

/** Memory that runs can write into one after the other: made by `runMemory`, owned by the caller. */
export interface RunMemory {
  last: Recorder | null;
}

/** Memory without anything in it yet; the first run that writes into it makes it as large as it needs. */
export const runMemory = (): RunMemory => ({ last: null });

/** A recorder with nothing in it; takes over the block of the memory's last run when the number of actors is the same. */
export const recorderOf = (actorCount: number, memory?: RunMemory): Recorder => {
  const last = memory?.last;
  if (last && last.actorCount === actorCount) {
    last.count = 0;
    last.columnCount = 0;
    last.puckCount = 0;
    last.distancesM.fill(0);
    return last;
  }
  const recorder: Recorder = {
    actorCount,
    capacity: FIRST_CAPACITY,
    count: 0,
    numbers: new Float64Array(FIRST_CAPACITY * actorCount * COLUMNS),
    actIndexes: new Int16Array(FIRST_CAPACITY * actorCount),
    pucks: [],
    puckCount: 0,
    rows: new Float64Array(ROWS * actorCount * ACTOR_NUMBERS),
    between: new Float64Array(actorCount * ACTOR_NUMBERS),
    columnCount: 0,
    distancesM: new Float64Array(actorCount),
    facings: new Float64Array(2 * actorCount),
  };
  if (memory) memory.last = recorder;
  return recorder;
};

/** Whom and what a sample is of. */
interface Sampled {
  readonly recorder: Recorder;
  readonly actors: readonly Actor[];
  readonly pucks: readonly PuckPlay[];
}

/** A sample of the skaters in this row, and of the pucks that part of their way. A puck that is new among them has lain where it is until now. */
export const addSample = ({ recorder, actors, pucks }: Sampled, row: Float64Array, share: number): void => {
  if (recorder.count === recorder.capacity) grow(recorder);
  const { rows, actIndexes, capacity, count: i } = recorder;
  rows.set(row, (i % ROWS) * row.length);
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
  if (recorder.count % ROWS === 0) writeColumns(recorder);
};

/** Turns the samples that are only rows yet into columns. */
const writeColumns = (recorder: Recorder): void => {
  const { numbers, rows, actorCount, capacity, columnCount, count } = recorder;
  const rowLength = actorCount * ACTOR_NUMBERS;
  const firstRow = columnCount % ROWS;
  for (let a = 0; a < actorCount; a++) {
    const x = a * COLUMNS * capacity + columnCount;
    let row = firstRow * rowLength + a * ACTOR_NUMBERS;
    for (let i = x; i < x + count - columnCount; i++) {
      numbers[i] = rows[row]!;
      numbers[i + capacity] = rows[row + Y]!;
      numbers[i + 2 * capacity] = rows[row + X_MPS]!;
      numbers[i + 3 * capacity] = rows[row + Y_MPS]!;
      row += rowLength;
    }
    addLength(recorder, a);
    addAngles(recorder, a);
  }
  recorder.columnCount = count;
};

const addLength = ({ numbers, distancesM, capacity, columnCount, count }: Recorder, a: number): void => {
  const column = a * COLUMNS * capacity;
  let lengthM = distancesM[a]!;
  for (let i = column + Math.max(1, columnCount); i < column + count; i++) {
    const dx = numbers[i]! - numbers[i - 1]!;
    const dy = numbers[i + capacity]! - numbers[i + capacity - 1]!;
    lengthM += Math.sqrt(dx * dx + dy * dy);
  }
  distancesM[a] = lengthM;
};

/** A turn whose sine is no greater than this has its angle by the series, right to the last digit. */
const SMALL_SINE = 0.06;

/**
 * The angle of a facing that has not changed is that of the sample before, and of one that has turned a little that angle and
 * the turn: an arc tangent for every sample would be a thirtieth of a run. The first of the rows is taken anew, so that no rounding adds up.
 */
const addAngles = (recorder: Recorder, a: number): void => {
  const { numbers, rows, facings, actorCount, capacity, columnCount, count } = recorder;
  const column = (a * COLUMNS + 4) * capacity;
  let beforeX = facings[2 * a]!;
  let beforeY = facings[2 * a + 1]!;
  let angleRad = columnCount > 0 ? numbers[column + columnCount - 1]! : Number.NaN;
  for (let i = columnCount; i < count; i++) {
    const row = ((i % ROWS) * actorCount + a) * ACTOR_NUMBERS;
    const x = rows[row + FACING_X]!;
    const y = rows[row + FACING_Y]!;
    if (i === 0 || x !== beforeX || y !== beforeY) {
      const sine = beforeX * y - beforeY * x;
      // Near ±π, where the angle jumps, it is taken anew too.
      const isSmall = sine < SMALL_SINE && sine > -SMALL_SINE && x > -0.9;
      if (i % ROWS === 0 || !isSmall || beforeX * x + beforeY * y < 0) angleRad = Math.atan2(y, x);
      else {
        const s2 = sine * sine;
        angleRad += sine * (1 + s2 * (1 / 6 + s2 * (3 / 40 + s2 * (15 / 336 + s2 * (105 / 3456)))));
      }
      beforeX = x;
      beforeY = y;
    }
    numbers[column + i] = angleRad;
  }
  facings[2 * a] = beforeX;
  facings[2 * a + 1] = beforeY;
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

/** The tracks of everything recorded; views into the recorder's memory. */
export const tracksOf = (
  recorder: Recorder,
  actors: readonly Actor[],
  pucks: readonly PuckPlay[],
): { readonly tracks: readonly Track[]; readonly pucks: readonly PuckTrack[] } => {
  if (recorder.columnCount < recorder.count) writeColumns(recorder);
  const { numbers, capacity, count } = recorder;
  const column = (index: number) => numbers.subarray(index * capacity, index * capacity + count);
  const tracks = actors.map((actor, a) => ({
    spot: actor.spot.id,
    xM: column(a * COLUMNS),
    yM: column(a * COLUMNS + 1),
    xMps: column(a * COLUMNS + 2),
    yMps: column(a * COLUMNS + 3),
    facingRad: column(a * COLUMNS + 4),
    actIndex: recorder.actIndexes.subarray(a * capacity, a * capacity + count),
    acts: actor.spot.acts.map(act => act.id),
    distanceM: recorder.distancesM[a]!,
  }));
  const puckTracks = pucks.map((puck, p) => {
    const { xM, yM, owner } = recorder.pucks[p]!;
    return {
      xM: xM.subarray(0, count),
      yM: yM.subarray(0, count),
      owner: owner.subarray(0, count),
      count: puck.count,
    };
  });
  return { tracks, pucks: puckTracks };
};

const grow = (recorder: Recorder): void => {
  const { capacity, actorCount } = recorder;
  recorder.numbers = spread(
    new Float64Array(2 * capacity * actorCount * COLUMNS),
    recorder.numbers,
    capacity,
  );
  recorder.actIndexes = spread(new Int16Array(2 * capacity * actorCount), recorder.actIndexes, capacity);
  for (const columns of recorder.pucks) {
    columns.xM = spread(new Float64Array(2 * capacity), columns.xM, capacity);
    columns.yM = spread(new Float64Array(2 * capacity), columns.yM, capacity);
    columns.owner = spread(new Int16Array(2 * capacity), columns.owner, capacity);
  }
  recorder.capacity = 2 * capacity;
};

/** Copies columns of length `capacity` to the starts of columns twice as long. */
const spread = <Numbers extends Float64Array | Int16Array>(
  into: Numbers,
  from: Numbers,
  capacity: number,
): Numbers => {
  for (let start = 0; start < from.length; start += capacity) {
    into.set(from.subarray(start, start + capacity), 2 * start);
  }
  return into;
};
