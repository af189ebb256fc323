import type { FilmPoint, PinFit, Rink } from '@icewright/engine';

/** What the worker is asked: who stands on the ice of one picture, or of a part of one that is tied as a picture of its own. */
export interface BodiesAsk {
  readonly id: number;
  readonly rgba: Uint8ClampedArray;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly fit: PinFit;
  readonly rink: Rink;
  /** Where in it somebody is known to stand; outside of it too. */
  readonly known: readonly FilmPoint[];
}

/** For each pixel 1 where somebody stands; null where that cannot be told. */
export interface BodiesSaid {
  readonly id: number;
  readonly mask: Uint8Array | null;
}
