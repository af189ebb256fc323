import type { PinFit } from '../film/pins.ts';
import { carryPins } from './carry-pins.ts';
import type { PinnedFrame, TrackedStretch } from './key-path.ts';
import type { LensTerm } from './lens-term.ts';

/**
 * The tie of each picture of a stretch, asked by its frame index (whole, from 0) and reckoned once: what `carryPins` carries there, or
 * null where nothing reaches. Ice in metres from centre ice, film in pixels. Throws nothing of its own.
 */
export const carriedFitsOf = (
  stretch: TrackedStretch,
  term: LensTerm,
  pinned: readonly PinnedFrame[],
): ((frameIndex: number) => PinFit | null) => {
  const carry = carryPins(stretch, term, pinned);
  const kept = new Map<number, PinFit | null>();
  return frameIndex => {
    const known = kept.get(frameIndex);
    if (known !== undefined) return known;
    const at = carry.at(frameIndex);
    const fit = at.kind === 'carried' ? at.fit : null;
    kept.set(frameIndex, fit);
    return fit;
  };
};
