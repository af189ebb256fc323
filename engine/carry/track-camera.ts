import { inverse3, product3 } from '../film/matrix.ts';
import type { Matrix3 } from '../film/pins.ts';
import { randomPartOf } from '../random/random.ts';
import { isNone } from '../units/none.ts';
import { CORNER_STRENGTH, CUT_LIKENESS, KEY_OVERLAP, KEY_ZOOM, PATCH_STRENGTH } from './carry-rows.ts';
import { cornersOf } from './corners.ts';
import { fitPairs } from './fit-pairs.ts';
import { followPatches } from './follow-patches.ts';
import type { GreyPicture, PicturePoints, PictureRect } from './grey-picture.ts';
import { type Patches, patchesOf } from './patches.ts';
import { type PyramidLevel, pyramidOf } from './pyramid.ts';
import { matrixOf, placeThrough } from './scaled-map.ts';

/** Why a picture could not be tied to the one before. */
export type LostBecause = 'cut' | 'tooFewPoints' | 'noAgreement';

/** What is known of one picture of a film after its camera was followed to it. */
export interface TrackedFrame {
  readonly frameIndex: number;
  /** The key picture it is tied to; itself where following begins, or begins anew. */
  readonly keyFrame: number;
  /** x, y in the key picture and x, y here of the points that roughly agree, pixels; empty where following begins. */
  readonly pairs: Float32Array;
  /** The pictures after this one are tied to it. */
  readonly isKey: boolean;
  /** Set where following had to begin anew. */
  readonly lost?: LostBecause;
}

/** Follows a camera through pictures given one after the other. */
export interface CameraTracker {
  next(frameIndex: number, picture: GreyPicture): TrackedFrame;
}

export interface TrackChoice {
  readonly seed: number;
  /** Drawn over the picture, so that it does not move with it. */
  readonly leftOut: readonly PictureRect[];
}

const LEVELS = 4;
/** The level on which two pictures are compared as a whole. */
const COARSE = 3;

interface KeyPicture {
  readonly frameIndex: number;
  readonly patches: Patches;
  /** Key to the picture before, and to the one before that. */
  readonly toLast: Matrix3;
  readonly toBeforeLast: Matrix3;
  /** Most points that agreed in any picture since: those on skaters soon do not. */
  readonly mostAgreeing: number;
}

/**
 * Follows a panning, zooming camera: corners of a key picture are found again in each picture that follows, straight from the key
 * picture, so that errors do not add up from picture to picture; when too few remain, that picture becomes the next key. All
 * pictures have one size; `frameIndex` (whole number ≥ 0) must grow. Where the tie is lost it begins anew and says why.
 * Source: our own; the steps are of Shi & Tomasi 1994, Lucas & Kanade 1981, Fischler & Bolles 1981.
 */
export const cameraTrackerOf = ({ seed, leftOut }: TrackChoice): CameraTracker => {
  let key: KeyPicture | undefined;
  let coarse: PyramidLevel | undefined;

  const keyAt = (frameIndex: number, pyramid: readonly PyramidLevel[]): KeyPicture => {
    const points = cornersOf(pyramid[0]!, {
      perCell: 3,
      cellPx: 80,
      leastStrength: CORNER_STRENGTH.value,
      marginPx: 12,
      leftOut,
    });
    const patches = patchesOf(pyramid, points, PATCH_STRENGTH.value);
    return { frameIndex, patches, toLast: STILL, toBeforeLast: STILL, mostAgreeing: 0 };
  };

  const next = (frameIndex: number, picture: GreyPicture): TrackedFrame => {
    const pyramid = pyramidOf(picture, LEVELS);
    const before = coarse;
    coarse = pyramid[Math.min(COARSE, pyramid.length - 1)]!;
    const beginAnew = (lost?: LostBecause): TrackedFrame => {
      key = keyAt(frameIndex, pyramid);
      const none = new Float32Array(0);
      return { frameIndex, keyFrame: frameIndex, pairs: none, isKey: true, ...(lost ? { lost } : {}) };
    };
    if (key === undefined) return beginAnew();
    // The camera goes on as it went.
    const step = product3(key.toLast, inverse3(key.toBeforeLast));
    const tie = tieOf(key, pyramid, product3(step, key.toLast), leftOut, randomPartOf(seed, frameIndex));
    if (typeof tie === 'string') {
      const isCut = before !== undefined && likenessOf(before, coarse) < CUT_LIKENESS.value;
      return beginAnew(isCut ? 'cut' : tie);
    }
    const { frameIndex: keyFrame } = key;
    const mostAgreeing = Math.max(key.mostAgreeing, tie.agreeingCount);
    const isKey =
      tie.agreeingCount < KEY_OVERLAP.value * mostAgreeing || zoomOf(tie.toHere, picture) > KEY_ZOOM.value;
    if (isKey) {
      // A new key starts with the speed the camera has.
      const there = keyAt(frameIndex, pyramid);
      key = { ...there, toBeforeLast: product3(key.toLast, inverse3(tie.toHere)) };
    } else key = { ...key, toLast: tie.toHere, toBeforeLast: key.toLast, mostAgreeing };
    return { frameIndex, keyFrame, pairs: tie.pairs, isKey };
  };
  return { next };
};

