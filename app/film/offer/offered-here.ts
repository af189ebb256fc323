import { type FilmPoint, filmFromIce, type OfferedPin, type PinFit, turnedLandmark } from '@icewright/engine';
import { type FreezeView, freezeViewOf, type PinView } from '../freeze-view.ts';
import { landmarkWords } from '../landmark-words.ts';

/** A candidate as the room shows it. */
export interface Candidate {
  readonly landmark: string;
  readonly words: string;
  readonly at: FilmPoint;
  readonly sdPx: number;
}

/** What an offer comes to beside the pins that are there. */
export interface OfferedHere {
  readonly adds: readonly Candidate[];
  /** Pins of this picture that lie elsewhere than the offer puts their marks. */
  readonly disagree: readonly PinView[];
}

/** The half turn of a tie: the same picture with the ends of the sheet turned round. */
export const turnedFit = (fit: PinFit): PinFit => {
  const [a, b, c, d, e, f, g, h, i] = fit.filmFromIce;
  return { ...fit, filmFromIce: [-a, -b, c, -d, -e, f, -g, -h, i] };
};

/**
 * Candidates that are not pinned yet, named with the ends as offered or turned, and the counted pins that lie farther from
 * where the offer draws their marks than a click explains. When most of them do, nothing is added: one of the two is wrong.
 */
export const offeredHere = (
  pins: readonly OfferedPin[],
  fit: PinFit,
  isTurned: boolean,
  view: Pick<FreezeView, 'pins' | 'freeze'>,
): OfferedHere => {
  const drawnBy = isTurned ? turnedFit(fit) : fit;
  const counted = view.pins.filter(pin => !pin.leftOut && pin.iceM);
  const farPx = Math.max(LEAST_FAR_PX, FAR_CLICKS * view.freeze.clickSdPx);
  const disagree = counted.filter(pin => {
    const drawn = pin.iceM && filmFromIce(drawnBy, pin.iceM);
    return !drawn || Math.hypot(drawn.xPx - pin.at.xPx, drawn.yPx - pin.at.yPx) > farPx;
  });
  const pinned = new Set(view.pins.map(pin => pin.landmark));
  const adds = pins
    .map(({ landmark, filmPx, sdPx }) => ({
      landmark: isTurned ? turnedLandmark(landmark) : landmark,
      at: filmPx,
      sdPx,
    }))
    .filter(({ landmark }) => !pinned.has(landmark))
    .map(one => ({ ...one, words: landmarkWords(one.landmark) }))
    .sort((a, b) => a.words.localeCompare(b.words));
  return { adds: 2 * disagree.length > counted.length ? [] : adds, disagree };
};

/** How well the picture would be held with these accepted: reckoned as it is once they are. */
export const heldWith = (
  wanted: readonly Candidate[],
  { freeze, rink }: Pick<FreezeView, 'freeze' | 'rink'>,
): FreezeView['held'] => {
  const added = wanted.map(({ landmark, at }) => [`offered ${landmark}`, { landmark, at, leftOut: false }]);
  return freezeViewOf({ ...freeze, pins: { ...freeze.pins, ...Object.fromEntries(added) } }, rink).held;
};

/** A pin nearer than this may be a click beside its mark. */
const LEAST_FAR_PX = 5;
const FAR_CLICKS = 5;
