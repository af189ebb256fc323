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
  readonly own: Float64Array;
}

export const routeAheadOf = (): RouteAhead => {
  const own = new Float64Array(STRIDES_AHEAD * PLACE_NUMBERS);
  return { route: null, firstStride: 0, places: own, own };
};

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
  ahead.route = route;
  ahead.firstStride = block * STRIDES_AHEAD;
  // Reps of many are by other people each time: nothing would be asked for again.
  if (strideHz === STEP_HZ) ahead.places = keptBlock(route, block);
  else {
    ahead.places = ahead.own;
    writeBlock(route, block, strideHz, ahead.own);
  }
  return (stride - ahead.firstStride) * PLACE_NUMBERS;
};

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
 * The block as it was written before for the same times of the same way (the same array, never written again) begun at the same moment, else written now: so the answer never
 * depends on what is kept. In a drag most routes are those of the run before. What is kept goes with the way.
 */
const keptBlock = (route: PlannedRoute, block: number): Float64Array => {
  let kept = keptBlocks.get(route.timeS);
  if (kept?.startS !== route.startS) {
    kept = { startS: route.startS, blocks: [], store: NOTHING, takenCount: 0 };
    keptBlocks.set(route.timeS, kept);
  }
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