const STILL: Matrix3 = [1, 0, 0, 0, 1, 0, 0, 0, 1];

const tieOf = (
  key: KeyPicture,
  pyramid: readonly PyramidLevel[],
  guessed: Matrix3,
  leftOut: readonly PictureRect[],
  random: ReturnType<typeof randomPartOf>,
): { pairs: Float32Array; agreeingCount: number; toHere: Matrix3 } | LostBecause => {
  const { points } = key.patches;
  const followed = followPatches(key.patches, pyramid, guessFrom(points, guessed, pyramid[0]!));
  const pairs: number[] = [];
  for (let i = 0; i < points.xPx.length; i++) {
    if (followed.found[i] !== 1 || followed.difference[i]! > MOST_DIFFERENT) continue;
    const [x, y] = [followed.xPx[i]!, followed.yPx[i]!];
    if (leftOut.some(r => x > r.leftPx - 11 && x < r.rightPx + 11 && y > r.topPx - 11 && y < r.bottomPx + 11))
      continue;
    pairs.push(points.xPx[i]!, points.yPx[i]!, x, y);
  }
  const all = Float64Array.from(pairs);
  const fit = fitPairs(all, random);
  if (isNone(fit)) return fit.reason;
  const near = new Float32Array(4 * fit.near.length);
  for (const [place, i] of fit.near.entries()) near.set(all.subarray(4 * i, 4 * i + 4), 4 * place);
  return { pairs: near, agreeingCount: fit.agreeing.length, toHere: matrixOf(fit.map) };
};

/** Mean difference of grey over which a place is another thing. */
const MOST_DIFFERENT = 30;

/** Points that will have left the picture are not looked for. */
const guessFrom = (points: PicturePoints, m: Matrix3, { width, height }: PyramidLevel): PicturePoints => {
  const xPx = new Float64Array(points.xPx.length);
  const yPx = new Float64Array(points.xPx.length);
  for (let i = 0; i < xPx.length; i++) {
    const place = placeThrough(m, points.xPx[i]!, points.yPx[i]!);
    const isSeen =
      place !== null && place[0] > 4 && place[1] > 4 && place[0] < width - 4 && place[1] < height - 4;
    xPx[i] = isSeen ? place[0] : Number.NaN;
    yPx[i] = isSeen ? place[1] : Number.NaN;
  }
  return { xPx, yPx };
};

/** How far the scale at the middle of the picture is from 1. */
const zoomOf = (m: Matrix3, { widthPx, heightPx }: GreyPicture): number => {
  const [x, y] = [widthPx / 2, heightPx / 2];
  const at = placeThrough(m, x, y);
  const right = placeThrough(m, x + 1, y);
  const below = placeThrough(m, x, y + 1);
  if (!at || !right || !below) return Number.POSITIVE_INFINITY;
  const area = (right[0] - at[0]) * (below[1] - at[1]) - (right[1] - at[1]) * (below[0] - at[0]);
  return Math.abs(Math.sqrt(Math.abs(area)) - 1);
};

/** Correlation of two small pictures, −1 to 1. */
const likenessOf = (a: PyramidLevel, b: PyramidLevel): number => {
  const count = Math.min(a.grey.length, b.grey.length);
  let [sumA, sumB, aa, ab, bb] = [0, 0, 0, 0, 0];
  for (let i = 0; i < count; i++) {
    const [p, q] = [a.grey[i]!, b.grey[i]!];
    sumA += p;
    sumB += q;
    aa += p * p;
    ab += p * q;
    bb += q * q;
  }
  const varianceA = aa - (sumA * sumA) / count;
  const varianceB = bb - (sumB * sumB) / count;
  // Two blank pictures are alike; a blank one is like no other.
  if (!(varianceA > 0 && varianceB > 0)) return varianceA > 0 || varianceB > 0 ? 0 : 1;
  return (ab - (sumA * sumB) / count) / Math.sqrt(varianceA * varianceB);
};
