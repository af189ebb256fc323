import { landmarksOf } from '../rink/landmarks.ts';
import type { Rink } from '../rink/rink.ts';
import type { FilmPoint, IcePoint } from '../units/points.ts';
import { iceDoubtOf, placeTells } from './ice-doubt.ts';
import { LEAST_OFFERED, MOST_OFFERED, NEAR_PIN, NEAR_PIN_WORTH, OFFER_CLICK } from './offer-rows.ts';
import type { OfferedPin } from './offered-pin.ts';

/**
 * Those of the pins that together tell most about the ice in view, in the order they were taken: always the one that leaves the mean
 * variance of `placesPx` on the ice smallest, first such as stand alone. One near another says much the same and is taken only where it still lowers
 * that variance by a good share, or where there would be too few. `map` is the ice in metres to a picture of half diagonal 1. Source: greedy
 * choice by the mean variance of what is foretold (I-optimal design), Atkinson, Donev & Tobias 2007, Optimum Experimental Designs, ch. 10 (from memory).
 */
export const tellingPins = (
  rink: Rink,
  pins: readonly OfferedPin[],
  map: Float64Array,
  placesPx: readonly FilmPoint[],
  size: { readonly widthPx: number; readonly heightPx: number },
): OfferedPin[] => {
  const places = new Map(landmarksOf(rink).map(({ id, atM }) => [id, atM]));
  const atM = ({ landmark }: OfferedPin): IcePoint => places.get(landmark)!;
  const halfPx = Math.hypot(size.widthPx, size.heightPx) / 2;
  const doubt = iceDoubtOf(rink, map, placesPx, size);
  const rest = pins.map(pin => ({
    pin,
    tells: placeTells(pin.filmPx, size),
    variance: (OFFER_CLICK.value ** 2 + pin.sdPx ** 2) / halfPx ** 2,
  }));
  const taken: OfferedPin[] = [];
  while (taken.length < MOST_OFFERED.value && rest.length > 0) {
    const judged = rest.map((one, rank) => ({
      rank,
      share: doubt.loweredBy(one.tells, one.variance),
      isNear: taken.some(other => apartM(atM(other), atM(one.pin)) < NEAR_PIN.value),
    }));
    const alone = judged.filter(({ isNear }) => !isNear);
    const worthIt = taken.length < LEAST_OFFERED.value ? 0 : NEAR_PIN_WORTH.value;
    const choice = alone.length > 0 ? alone : judged.filter(({ share }) => share >= worthIt);
    if (choice.length === 0) break;
    const { rank } = choice.reduce((best, one) => (one.share > best.share ? one : best));
    const [best] = rest.splice(rank, 1);
    doubt.told(best!.tells, best!.variance);
    taken.push(best!.pin);
  }
  return taken;
};

const apartM = (a: IcePoint, b: IcePoint): number => Math.hypot(a.xM - b.xM, a.yM - b.yM);
