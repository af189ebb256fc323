import { iceFromFilm } from '../film/ice-from-film.ts';
import type { PinFit } from '../film/pins.ts';
import type { FilmPoint, IcePoint } from '../units/points.ts';
import { bodyPatch, bodyWeights, GRID_M, groundGrey } from './body-patch.ts';
import type { FrameCrop } from './frame-crop.ts';
import { type BodyLook, lookOf, matchBody, type Sought } from './match-body.ts';
import type { WayPoint } from './smooth-way.ts';
import { EDGE_NEAR, FAR_FROM_GUESS, FIRST_LOOK_KEPT, MOST_UNLIKE, TEMPLATE_KEPT } from './track-rows.ts';
import { type Upright, uprightAt } from './upright.ts';

/** A frame of a stretch in which a skater is looked for: what of it was kept, and its tie; absent where there is none. */
export interface SoughtFrame {
  readonly frameIndex: number;
  readonly timeS: number;
  readonly crop: FrameCrop | null;
  readonly fit: PinFit | null;
  readonly widthPx: number;
  readonly heightPx: number;
}

/** Where a skater was found in one frame. */
export interface FoundPlace {
  readonly frameIndex: number;
  readonly timeS: number;
  readonly atM: IcePoint;
  readonly footPx: FilmPoint;
  /** Seconds from the hand frame it was followed from. */
  readonly sinceS: number;
  /** Seconds of these in which he was not seen. */
  readonly unseenS: number;
  readonly unlike: number;
}

/**
 * Follows a body from the first of some frames, where a hand put its feet, through the others in their order (forward or backward in time): what it
 * looked like there and lately is looked for near where its speed takes it, in the picture with the camera's move taken out by the
 * ties. `guessAt` is what the hands alone say of a time: where the body was out of sight it is looked for there, and what is found too far from
 * it is not believed, nor is one at the edge of the picture, where half a body and a line of the ice look alike. A way that leads to no other hand (`isOpen`) ends
 * where the body leaves the picture or is lost: nothing tells where it would be taken up again. Source: our own; a remembered template as Matthews, Ishikawa & Baker 2004, The Template Update Problem (from memory).
 */
export const followOneWay = (
  frames: readonly SoughtFrame[],
  startPx: FilmPoint,
  guessAt: (timeS: number) => WayPoint,
  isOpen: boolean,
): FoundPlace[] => {
  const [first] = frames;
  const begun = first && beginAt(first, startPx);
  if (!begun) return [];
  const { look, atM: startM } = begun;
  let recent = look;
  let [xM, yM] = [startM.xM, startM.yM];
  let { xMps, yMps } = guessAt(first.timeS).velocityMps;
  let lastS = first.timeS;
  let outS = 0;
  let unseenS = 0;
  const found: FoundPlace[] = [];
  for (const frame of frames.slice(1)) {
    const stepS = frame.timeS - lastS;
    lastS = frame.timeS;
    const guess = guessAt(frame.timeS);
    xM += xMps * stepS;
    yM += yMps * stepS;
    if (outS > COAST_S) {
      [xM, yM] = [guess.atM.xM, guess.atM.yM];
      ({ xMps, yMps } = guess.velocityMps);
    }
    const margin = outS === 0 ? MARGIN : Math.min(2 * MARGIN, MARGIN + Math.round(outS * MARGIN_PER_S));
    const place = placeIn(
      frame,
      { xM, yM },
      bothLooks(look, recent, Math.abs(frame.timeS - first.timeS)),
      margin,
    );
    const isLeaving = isAtEdge(frame, place ?? uprightIn(frame, { xM, yM }));
    if (isOpen && isLeaving) break;
    if (!place || isLeaving || place.unlike > MOST_UNLIKE.value || isFar(place.atM, guess)) {
      outS += Math.abs(stepS);
      unseenS += Math.abs(stepS);
      if (isOpen && outS > COAST_S) break;
      continue;
    }
    const [missX, missY] = [place.atM.xM - xM, place.atM.yM - yM];
    // Taken up again, it need not have gone from where it was thought to be.
    const speedGain = outS > 0 ? 0 : SPEED_GAIN;
    xM += PLACE_GAIN * missX;
    yM += PLACE_GAIN * missY;
    xMps += (speedGain * missX) / stepS;
    yMps += (speedGain * missY) / stepS;
    outS = 0;
    recent = remembered(recent, place.patch, Math.abs(stepS));
    found.push({
      frameIndex: frame.frameIndex,
      timeS: frame.timeS,
      atM: place.atM,
      footPx: place.footPx,
      sinceS: Math.abs(frame.timeS - first.timeS),
      unseenS,
      unlike: place.unlike,
    });
  }
  return found;
};

