import type { RinkPreset } from '../rink/choice.ts';
import { landmarksOf } from '../rink/landmarks.ts';
import type { Rink } from '../rink/rink.ts';
import { rinkOf } from '../rink/rink-of.ts';
import type { FilmPoint } from '../units/points.ts';
import { FAR_BETTER } from './film-rows.ts';
import { fitPins } from './fit-pins.ts';
import type { FitResult } from './pins.ts';

/** A marking by name and where it was found in the picture: no place on the ice, which hangs on the sheet. */
export interface NamedPin {
  readonly id: string;
  readonly landmark: string;
  readonly filmPx: FilmPoint;
}

/**
 * Ties a picture to this sheet by named pins; those whose marking this sheet has not are not counted. See `fitPins`.
 * `clickSdPx` > 0.
 */
export const fitPinsOn = (rink: Rink, pins: readonly NamedPin[], clickSdPx: number): FitResult => {
  const iceOf = new Map(landmarksOf(rink).map(one => [one.id, one.atM]));
  return fitPins(
    pins.flatMap(({ id, landmark, filmPx }) => {
      const iceM = iceOf.get(landmark);
      return iceM ? [{ id, iceM, filmPx }] : [];
    }),
    clickSdPx,
  );
};

export type SheetAnswer =
  | { readonly kind: 'other'; readonly sheet: RinkPreset; readonly rmsPx: number }
  | {
      readonly kind: 'none';
      /** The pins go with the sheet in use; there are too few to tell; or no other sheet explains them far better. */
      readonly reason: 'fitsAlready' | 'tooFew' | 'noneFarBetter';
    };

/** Sheets on which games are played; parts of a sheet share their markings with the whole one. */
const WHOLE_SHEETS = ['200x85ft', '60x30m', '60x26m', 'college200x100ft'] as const;

/**
 * Another whole sheet that the same pins fit far better than `rink`, or why none is named. Asked only where `rink` does not
 * explain the pins: residuals larger than the click (sd `clickSdPx`, pixels per axis), or a pin that disagrees. The
 * other sheet must explain all of them by clicks alone, with no pin disagreeing, and leave less than `FAR_BETTER` of the
 * residuals. Four pins fit any sheet: five or more on markings of both sheets are needed. Our own rule; its threshold is
 * a row.
 */
export const sheetThatFits = (pins: readonly NamedPin[], rink: Rink, clickSdPx: number): SheetAnswer => {
  if (pins.length < 5) return { kind: 'none', reason: 'tooFew' };
  const here = fitPinsOn(rink, pins, clickSdPx);
  if (here.kind === 'refused' && here.reason !== 'noSuchView') return { kind: 'none', reason: 'tooFew' };
  if (here.kind === 'fit' && explains(here)) return { kind: 'none', reason: 'fitsAlready' };
  const rmsHerePx = here.kind === 'fit' ? here.fit.rmsPx : Number.POSITIVE_INFINITY;
  const best = WHOLE_SHEETS.flatMap(sheet => {
    const result = fitPinsOn(rinkOf({ preset: sheet }), pins, clickSdPx);
    const isWhole = result.kind === 'fit' && result.fit.residuals.length === pins.length;
    return isWhole && explains(result) ? [{ sheet, rmsPx: result.fit.rmsPx }] : [];
  }).sort((a, b) => a.rmsPx - b.rmsPx)[0];
  return best && best.rmsPx < FAR_BETTER.value * rmsHerePx
    ? { kind: 'other', ...best }
    : { kind: 'none', reason: 'noneFarBetter' };
};

const explains = ({ fit }: Extract<FitResult, { kind: 'fit' }>): boolean =>
  !fit.sdRaised && fit.disagreement === undefined;
