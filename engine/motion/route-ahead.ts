import { STEP_HZ } from '../drill/step-hz.ts';
import { PLACE_NUMBERS, type PlannedRoute, placesOnRoute } from './planned-route.ts';

/** Strides that are written at once. Half a second of a run that is shown: a rep that ends early has computed little for nothing. */
const STRIDES_AHEAD = 60;

/**
 * Where a route is at the ends of the strides of the rep, block after block. Who skates a drawn route asks for nothing else, and many places in one
 * tight loop cost a third of the same places one by one.
 */
export interface RouteAhead {
  route: PlannedRoute | null;
  firstStride: number;
  /** `PLACE_NUMBERS` for each stride of a block. */
  places: Float64Array;
  /** Blocks of the route are kept for the next run. */
  isKept: boolean;
  readonly nth: number;
}

/** For the skater with this number (from 0) in the run under way; one run is played after the other, so their blocks are written to the same places. */
export const routeAheadOf = (nth: number): RouteAhead => ({
  route: null,
  firstStride: 0,
  places: NOTHING,
  isKept: false,
  nth,
});

/** Where in `places` the route is at the end of this stride of the rep (whole, ≥ 0), of which `strideHz` come in a second. */
export const indexAhead = (
  ahead: RouteAhead,
  route: PlannedRoute,
  stride: number,
  strideHz: number,
): number => {
  const nth = stride - ahead.firstStride;
  if (ahead.route === route && nth >= 0 && nth < STRIDES_AHEAD) return nth * PLACE_NUMBERS;
  const block = Math.floor(stride / STRIDES_AHEAD);
  // Reps of many are by other people each time: nothing would be asked for again.
  if (ahead.route !== route) ahead.isKept = strideHz === STEP_HZ && hasBeenSkated(route);
  ahead.route = route;
  ahead.firstStride = block * STRIDES_AHEAD;
  if (ahead.isKept) ahead.places = keptBlock(route, block);
  else {
    ahead.places = ownBlock(ahead.nth);
    writeBlock(route, block, strideHz, ahead.places);
  }
  return (stride - ahead.firstStride) * PLACE_NUMBERS;
};

const ownBlocks: Float64Array[] = [];

const ownBlock = (nth: number): Float64Array => (ownBlocks[nth] ??= new Float64Array(BLOCK_NUMBERS));

interface Kept {
  readonly startS: number;
  readonly blocks: (Float64Array | undefined)[];
  /** Where the blocks are taken from, several at once, and how much of it is taken. */
  store: Float64Array;
  takenCount: number;
}

/** Numbers of one block, and how many blocks are made room for at once: each piece of memory of its own is a thing more to be followed by who clears it. */
const BLOCK_NUMBERS = STRIDES_AHEAD * PLACE_NUMBERS;
const BLOCKS_AT_ONCE = 16;

const NOTHING = new Float64Array(0);

const keptBlocks = new WeakMap<Float64Array, Kept>();

/**
 * Whether an earlier run, or another skater of this one, has skated the same times of the same way from the same moment. What a hand moves is another route in every run: to keep
 * its blocks was most of the memory that a picture of a drag used up.
 */
const hasBeenSkated = (route: PlannedRoute): boolean => {
  const before = keptBlocks.get(route.timeS);
  return keptOf(route) === before;
};

/** What is kept of this route; nothing yet when its way was last begun at another moment. */
const keptOf = ({ timeS, startS }: PlannedRoute): Kept => {
  const before = keptBlocks.get(timeS);
  if (before?.startS === startS) return before;
  const kept = { startS, blocks: [], store: NOTHING, takenCount: 0 };
  keptBlocks.set(timeS, kept);
  return kept;
};

/**
 * The block as it was written before for the same times of the same way (the same array, never written again) begun at the same moment, else written now: so the answer never
 * depends on what is kept. In a drag most routes are those of the run before. What is kept goes with the way.
 */
const keptBlock = (route: PlannedRoute, block: number): Float64Array => {
  const kept = keptOf(route);
  const before = kept.blocks[block];
  if (before) return before;
  if (kept.takenCount === kept.store.length) {
    kept.store = new Float64Array(BLOCKS_AT_ONCE * BLOCK_NUMBERS);
    kept.takenCount = 0;
  }
  const places = kept.store.subarray(kept.takenCount, kept.takenCount + BLOCK_NUMBERS);
  kept.takenCount += BLOCK_NUMBERS;
  writeBlock(route, block, STEP_HZ, places);
  kept.blocks[block] = places;
  return places;
};

const timesS = new Float64Array(STRIDES_AHEAD);

const writeBlock = (route: PlannedRoute, block: number, strideHz: number, places: Float64Array): void => {
  for (let i = 0; i < STRIDES_AHEAD; i++) timesS[i] = (block * STRIDES_AHEAD + i) / strideHz;
  placesOnRoute(route, timesS, places);
};