/** A steady tracker: most of a miss is his place, a little of it his speed. */
const PLACE_GAIN = 0.7;
const SPEED_GAIN = 0.15;
/** Samples all round the foretold place that are searched; more while he is out of sight. */
const MARGIN = 6;
const MARGIN_PER_S = 20;
/** So long he is thought to go on as he went. */
const COAST_S = 0.25;

const uprightIn = ({ fit }: SoughtFrame, atM: IcePoint): Upright | null => fit && uprightAt(fit, atM);

/** Feet beside or below the picture, or so near its sides that less than the body's middle is in it. */
const isAtEdge = (
  { fit, widthPx, heightPx }: SoughtFrame,
  place: { readonly footPx: FilmPoint; readonly acrossPx: Upright['acrossPx'] } | null,
): boolean => {
  if (!fit || !place) return false;
  const { footPx, acrossPx } = place;
  const sidePx = EDGE_NEAR.value * Math.hypot(...acrossPx);
  return footPx.xPx < sidePx || footPx.xPx > widthPx - sidePx || footPx.yPx < 0 || footPx.yPx > heightPx;
};
const isFar = ({ xM, yM }: IcePoint, { atM, covariance }: WayPoint): boolean =>
  Math.hypot(xM - atM.xM, yM - atM.yM) >
  NEAR_M + FAR_FROM_GUESS.value * Math.sqrt(Math.max(covariance[0]!, covariance[5]!));
const NEAR_M = 0.3;

/** What it looked like when a hand put it counts for less the longer that is ago. */
const bothLooks = (first: BodyLook, recent: BodyLook, sinceS: number): Sought[] => {
  const share = Math.exp(-sinceS / FIRST_LOOK_KEPT.value) / 2;
  return [
    { look: first, share },
    { look: recent, share: 1 - share },
  ];
};

const beginAt = (
  { crop, fit }: SoughtFrame,
  startPx: FilmPoint,
): { look: BodyLook; atM: IcePoint } | undefined => {
  const placed = fit && iceFromFilm(fit, startPx);
  if (!crop || !fit || placed?.kind !== 'placed') return undefined;
  const upright = uprightAt(fit, placed.atM);
  const look = upright && lookIn(bodyPatch(crop, { ...upright, footPx: startPx }, 0));
  return look ? { look, atM: placed.atM } : undefined;
};

const lookIn = (patch: Float32Array): BodyLook | undefined => {
  const ground = groundGrey(patch);
  return Number.isNaN(ground) ? undefined : lookOf(patch, bodyWeights(patch, ground), ground);
};

const placeIn = (
  { crop, fit }: SoughtFrame,
  foretoldM: IcePoint,
  looks: readonly Sought[],
  margin: number,
):
  | (Pick<FoundPlace, 'atM' | 'footPx' | 'unlike'> & { acrossPx: Upright['acrossPx']; patch: Float32Array })
  | undefined => {
  const upright = crop && fit && uprightAt(fit, foretoldM);
  if (!crop || !fit || !upright) return undefined;
  const match = matchBody(looks, bodyPatch(crop, upright, margin), margin);
  if (!match) return undefined;
  const [across, up] = [match.across * GRID_M, match.up * GRID_M];
  const footPx = {
    xPx: upright.footPx.xPx + across * upright.acrossPx[0] + up * upright.upPx[0],
    yPx: upright.footPx.yPx + across * upright.acrossPx[1] + up * upright.upPx[1],
  };
  const placed = iceFromFilm(fit, footPx);
  if (placed.kind === 'none') return undefined;
  const { acrossPx } = upright;
  const patch = bodyPatch(crop, { ...upright, footPx }, 0);
  return { atM: placed.atM, footPx, acrossPx, unlike: match.unlike, patch };
};

const remembered = (recent: BodyLook, patch: Float32Array, stepS: number): BodyLook => {
  const share = 1 - Math.exp(-stepS / TEMPLATE_KEPT.value);
  const grey = recent.grey.map((value, i) => {
    const now = patch[i]!;
    return Number.isNaN(now) ? value : Number.isNaN(value) ? now : value + share * (now - value);
  });
  return lookIn(grey) ?? recent;
};
