import { readFileSync } from 'node:fs';
import type { RinkSize } from '@icewright/engine';

/** A film whose every position is known: fixtures/film-truth/README.md tells the format. */
export interface FilmTruth {
  readonly picture: { readonly width: number; readonly height: number };
  readonly frameCount: number;
  readonly lens: { readonly k1: number };
  /** Left, top, right, bottom of what is drawn over the picture, pixels. */
  readonly overlays: readonly { readonly rect: readonly [number, number, number, number] }[];
  readonly rink: RinkSize & { readonly landmarksM: Readonly<Record<string, readonly [number, number]>> };
  readonly frames: readonly TruthFrame[];
}

export interface TruthFrame {
  readonly i: number;
  readonly ptsS: number;
  /** Ice to straight picture, row by row. */
  readonly H: readonly (readonly number[])[];
  readonly landmarks: Readonly<Record<string, readonly [number, number]>>;
  /** Absent where nobody's place is told. */
  readonly skaters?: readonly TruthSkater[];
}

export interface TruthSkater {
  readonly id: string;
  /** Midway between the skates, metres, and its velocity. */
  readonly ice: readonly [number, number];
  readonly vel: readonly [number, number];
  /** The pixel of it as shown. */
  readonly foot: readonly [number, number];
  readonly footSeen?: boolean;
  readonly see: 'clear' | 'partly' | 'hidden' | 'outside';
}

/** The truth in a file, or in one sentence what is wrong with it. */
export const readTruth = (path: string): FilmTruth | string => {
  let value: unknown;
  try {
    value = JSON.parse(readFileSync(path, 'utf8'));
  } catch (error) {
    return `${path} cannot be read as JSON (${error instanceof Error ? error.message : 'unknown'}).`;
  }
  const truth = value as Partial<FilmTruth>;
  const missing = (['picture', 'frameCount', 'lens', 'overlays', 'rink', 'frames'] as const).filter(
    field => truth?.[field] === undefined,
  );
  if (missing.length > 0) return `${path} lacks ${missing.join(', ')}.`;
  const frames = truth.frames!;
  const isWhole = ({ i, ptsS, H, landmarks }: Partial<TruthFrame>): boolean =>
    Number.isInteger(i) &&
    Number.isFinite(ptsS) &&
    Array.isArray(H) &&
    H.length === 3 &&
    typeof landmarks === 'object';
  const broken = Array.isArray(frames) ? frames.findIndex(frame => !isWhole(frame)) : 0;
  if (frames.length === 0 || broken >= 0)
    return `${path}: frames[${Math.max(0, broken)}] lacks i, ptsS, H or landmarks.`;
  if (typeof truth.rink!.landmarksM !== 'object') return `${path} lacks rink.landmarksM.`;
  return truth as FilmTruth;
};
