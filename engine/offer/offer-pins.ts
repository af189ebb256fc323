import type { ColourPicture } from '../film/colour-picture.ts';
import { fitPins } from '../film/fit-pins.ts';
import type { FitResult, PinFit } from '../film/pins.ts';
import { landmarksOf } from '../rink/landmarks.ts';
import type { Rink } from '../rink/rink.ts';
import { rinkOf } from '../rink/rink-of.ts';
import type { IcePoint } from '../units/points.ts';
import { type EndsKnown, endsOf, type KnownEnds } from './ends-of.ts';
import { type FoundView, findViews } from './find-views.ts';
import { type GivenPin, givenBeside, turnedBy } from './given-pins.ts';
import { measuredPins } from './measured-pins.ts';
import { normalisedMap } from './normalised-map.ts';
import {
  CLEAR_LEAD,
  FIT_NEAR_VIEW,
  LEAST_OFFER_SCORE,
  LEAST_OFFERED,
  LEAST_SEEN_SHARE,
  LEAST_SEEN_WITH_PINS,
  LOOSEST_OFFER,
  OFFER_CLICK,
  OTHER_SHEET,
} from './offer-rows.ts';
import type { OfferedPin } from './offered-pin.ts';
import { featuresOf, type PictureFeatures } from './picture-features.ts';
import { pinsWithEnds } from './pins-with-ends.ts';
import { apartM } from './same-view.ts';
import { medianReachM } from './view-reach.ts';

/** What was found in a picture, counted: for a sentence. */
export interface FoundCounts {
  readonly spots: number;
  readonly circles: number;
  readonly lines: number;
}

export const NO_OFFER_REASONS = [
  'noIce',
  'tooLittle',
  'noView',
  'twoViews',
  'otherSheet',
  'tooFewPins',
  'pinsDisagree',
  'tooLoose',
] as const;

/**
 * Why no pins are offered. `noIce`: no ice found. `tooLittle`: too few markings to guess a view. `noView`: no view of this sheet explains them.
 * `twoViews`: two different views do nearly as well. `otherSheet`: the markings of the
 * other kind of sheet (feet or metres) explain the paint better. `tooFewPins`: the view is found, but too few landmarks are seen clearly. `pinsDisagree`:
 * those that are do not agree with each other or with the view. `tooLoose`: they would leave too large a ±.
 */
export type NoOfferReason = (typeof NO_OFFER_REASONS)[number];

export type PinsOffer =
  | {
      readonly kind: 'offered';
      readonly pins: readonly OfferedPin[];
      /** Ice in metres to pixels, as the pins give it. */
      readonly fit: PinFit;
      /** How it is known which end is which; `open` where it has to be asked: then the half turn (`turnedEnds`) is as good. */
      readonly ends: EndsKnown;
      /** Half of the ice in view is known within this, metres (√ of both variances). */
      readonly reachM: number;
      readonly found: FoundCounts;
    }
  | { readonly kind: 'none'; readonly reason: NoOfferReason; readonly found: FoundCounts };

/**
 * Candidate pins for a picture: landmarks of the sheet whose own markings were found and measured in it, never such as only follow from others. None, with
 * the reason, unless one view explains the picture clearly better than every other, and the pins together agree with it. `known` helps to tell
 * the two ends apart; its pins are taken as given where no view is found without them, or several. Needs about 1280 × 720 pixels; a second or so. Source: our own rule; its parts name theirs.
 */
