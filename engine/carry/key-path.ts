import { fitPins } from '../film/fit-pins.ts';
import { type Lens, straightOf } from '../film/lens.ts';
import type { FitResult, Pin, PinFit } from '../film/pins.ts';
import { type None, noneBecause } from '../units/none.ts';
import { blendedMaps } from './blend-maps.ts';
import { carriedFit, fitOfMap, mapOfFit } from './carry-fit.ts';
import { LINK_RAISE } from './carry-rows.ts';
import { settledFit } from './fit-pairs.ts';
import { straightPairs } from './lens-of-tracks.ts';
import type { ScaledMap } from './scaled-map.ts';
import type { LostBecause, TrackedFrame } from './track-camera.ts';

/** A stretch of film whose camera was followed: its pictures in order, and their size. */
export interface TrackedStretch {
  readonly frames: readonly TrackedFrame[];
  readonly picture: { readonly widthPx: number; readonly heightPx: number };
}

/** A picture of the stretch that was pinned, as shown. */
export interface PinnedFrame {
  readonly frameIndex: number;
  readonly pins: readonly Pin[];
  /** How well a click hits its marking, per axis, > 0. */
  readonly clickSdPx: number;
}

/** Why a picture of a stretch has no place on the ice. */
export type NotCarried =
  /** The camera was not followed to this picture. */
  | 'notTracked'
  /** No picture of the stretch is pinned so that it can be fitted. */
  | 'noPins'
  /** Between this picture and every pinned one the tie was lost. */
  | LostBecause
  /** The middle of the picture shows no ice. */
  | 'noIceInView';

/** A calibration carried to a picture it was not made in. */
export interface CarriedFit {
  readonly kind: 'carried';
  /** Ties the shown picture to the ice, its lens included where there is one. */
  readonly fit: PinFit;
  readonly lens: Lens;
  /** The pinned pictures it comes from, nearest first. */
  readonly from: readonly number[];
  /** Pinned pictures lie further apart here than their ± explain; the ± was raised to it. */
  readonly disagree: boolean;
}

/** A stretch's pictures tied to the ice with one lens. */
export interface KeyPath {
  readonly lens: Lens;
  readonly fits: ReadonlyMap<number, FitResult>;
  at(frameIndex: number): CarriedFit | None<NotCarried>;
}

/** What is known at a key picture. */
interface Known {
  readonly fit: PinFit;
  readonly from: readonly number[];
  readonly disagree: boolean;
}

/**
 * Carries the fits of pinned pictures to all that are tied to them, forward and backward along the key pictures, weighed by their ± where
 * they meet. The lens is taken as known. `at` answers `none` with the reason where nothing reaches. Source: our own; as `carryPins`.
 */
export const keyPathOf = (
  { frames, picture }: TrackedStretch,
  pinned: readonly PinnedFrame[],
  lens: Lens,
): KeyPath => {
  const byIndex = new Map(frames.map(frame => [frame.frameIndex, frame]));
  const fits = new Map(
    pinned.map(({ frameIndex, pins, clickSdPx }) => {
      const straight = pins.map(pin => ({ ...pin, filmPx: straightOf(lens, pin.filmPx) }));
      return [frameIndex, fitPins(straight, clickSdPx)] as const;
    }),
  );
  const keys = frames.filter(({ isKey }) => isKey);
  const atKey = new Map<number, Known>();
  for (const [frameIndex, result] of fits) {
    const frame = byIndex.get(frameIndex);
    if (!frame || result.kind === 'refused') continue;
    const here: Known = { fit: result.fit, from: [frameIndex], disagree: false };
    const node = frame.isKey ? frame.frameIndex : frame.keyFrame;
    const there = frame.isKey ? here : carried(here, moveOf(frame, lens, 'toKey'), picture);
    if (there) atKey.set(node, joined(atKey.get(node), there));
  }
  const forward = new Map<number, Known>();
  const backward = new Map<number, Known>();
  for (const [i, key] of keys.entries()) {
    const before = keys[i - 1];
    const reached = before && key.pairs.length > 0 ? known(forward, atKey, before.frameIndex) : undefined;
    const come = reached && carried(reached, moveOf(key, lens, 'fromKey'), picture);
    if (come) forward.set(key.frameIndex, come);
  }
  for (let i = keys.length - 2; i >= 0; i--) {
    const after = keys[i + 1]!;
    const reached = after.pairs.length > 0 ? known(backward, atKey, after.frameIndex) : undefined;
    const come = reached && carried(reached, moveOf(after, lens, 'toKey'), picture);
    if (come) backward.set(keys[i]!.frameIndex, come);
  }
  const at = (frameIndex: number): CarriedFit | None<NotCarried> => {
    const frame = byIndex.get(frameIndex);
    if (!frame) return noneBecause('notTracked');
    const node = frame.isKey ? frame.frameIndex : frame.keyFrame;
    const here = [forward.get(node), atKey.get(node), backward.get(node)].filter(one => one !== undefined);
    const whole = here.reduce<Known | undefined>((sum, one) => joined(sum, one), undefined);
    if (!whole) return noneBecause(whyNot(keys, fits, byIndex, node));
    const there = frame.isKey ? whole : carried(whole, moveOf(frame, lens, 'fromKey'), picture);
    if (!there) return noneBecause('noIceInView');
    const from = [...there.from].sort((a, b) => Math.abs(a - frameIndex) - Math.abs(b - frameIndex));
    return { kind: 'carried', fit: there.fit, lens, from, disagree: there.disagree };
  };
  return { lens, fits, at };
};

