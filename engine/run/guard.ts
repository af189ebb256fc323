import type { Net } from '../rink/rink.ts';

/** What a goalie without an act of its own does: guards this net, this far out of it, and has seen the puck where it was at the last steps. */
export interface Guard {
  readonly net: Net;
  readonly outM: number;
  /** x and y by turns, the oldest at `oldest`; as long as the reaction. */
  readonly seenM: Float64Array;
  oldest: number;
  lookedAtS: number;
}
