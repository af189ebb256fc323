import type {
  FoundWays,
  HandMark,
  LensTerm,
  Look,
  PinnedFrame,
  SkatePower,
  TrackedStretch,
} from '@icewright/engine';
import type { GreyFilm } from '../carry/grey-frames.ts';

/** What ties the frames of a stretch to the ice: its camera as followed, its lens, its pinned frames. */
export interface Tied {
  readonly stretch: TrackedStretch;
  readonly lens: LensTerm;
  readonly pinned: readonly PinnedFrame[];
}

/** One skater to be followed: his hands, and what was found between some of them before. */
export interface SoughtSkater {
  readonly id: string;
  readonly marks: readonly HandMark[];
  readonly known: readonly FoundWays[];
}

export interface TrackAsk extends GreyFilm {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly tied: Tied;
  readonly power: SkatePower;
  readonly skaters: readonly SoughtSkater[];
}

export interface FollowedSkater {
  readonly id: string;
  readonly ways: readonly FoundWays[];
  readonly looks: readonly Look[];
}

export type TrackSaid =
  | { readonly kind: 'looked'; readonly frameCount: number; readonly ofCount: number }
  | { readonly kind: 'done'; readonly skaters: readonly FollowedSkater[] }
  | { readonly kind: 'failed'; readonly why: string };
