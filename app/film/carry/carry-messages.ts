import type { LensTerm, TrackedFrame } from '@icewright/engine';
import type { GreyFilm } from './grey-frames.ts';

/** What the worker is asked: follow the camera from one frame to another, both counted. */
export interface CarryAsk extends GreyFilm {
  readonly fromFrame: number;
  readonly toFrame: number;
  /** The shown picture, in which pins and points are told. */
  readonly widthPx: number;
  readonly heightPx: number;
}

export type CarrySaid =
  | { readonly kind: 'followed'; readonly frameCount: number }
  | { readonly kind: 'done'; readonly frames: readonly TrackedFrame[]; readonly lens: LensTerm }
  | { readonly kind: 'failed'; readonly why: string };
