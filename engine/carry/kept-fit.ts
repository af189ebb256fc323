import type { PinFit, PinScaling } from '../film/pins.ts';
import { fitOfMap, mapOfFit } from './carry-fit.ts';
import type { ScaledMap } from './scaled-map.ts';

/** A carried fit in few plain numbers, to be kept with the picture it holds. */
export interface KeptFit {
  readonly scaling: PinScaling;
  /** Eight numbers. */
  readonly coefficients: readonly number[];
  /** 8 × 8, row by row. */
  readonly covariance: readonly number[];
  /** The pins' own sd in the picture they were put in, pixels. */
  readonly pinSdPx: number;
  /** The lens's one term; 0 for none. */
  readonly lensK1: number;
}

/** What is to be kept of a fit that was carried to a picture. Source: plain copy, our own form. */
export const keptFitOf = ({ scaling, coefficients, covariance, pinSdPx, lens }: PinFit): KeptFit => ({
  scaling: { ...scaling },
  coefficients: [...coefficients],
  covariance: [...covariance],
  pinSdPx,
  lensK1: lens?.k1 ?? 0,
});

/**
 * The fit that was kept, for a picture of the size it was carried to, pixels (> 0). It has no pins of its own, so no residuals. Throws when the
 * numbers are not eight and sixty-four. Source: as `keptFitOf`.
 */
export const fitOfKept = (
  kept: KeptFit,
  picture: { readonly widthPx: number; readonly heightPx: number },
): PinFit => {
  if (kept.coefficients.length !== 8 || kept.covariance.length !== 64) {
    throw new Error(
      `a kept fit has 8 and 64 numbers, not ${kept.coefficients.length} and ${kept.covariance.length}`,
    );
  }
  const map: ScaledMap = mapOfFit(kept);
  const fit = fitOfMap(map, { residuals: [], rmsPx: 0, pinSdPx: kept.pinSdPx, sdRaised: false });
  const { widthPx, heightPx } = picture;
  return kept.lensK1 === 0 ? fit : { ...fit, lens: { k1: kept.lensK1, widthPx, heightPx } };
};
