import { madeOf } from '../units/made-of.ts';
import type { Actor } from './actor.ts';
import { ACTOR_NUMBERS, FACING_X, FACING_Y, X_MPS, Y, Y_MPS } from './actor-numbers.ts';
import type { PuckPlay } from './puck-play.ts';
import type { Recorder } from './recorded.ts';
import type { PuckTrack, Track } from './run-result.ts';
import { fillWithin, xMWithin } from './within-stretch.ts';

/** Columns of one actor in the block of samples: place, velocity, facing. */
export const COLUMNS = 5;
/** Samples that are kept as they come before they are written into the columns: so few that they stay in the nearest memory. */
export const ROWS = 32;

/** Turns the samples that are only rows yet into columns. */
export const writeColumns = (recorder: Recorder): void => {
  for (let a = 0; a < recorder.actorCount; a++) {
    writePlaces(recorder, a);
    addLength(recorder, a);
    addAngles(recorder, a);
  }
  recorder.columnCount = recorder.count;
};

const writePlaces = (recorder: Recorder, a: number): void => {
  const { numbers, rows, rowCapacity, actorCount, capacity, columnCount, count } = recorder;
  const rowLength = actorCount * ACTOR_NUMBERS;
  const x = a * COLUMNS * capacity + columnCount;
  let row = (columnCount % rowCapacity) * rowLength + a * ACTOR_NUMBERS;
  for (let i = x; i < x + count - columnCount; i++) {
    numbers[i] = rows[row]!;
    numbers[i + capacity] = rows[row + Y]!;
    numbers[i + 2 * capacity] = rows[row + X_MPS]!;
    numbers[i + 3 * capacity] = rows[row + Y_MPS]!;
    row += rowLength;
  }
};

const addLength = (recorder: Recorder, a: number): void => {
  const { numbers, distancesM, mostStepsM, capacity, columnCount, count } = recorder;
  const column = a * COLUMNS * capacity;
  let lengthM = distancesM[a]!;
  let mostM = mostStepsM[a]!;
  for (let i = column + Math.max(1, columnCount); i < column + count; i++) {
    const dx = numbers[i]! - numbers[i - 1]!;
    const dy = numbers[i + capacity]! - numbers[i + capacity - 1]!;
    const stepM = Math.sqrt(dx * dx + dy * dy);
    lengthM += stepM;
    if (stepM > mostM) mostM = stepM;
  }
  mostStepsM[a] = mostM;
  distancesM[a] = lengthM;
};

/** A turn whose sine is no greater than this has its angle by the series, right to the last digit. */
const SMALL_SINE = 0.06;

/**
 * The angle of a facing that has not changed is that of the sample before, and of one that has turned a little that angle and
 * the turn: an arc tangent for every sample would be a thirtieth of a run. The first of the rows is taken anew, so that no rounding adds up.
 */
const addAngles = (recorder: Recorder, a: number): void => {
  const { numbers, rows, rowCapacity, facings, actorCount, capacity, columnCount, count } = recorder;
  const column = (a * COLUMNS + 4) * capacity;
  let beforeX = facings[2 * a]!;
  let beforeY = facings[2 * a + 1]!;
  let angleRad = columnCount > 0 ? numbers[column + columnCount - 1]! : Number.NaN;
  for (let i = columnCount; i < count; i++) {
    const row = ((i % rowCapacity) * actorCount + a) * ACTOR_NUMBERS;
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

/** The tracks of everything recorded; views into the recorder's memory. */
export const tracksOf = (
  recorder: Recorder,
  actors: readonly Actor[],
  pucks: readonly PuckPlay[],
): { readonly tracks: readonly Track[]; readonly pucks: readonly PuckTrack[] } => {
  const { count, writesColumns } = recorder;
  if (writesColumns && recorder.columnCount < count) writeColumns(recorder);
  const tracks = madeOf(actors, (actor, a) =>
    writesColumns ? trackOf(recorder, actor, a) : trackWhenRead(recorder, actor, a),
  );
  const puckTracks = madeOf(pucks, (puck, p) => {
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

const trackOf = (recorder: Recorder, actor: Actor, a: number): Track => ({
  spot: actor.spot.id,
  xM: columnOf(recorder, a * COLUMNS),
  yM: columnOf(recorder, a * COLUMNS + 1),
  xMps: columnOf(recorder, a * COLUMNS + 2),
  yMps: columnOf(recorder, a * COLUMNS + 3),
  facingRad: columnOf(recorder, a * COLUMNS + 4),
  ...alike(recorder, actor, a),
  distanceM: recorder.distancesM[a]!,
});

const columnOf = ({ numbers, capacity, count }: Recorder, index: number): Float64Array =>
  numbers.subarray(index * capacity, index * capacity + count);

const alike = ({ actIndexes, capacity, count }: Recorder, { spot }: Actor, a: number) => ({
  actIndex: actIndexes.subarray(a * capacity, a * capacity + count),
  acts: spot.acts.map(act => act.id),
});

/** A track of which each part is written when it is first read: of most reps of many nobody reads more than a few. */
const trackWhenRead = (recorder: Recorder, actor: Actor, a: number): Track => {
  let isFilled = false;
  let isPlaced = false;
  let isTurned = false;
  let lengthM = Number.NaN;
  const fill = (): void => {
    if (!isFilled) fillWithin(recorder, a);
    isFilled = true;
  };
  const place = (nth: number): Float64Array => {
    fill();
    if (!isPlaced) writePlaces(recorder, a);
    isPlaced = true;
    return columnOf(recorder, a * COLUMNS + nth);
  };
  const track: Track = {
    spot: actor.spot.id,
    get xM() {
      return place(0);
    },
    get yM() {
      return place(1);
    },
    get xMps() {
      return place(2);
    },
    get yMps() {
      return place(3);
    },
    get facingRad() {
      fill();
      if (!isTurned) addAngles(recorder, a);
      isTurned = true;
      return columnOf(recorder, a * COLUMNS + 4);
    },
    ...alike(recorder, actor, a),
    get distanceM() {
      if (Number.isNaN(lengthM)) {
        place(0);
        addLength(recorder, a);
        lengthM = recorder.distancesM[a]!;
      }
      return lengthM;
    },
  };
  inSample.set(track, i => (isFilled ? track.xM[i]! : xMWithin(recorder, a, i)));
  return track;
};

const inSample = new WeakMap<Track, (sample: number) => number>();

/** How far along the rink the track is in that sample, metres: `track.xM[sample]`, for who reads so few samples that the others need not be written for it. */
export const xMInSample = (track: Track, sample: number): number =>
  inSample.get(track)?.(sample) ?? track.xM[sample]!;
