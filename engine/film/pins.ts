import type { FilmPoint, IcePoint } from '../units/points.ts';
import type { Lens } from './lens.ts';

/** A point of the rink, metres, and where it was found in the picture, pixels. */
export interface Pin {
  readonly id: string;
  readonly iceM: IcePoint;
  readonly filmPx: FilmPoint;
}

/** Three rows of three, row by row. */
export type Matrix3 = readonly [number, number, number, number, number, number, number, number, number];

/** How far a pin lies from where the fit would draw it: found minus drawn. */
export interface PinResidual {
  readonly pin: string;
  readonly xPx: number;
  readonly yPx: number;
  readonly byPx: number;
}

/** A pin that does not go with the others, by the test of `findDisagreement`. */
export type Disagreement =
  /** Only without this pin do the rest agree. `byPx`, `byM`: how far it is from where the rest puts it; no `byM` above the horizon. */
  | { readonly kind: 'onePin'; readonly pin: string; readonly byPx: number; readonly byM?: number }
  /** One of these is wrong, and the pins cannot tell which. */
  | { readonly kind: 'oneOf'; readonly pins: readonly string[] }
  /** No single pin explains it: several are wrong, the lens bends, or the picture is of another rink. */
  | { readonly kind: 'several' };

/** A picture tied to the ice, with what is not known about the tie. Plain values, so that it can be kept. */
export interface PinFit {
  /** film ~ filmFromIce · (xM, yM, 1). The third component is positive in front of the camera. */
  readonly filmFromIce: Matrix3;
  /** ice ~ iceFromFilm · (xPx, yPx, 1). The third component is positive below the horizon. */
  readonly iceFromFilm: Matrix3;
  /** Origin and scale in which `coefficients` are given, so that they are all of size 1. */
  readonly scaling: PinScaling;
  /** The eight free entries of the scaled matrix, row by row; the ninth is 1 at the middle of the pins. */
  readonly coefficients: readonly number[];
  /** Covariance of `coefficients`, 8 × 8, row by row. */
  readonly covariance: readonly number[];
  readonly residuals: readonly PinResidual[];
  /** √(mean of squared distances), pixels. */
  readonly rmsPx: number;
  /** Standard deviation of a pin in x and in y that the covariance stands on: the click's, or more when the pins show more. */
  readonly pinSdPx: number;
  /** True when the residuals were larger than clicks explain, and `pinSdPx` was raised to them. */
  readonly sdRaised: boolean;
  readonly disagreement?: Disagreement;
  /** Set where a lens bends the picture: the matrices then speak of the straight picture, the functions of the shown one. */
  readonly lens?: Lens;
}

export interface PinScaling {
  readonly iceXM: number;
  readonly iceYM: number;
  readonly icePerM: number;
  readonly filmXPx: number;
  readonly filmYPx: number;
  readonly filmPerPx: number;
}

export const REFUSALS = ['tooFew', 'samePlace', 'onOneLine', 'tinySpread', 'mirrored', 'noSuchView'] as const;

/**
 * Why pins cannot tie a picture to the ice. `tooFew`: under four. `samePlace`: under four different places.
 * `onOneLine`: all of them, or all but one, on one line. `tinySpread`: so close together, or so nearly on one
 * line, that a click's error turns the whole sheet. `mirrored`: the picture would be seen in a mirror.
 * `noSuchView`: the horizon would run between the pins.
 */
export type Refusal = (typeof REFUSALS)[number];

export type FitResult =
  | { readonly kind: 'fit'; readonly fit: PinFit }
  | {
      readonly kind: 'refused';
      readonly reason: Refusal;
      /** The pins the reason speaks of: those on the line, at the same place, or all. */
      readonly pins: readonly string[];
      /** What a sentence needs: how many different places there are, and how many it takes. */
      readonly placeCount: number;
      readonly neededCount: number;
    };
