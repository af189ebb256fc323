import type { LensTerm, TrackedFrame } from '@icewright/engine';
import type { FilmSource } from '../open-film.ts';

/** What the worker is asked: follow the camera from one frame to another, both counted. */
export interface CarryAsk {
  readonly source: FilmSource;
  /** Of the whole film: the number of a frame is the rank of its time. */
  readonly timesS: Float64Array;
  readonly endS: number;
  readonly fromFrame: number;
  readonly toFrame: number;
  readonly rotationDeg: 0 | 90 | 180 | 270;
  readonly flipped: boolean;
  /** The shown picture, in which pins and points are told. */
  readonly widthPx: number;
  readonly heightPx: number;
}

export type CarrySaid =
  | { readonly kind: 'followed'; readonly frameCount: number }
  | { readonly kind: 'done'; readonly frames: readonly TrackedFrame[]; readonly lens: LensTerm }
  | { readonly kind: 'failed'; readonly why: string };
