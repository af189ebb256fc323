import type { PuckPath } from '../puck/path-parts.ts';
import type { Place } from '../puck/place-on-path.ts';
import type { ActId } from '../units/ids.ts';
import type { IcePoint } from '../units/points.ts';

/** A puck that slides free after a pass or a shot. Times are of the rep. */
export interface PuckFlight<Skater> {
  readonly path: PuckPath;
  readonly releasedS: number;
  readonly from: Skater;
  to: Skater | null;
  readonly act: ActId | null;
  /** When puck and blade are to meet; Infinity when they do not, or did not. */
  meetS: number;
  /** When an opponent's stick is first on it; Infinity when none is. */
  cutS: number;
  cutBy: Skater | null;
  /** The push that gets the stick there. */
  cutX: number;
  cutY: number;
  /** When it comes to rest in a net; Infinity when it does not. */
  netS: number;
  /** A shot has not ended in the net, at a goalie or beside it yet. */
  isShot: boolean;
  /** When a goalie stops it; Infinity when none does. */
  saveS: number;
  savedBy: Skater | null;
  nextBounce: number;
  /** The meeting has failed; the receiver still takes the puck when it slides by within reach. */
  isLate: boolean;
  /** Nearest the puck came to the receiver's middle once the meeting had failed, metres, and when. */
  missM: number;
  missAtS: number;
  missAtM: IcePoint;
}

/**
 * A puck of the rep, or a heap of `count` that lies together, changed in place. `offset` is what a received puck still has to go
 * to the blade.
 */
export interface Puck<Skater> {
  state: 'lies' | 'carried' | 'slides';
  count: number;
  owner: Skater | null;
  flight: PuckFlight<Skater> | null;
  xM: number;
  yM: number;
  /** Of a free puck, over the last stretch. */
  xMps: number;
  yMps: number;
  readonly next: Place;
  /** The contest for it since it came to this stick: sum so far, hazard per second now and at the end of the step tried, and the sum at which it is lost (NaN: not drawn yet). */
  contest: number;
  contestPerS: number;
  triedPerS: number;
  contestLimit: number;
  /** Whose stick was most on it. */
  contestBy: Skater | null;
  /** When it came loose, and from whom; NaN for a puck that is not. */
  looseS: number;
  lostBy: Skater | null;
  /** A pass that is still to be had by whom it was meant for, sliding or lying. */
  left: { readonly by: Skater; readonly to: Skater } | null;
  /** Out of play: in a net. */
  isDead: boolean;
  offsetXM: number;
  offsetYM: number;
  zone: number;
}
