import type { Estimate } from '../units/points.ts';
import { LENS_SPREAD, LENS_TOLD } from './carry-rows.ts';
import type { TrackedStretch } from './key-path.ts';
import { lensOfTracks } from './lens-of-tracks.ts';

/** The lens's term as the ties tell it, no unit, with its sd. */
export interface LensTerm extends Estimate {
  /** False when the camera does not turn enough to tell. */
  readonly told: boolean;
  /** The term that is reckoned with: none where it is not told, or not told from none. */
  readonly used: number;
}

/** At most so many ties tell the lens: more say little new and cost time. */
const MOST_TIES = 40;

/** A term nearer to none than this many sd is none: most rink cameras show none, and a wrong one bends the whole sheet. */
const SEEN_AT_SDS = 2;

/**
 * The lens of a stretch by its own ties: its one term, no unit, with its sd, whether the camera turns enough to tell it, and the term to be
 * reckoned with. Any stretch; one that stands still, or has no ties, is told nothing and gets none. Source: our own; as `lensOfTracks`.
 */
export const lensTermOf = ({ frames, picture }: TrackedStretch): LensTerm => {
  const keys = frames.filter(({ isKey, pairs }) => isKey && pairs.length > 0);
  const tied = frames.filter(({ pairs }) => pairs.length > 0);
  const every = Math.max(1, Math.ceil(tied.length / MOST_TIES));
  const chosen = [...new Set([...keys, ...tied.filter((_, i) => i % every === every - 1)])];
  const { value, sd } = lensOfTracks(
    chosen.map(({ pairs }) => pairs),
    picture,
  );
  // Ties to one key share its errors: they count as one.
  const keyCount = new Set(chosen.map(({ keyFrame }) => keyFrame)).size;
  const honestSd = Math.min(LENS_SPREAD.value, sd * Math.sqrt(chosen.length / Math.max(1, keyCount)));
  const told = honestSd < LENS_TOLD.value;
  return { value, sd: honestSd, told, used: told && Math.abs(value) > SEEN_AT_SDS * honestSd ? value : 0 };
};
