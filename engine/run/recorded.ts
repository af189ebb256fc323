/**
 * The samples of a run while it grows. One block of memory for all numbers, doubled when it is full, so that a step
 * itself makes no garbage. A sample is first copied as it lies in the run's own block; every `ROWS` of them are turned into columns.
 */
export interface Recorder {
  actorCount: number;
  /** So many there is room for. */
  readonly mostActors: number;
  capacity: number;
  count: number;
  /** When the next sample is taken, seconds after the whistle. */
  nextS: number;
  numbers: Float64Array;
  /** The last samples, each as the first half of the run's block, in a ring of `rowCapacity` rows; and how many samples the columns have. */
  rows: Float64Array;
  rowCapacity: number;
  /** Room for one row that is not as the run has it. */
  between: Float64Array;
  /** Of the samples that lie within a stretch and are not rows yet; see `within-stretch.ts`. */
  nths: Uint8Array;
  shares: Float64Array;
  lengthsS: Float64Array;
  columnCount: number;
  /** False while nobody may ask for most columns: the rows are all kept, and a column is written when it is read. */
  writesColumns: boolean;
  actIndexes: Int16Array;
  /** By puck, as many as any run had; the first `puckCount` are this run's. */
  readonly pucks: PuckColumns[];
  puckCount: number;
  readonly distancesM: Float64Array;
  /** The longest way of each actor from one sample to the next. */
  readonly mostStepsM: Float64Array;
  /** Facing of each actor in the last sample of the columns, as a unit vector. */
  readonly facings: Float64Array;
}

interface PuckColumns {
  xM: Float64Array;
  yM: Float64Array;
  owner: Int16Array;
}

/** Laid on `mostStepsM`: more than rounding; for two who stand still, so much that what is left out is no number too large to count samples by. Metres. */
export const ROUNDING_M = 1e-4;