const known = (
  come: ReadonlyMap<number, Known>,
  own: ReadonlyMap<number, Known>,
  keyFrame: number,
): Known | undefined => {
  const here = own.get(keyFrame);
  return here ? joined(come.get(keyFrame), here) : come.get(keyFrame);
};

const carried = (
  { fit, from, disagree }: Known,
  move: ScaledMap | null,
  picture: TrackedStretch['picture'],
): Known | undefined => {
  const there = move && carriedFit(fit, move, picture);
  return there ? { fit: there, from, disagree } : undefined;
};

const joined = (first: Known | undefined, second: Known): Known => {
  if (!first) return second;
  const blend = blendedMaps(mapOfFit(first.fit), mapOfFit(second.fit));
  // Two that cannot be told in one scale are worlds apart in ±: the surer one stands.
  if (!blend) return spreadOf(first.fit) <= spreadOf(second.fit) ? first : second;
  return {
    fit: fitOfMap(blend.map, first.fit),
    from: [...new Set([...first.from, ...second.from])],
    disagree: first.disagree || second.disagree || blend.disagree,
  };
};

const spreadOf = ({ covariance }: PinFit): number => {
  let sum = 0;
  for (let i = 0; i < 8; i++) sum += covariance[9 * i]!;
  return sum;
};

/** The move between a picture and its key, straight, with the ± that its scatter and the choice of raise give. */
const moveOf = ({ pairs }: TrackedFrame, lens: Lens, way: 'fromKey' | 'toKey'): ScaledMap | null => {
  const straight = straightPairs(pairs, lens);
  if (way === 'toKey') {
    for (let i = 0; i < straight.length; i += 4) {
      const [x, y] = [straight[i]!, straight[i + 1]!];
      straight[i] = straight[i + 2]!;
      straight[i + 1] = straight[i + 3]!;
      straight[i + 2] = x;
      straight[i + 3] = y;
    }
  }
  const fit = settledFit(
    straight,
    Array.from({ length: straight.length / 4 }, (_, i) => i),
  );
  if (fit === null) return null;
  const raise = LINK_RAISE.value ** 2;
  return { ...fit.map, covariance: Array.from(fit.map.covariance, entry => entry * raise) };
};

/** The loss nearest to this picture that stands between it and pins. */
const whyNot = (
  keys: readonly TrackedFrame[],
  fits: ReadonlyMap<number, FitResult>,
  byIndex: ReadonlyMap<number, TrackedFrame>,
  node: number,
): NotCarried => {
  const usable = [...fits].filter(([frame, fit]) => fit.kind === 'fit' && byIndex.has(frame));
  if (usable.length === 0) return 'noPins';
  const losses = keys.filter(({ lost, frameIndex }) =>
    lost === undefined
      ? false
      : usable.some(([frame]) => (frameIndex <= node ? frame < frameIndex : frame >= frameIndex)),
  );
  losses.sort((a, b) => Math.abs(a.frameIndex - node) - Math.abs(b.frameIndex - node));
  return losses[0]?.lost ?? 'noIceInView';
};