export const offerPins = (
  picture: ColourPicture,
  rink: Rink,
  known: KnownEnds = {},
  onProgress: (share: number) => void = () => {},
): PinsOffer => {
  const features = featuresOf(picture, rink);
  onProgress(0.4);
  if (features === null) return { kind: 'none', reason: 'noIce', found: { spots: 0, circles: 0, lines: 0 } };
  const { spots, circles, blueLines, redLines, paint, ice } = features;
  const found = {
    spots: spots.length,
    circles: circles.length,
    lines: blueLines.length + redLines.length,
  };
  const none = (reason: NoOfferReason): PinsOffer => ({ kind: 'none', reason, found });
  const { views, leastSeen } = viewsOf(rink, features, known.pins ?? []);
  const [best, second] = views;
  onProgress(0.6);
  if (best === undefined) return none('tooLittle');
  if (!isGood(best, leastSeen)) return none('noView');
  if (second !== undefined && second.score > best.score - CLEAR_LEAD.value * Math.abs(best.score))
    return none('twoViews');
  const [other] = findViews(otherKindOf(rink), features);
  if (other !== undefined && other.score > OTHER_SHEET.value * best.score) return none('otherSheet');
  onProgress(0.9);
  const pins = measuredPins(rink, best.map, paint, ice.inside);
  const beside = givenBeside(best.map, known.pins ?? [], pins, paint);
  if (pins.length === 0 || pins.length + beside.length < LEAST_OFFERED.value) return none('tooFewPins');
  const result = fitOf(rink, pins, beside);
  if (result.kind === 'refused') return none('tooFewPins');
  const { fit } = result;
  if (fit.disagreement !== undefined) return none('pinsDisagree');
  if (apartM(normalisedMap(fit.filmFromIce, picture), best.map, paint, ice.inside) > FIT_NEAR_VIEW.value)
    return none('pinsDisagree');
  const reachM = medianReachM(fit, rink, paint, ice.inside);
  if (!(reachM < LOOSEST_OFFER.value)) return none('tooLoose');
  const ends = endsOf(rink, best, features, known);
  const turned = pinsWithEnds(pins, ends.isTurned);
  const besideTurned = beside.map(({ iceM, filmPx }) => ({ iceM: turnedBy(-1, iceM), filmPx }));
  const final = ends.isTurned ? fitOf(rink, turned, besideTurned) : result;
  if (final.kind === 'refused') return none('tooFewPins');
  onProgress(1);
  return { kind: 'offered', pins: turned, fit: final.fit, ends: ends.known, reachM, found };
};

/**
 * The views that agree with the pins that are given, unless the paint alone speaks clearly for another: then a pin is wrong, and it is told
 * which lie elsewhere.
 */
const viewsOf = (
  rink: Rink,
  features: PictureFeatures,
  given: readonly GivenPin[],
): { readonly views: readonly FoundView[]; readonly leastSeen: number } => {
  const byPaint = { views: findViews(rink, features), leastSeen: LEAST_SEEN_SHARE.value };
  if (given.length === 0) return byPaint;
  const byPins = { views: findViews(rink, features, given), leastSeen: LEAST_SEEN_WITH_PINS.value };
  const [paint, pins] = [byPaint.views[0], byPins.views[0]];
  if (pins === undefined || !isGood(pins, byPins.leastSeen)) return byPaint;
  const isClearer =
    paint !== undefined &&
    isGood(paint, byPaint.leastSeen) &&
    pins.score <= paint.score - CLEAR_LEAD.value * Math.abs(paint.score);
  return isClearer ? byPaint : byPins;
};

/** The sheet of the other rule book: their markings differ by half a metre and more. */
const otherKindOf = ({ code }: Rink): Rink => rinkOf({ preset: code === 'NHL-type' ? '60x30m' : '200x85ft' });

const isGood = ({ score, support }: FoundView, leastSeen: number): boolean =>
  score > LEAST_OFFER_SCORE.value &&
  support.seen > leastSeen * (support.seen + support.missing) &&
  support.spotsSeen >= support.spotsMissing;

/** By the measured pins, and those of the coach beside them. */
const fitOf = (rink: Rink, pins: readonly OfferedPin[], beside: readonly GivenPin[]): FitResult => {
  const iceOf = new Map<string, IcePoint>(landmarksOf(rink).map(one => [one.id, one.atM]));
  const measured = pins.map(({ landmark, filmPx }) => ({ id: landmark, iceM: iceOf.get(landmark)!, filmPx }));
  const given = beside.map(({ iceM, filmPx }, i) => ({ id: `given ${i}`, iceM, filmPx }));
  return fitPins([...measured, ...given], OFFER_CLICK.value);
};
