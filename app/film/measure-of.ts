import {
  alongOffset,
  distanceBetween,
  type Estimate,
  type FilmPoint,
  FOOT_SD,
  FOUND_FOOT_SD,
  SURELY_SDS,
} from '@icewright/engine';
import { LENGTH_UNIT, type Lengths, lengthNumberSaid, numberSaid } from '../parts/figures.ts';
import type { Pair } from './freeze-desk.ts';
import type { FreezeView } from './freeze-view.ts';

export interface Figure {
  readonly value: string;
  readonly plusMinus: string;
}

export interface PairMeasure {
  readonly a: FilmPoint;
  readonly b: FilmPoint;
  readonly names: readonly [string, string];
  readonly distance?: Figure;
  /** Along the rink, towards the net we attack: who is ahead, or that they are level. */
  readonly along?: Figure & { readonly says: string };
}

/** Distance between two, and who is ahead, with the 95 % ± of the difference. Undefined when one of them is gone. */
export const measureOf = (view: FreezeView, [aId, bId]: Pair): PairMeasure | undefined => {
  const a = placeOf(view, aId);
  const b = placeOf(view, bId);
  if (!a || !b) return undefined;
  const names = [nameOf(view, aId), nameOf(view, bId)] as const;
  if (!view.fit) return { a, b, names };
  const sdPx = [feetSdOf(view, aId), feetSdOf(view, bId)] as const;
  const distance = distanceBetween(view.fit, a, b, sdPx);
  const along = alongOffset(view.fit, a, b, view.freeze.attacks, sdPx);
  return {
    a,
    b,
    names,
    ...(distance.kind === 'measured' ? { distance: lengthFigure(distance.lengthM, view.lengths) } : {}),
    ...(along.kind === 'measured'
      ? {
          along: {
            ...lengthFigure(absolute(along.lengthM), view.lengths),
            says: aheadWords(names, along.lengthM),
          },
        }
      : {}),
  };
};

export const placeOf = ({ freeze }: FreezeView, id: string): FilmPoint | undefined =>
  id === 'puck' ? freeze.puck?.at : freeze.skaters[id as keyof typeof freeze.skaters]?.feet;

const feetSdOf = ({ freeze }: FreezeView, id: string): number =>
  freeze.skaters[id as keyof typeof freeze.skaters]?.feetSdPx ?? FOOT_SD.value;

export const nameOf = ({ freeze }: FreezeView, id: string): string =>
  id === 'puck' ? 'the puck' : (freeze.skaters[id as keyof typeof freeze.skaters]?.role ?? 'someone gone');

export const lengthFigure = ({ value, sd }: Estimate, lengths: Lengths): Figure => ({
  value: lengthNumberSaid(value, lengths),
  plusMinus: `± ${lengthNumberSaid(SURELY_SDS * sd, lengths)} ${LENGTH_UNIT[lengths]}`,
});

/** What every measured length answers when it is asked why. */
export const measuredWhy = (view: FreezeView): string => {
  const pins = view.pins.filter(pin => !pin.leftOut).length;
  if (view.isCarried) {
    return `Measured on the ice through pins carried from frame ${view.freeze.carried?.from.join(' and ')} by following the camera. ± is 95 %: it holds the pins' own error, that of every step of the camera since, and of the feet (within ${FOOT_SD.value} px, ${FOOT_SD.status}: ${FOOT_SD.source}${foundSaid(view)}). What is shared by both counts once.`;
  }
  const sd = view.fit?.pinSdPx ?? view.freeze.clickSdPx;
  return `Measured on the ice through ${pins} pins. ± is 95 %: pins hit their marks within ${numberSaid(sd)} px${view.fit?.sdRaised ? ' (as their own residuals show)' : ''}, feet within ${FOOT_SD.value} px (${FOOT_SD.status}: ${FOOT_SD.source})${foundSaid(view)}. The pins' error is shared by both, so it counts once.`;
};

/** Who was taken from an offer has a ± of his own until a hand has moved him. */
const foundSaid = ({ freeze }: FreezeView): string =>
  Object.values(freeze.skaters).some(one => one.feetSdPx !== undefined)
    ? `, and those that were found and not moved since within ${FOUND_FOOT_SD.value} m (${FOUND_FOOT_SD.status}: ${FOUND_FOOT_SD.source})`
    : '';

const aheadWords = ([a, b]: readonly [string, string], { value, sd }: Estimate): string => {
  if (Math.abs(value) <= SURELY_SDS * sd) return `${a} level with ${b}, within the ±`;
  return value > 0 ? `${a} ahead of ${b}` : `${a} behind ${b}`;
};

const absolute = ({ value, sd }: Estimate): Estimate => ({ value: Math.abs(value), sd });
