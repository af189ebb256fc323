import type { Actor } from './actor.ts';
import type { PuckPlay } from './puck-play.ts';
import type { PuckTrack, Track } from './run-result.ts';

/** Columns of one actor in the block of samples. */
const COLUMNS = 5;
const PUCK_COLUMNS = 2;
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
  owners: Int16Array;
  readonly distancesM: Float64Array;
  /** Facing of each actor in the last sample, as a unit vector. */
  readonly facings: Float64Array;
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
    last.distancesM.fill(0);
    return last;
  }
  const recorder: Recorder = {
    actorCount,
    capacity: FIRST_CAPACITY,
    count: 0,
    numbers: new Float64Array(FIRST_CAPACITY * (actorCount * COLUMNS + PUCK_COLUMNS)),
    actIndexes: new Int16Array(FIRST_CAPACITY * actorCount),
    owners: new Int16Array(FIRST_CAPACITY),
    distancesM: new Float64Array(actorCount),
    facings: new Float64Array(2 * actorCount),
  };
  if (memory) memory.last = recorder;
  return recorder;
};

/** Adds one sample of everybody and the puck. */
export const recordSample = (recorder: Recorder, actors: readonly Actor[], puck: PuckPlay): void => {
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
  const base = actors.length * COLUMNS * capacity + i;
  numbers[base] = puck.xM;
  numbers[base + capacity] = puck.yM;
  recorder.owners[i] = puck.state === 'none' ? -2 : puck.owner ? puck.owner.index : -1;
  recorder.count = i + 1;
};

/** The angle of a facing that has not changed is taken from the sample before. */
const facingRadOf = (recorder: Recorder, a: number, actor: Actor, i: number): number => {
  const { facings, numbers, capacity } = recorder;
  if (i > 0 && facings[2 * a] === actor.facingX && facings[2 * a + 1] === actor.facingY) {
    return numbers[(a * COLUMNS + 4) * capacity + i - 1]!;
  }
  facings[2 * a] = actor.facingX;
  facings[2 * a + 1] = actor.facingY;
  return Math.atan2(actor.facingY, actor.facingX);
};

/** The tracks of everything recorded; views into the recorder's memory. */
export const tracksOf = (
  recorder: Recorder,
  actors: readonly Actor[],
): { readonly tracks: readonly Track[]; readonly puck: PuckTrack } => {
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
  const first = actors.length * COLUMNS;
  const puck = { xM: column(first), yM: column(first + 1), owner: recorder.owners.subarray(0, count) };
  return { tracks, puck };
};

const grow = (recorder: Recorder): void => {
  const { capacity, actorCount } = recorder;
  const numberColumns = actorCount * COLUMNS + PUCK_COLUMNS;
  recorder.numbers = spread(new Float64Array(2 * capacity * numberColumns), recorder.numbers, capacity);
  recorder.actIndexes = spread(new Int16Array(2 * capacity * actorCount), recorder.actIndexes, capacity);
  recorder.owners = spread(new Int16Array(2 * capacity), recorder.owners, capacity);
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
