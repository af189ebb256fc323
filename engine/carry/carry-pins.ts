import type { Lens } from '../film/lens.ts';
import type { FitResult } from '../film/pins.ts';
import type { None } from '../units/none.ts';
import {
  type CarriedFit,
  keyPathOf,
  type NotCarried,
  type PinnedFrame,
  type TrackedStretch,
} from './key-path.ts';
import { withLensDoubt } from './lens-doubt.ts';
import type { LensTerm } from './lens-term.ts';

export interface Carry {
  readonly lens: Lens;
  /** The fit of each pinned picture, without its lens. */
  readonly pinned: ReadonlyMap<number, FitResult>;
  at(frameIndex: number): CarriedFit | None<NotCarried>;
}

/**
 * Carries the pins of some pictures of a stretch to all others, both ways, through its key pictures, with ± that grow by each step's
 * own; where several pinned pictures reach, they are weighed by their ±. `term` is the stretch's lens, by `lensTermOf`. `at`
 * answers `none` with the reason where nothing reaches. Source: our own; first-order propagation, Hartley & Zisserman 2004, 5.
 */
export const carryPins = (stretch: TrackedStretch, term: LensTerm, pinned: readonly PinnedFrame[]): Carry => {
  const lensWith = (k1: number): Lens => ({ k1, ...stretch.picture });
  const own = keyPathOf(stretch, pinned, lensWith(term.used));
  const bent = term.told ? keyPathOf(stretch, pinned, lensWith(term.used + term.sd)) : undefined;
  return {
    lens: own.lens,
    pinned: own.fits,
    at: frameIndex => {
      const carried = own.at(frameIndex);
      if (carried.kind === 'none') return carried;
      const other = bent?.at(frameIndex);
      const fit = other?.kind === 'carried' ? withLensDoubt(carried, other) : carried.fit;
      return { ...carried, fit: own.lens.k1 === 0 ? fit : { ...fit, lens: own.lens } };
    },
  };
};
