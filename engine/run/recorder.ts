import type { Actor } from './actor.ts';
import type { PuckPlay } from './puck-play.ts';
import type { PuckTrack, Track } from './run-result.ts';

/** Columns of one actor in the block of samples. */
const COLUMNS = 5;
/** About ten seconds, which most reps are shorter than; doubled once it holds twenty. */
const FIRST_CAPACITY = 1216;

/**
 * The samples of a run while it grows. One block of memory for all numbers, doubled when it is full, so that a step
 * itself makes no garbage.
 */
export interface Recorder {
  readonly actorCount: number;
  capacity: number;
  count: number;
  numbers: Float64Array;
  actIndexes: Int16Array;
  /** By puck, as many as any run had; the first `puckCount` are this run's. */
  readonly pucks: PuckColumns[];
  puckCount: number;
  readonly distancesM: Float64Array;
  /** Facing of each actor in the last sample, as a unit vector. */
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
    distancesM: new Float64Array(actorCount),
    facings: new Float64Array(2 * actorCount),
  };
  if (memory) memory.last = recorder;
  return recorder;
};

/** Adds one sample of everybody and the pucks. A puck that is new among them has lain where it is until now. */
export const recordSample = (
  recorder: Recorder,
  actors: readonly Actor[],
  pucks: readonly PuckPlay[],
): void => {
  if (recorder.count === recorder.capacity) grow(recorder);
  const { numbers, capacity, count: i } = recorder;
  for (let a = 0; a < actors.length; a++) {
    const actor = actors[a]!;
    const base = a * COLUMNS * capacity + i;
    if (i > 0) {
      const dx = actor.xM - numbers[base - 1]!;
      const dy = actor.yM - numbers[base + capacity - 1]!;
      recorder.distancesM[a]! += Math.sqrt(dx * dx + dy * dy);
    }
    numbers[base] = actor.xM;
    numbers[base + capacity] = actor.yM;
    numbers[base + 2 * capacity] = actor.xMps;
    numbers[base + 3 * capacity] = actor.yMps;
    numbers[base + 4 * capacity] = facingRadOf(recorder, a, actor, i);
    recorder.actIndexes[a * capacity + i] = actor.actIndex;
  }
  while (recorder.puckCount < pucks.length) addPuck(recorder, pucks[recorder.puckCount]!);
  for (let p = 0; p < pucks.length; p++) {
    const puck = pucks[p]!;
    const columns = recorder.pucks[p]!;
    columns.xM[i] = puck.xM;
    columns.yM[i] = puck.yM;
    columns.owner[i] = puck.owner ? puck.owner.index : -1;
  }
  recorder.count = i + 1;
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

/** A turn whose sine is no greater than this has its angle by the series, right to the last digit. */
const SMALL_SINE = 0.06;

/**
 * The angle of a facing that has not changed is taken from the sample before, and one that has turned a little is that angle and
 * the turn: an arc tangent for every sample would be a thirtieth of a run. Every 32nd is taken anew, so that no rounding adds up.
 */
const facingRadOf = (recorder: Recorder, a: number, actor: Actor, i: number): number => {
  const { facings, numbers, capacity } = recorder;
  if (i > 0 && facings[2 * a] === actor.facingX && facings[2 * a + 1] === actor.facingY) {
    return numbers[(a * COLUMNS + 4) * capacity + i - 1]!;
  }
  const { facingX, facingY } = actor;
  const beforeX = facings[2 * a]!;
  const beforeY = facings[2 * a + 1]!;
  facings[2 * a] = facingX;
  facings[2 * a + 1] = facingY;
  const sine = beforeX * facingY - beforeY * facingX;
  // Near ±π, where the angle jumps, it is taken anew too.
  const isSmall = sine < SMALL_SINE && sine > -SMALL_SINE && facingX > -0.9;
  if (i % 32 === 0 || !isSmall || beforeX * facingX + beforeY * facingY < 0)
    return Math.atan2(facingY, facingX);
  const s2 = sine * sine;
  const turnRad = sine * (1 + s2 * (1 / 6 + s2 * (3 / 40 + s2 * (15 / 336 + s2 * (105 / 3456)))));
  return numbers[(a * COLUMNS + 4) * capacity + i - 1]! + turnRad;
};

/** The tracks of everything recorded; views into the recorder's memory. */
export const tracksOf = (
  recorder: Recorder,
  actors: readonly Actor[],
  pucks: readonly PuckPlay[],
): { readonly tracks: readonly Track[]; readonly pucks: readonly PuckTrack[] } => {
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
