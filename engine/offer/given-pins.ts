import type { FilmPoint, IcePoint } from '../units/points.ts';
import { GIVEN_NEAR } from './view-rows.ts';

/** A pin that somebody has put: where its marking lies on the ice, metres, and in the picture, pixels. */
export interface GivenPin {
  readonly iceM: IcePoint;
  readonly filmPx: FilmPoint;
}

/** Where a map (ice in metres to a picture of half diagonal 1) draws a place, pixels; null behind the camera. Source: by definition. */
export const drawnBy = (
  m: ArrayLike<number>,
  { xM, yM }: IcePoint,
  { widthPx, heightPx }: { readonly widthPx: number; readonly heightPx: number },
): FilmPoint | null => {
  const halfDiagonal = Math.hypot(widthPx, heightPx) / 2;
  const w = m[6]! * xM + m[7]! * yM + m[8]!;
  return w > 0
    ? {
        xPx: (halfDiagonal * (m[0]! * xM + m[1]! * yM + m[2]!)) / w + widthPx / 2,
        yPx: (halfDiagonal * (m[3]! * xM + m[4]! * yM + m[5]!)) / w + heightPx / 2,
      }
    : null;
};

/** Whether a map draws all pins where they were put, with the sheet as it is or turned by half. Source: our own rule. */
export const agreesWith = (...of: Parameters<typeof signOfGiven>): boolean => signOfGiven(...of) !== null;

/** 1 where a map draws all pins where they were put, −1 where it does with the sheet turned by half, null where neither. Source: our own rule. */
export const signOfGiven = (
  map: ArrayLike<number>,
  given: readonly GivenPin[],
  picture: { readonly widthPx: number; readonly heightPx: number },
): 1 | -1 | null => {
  const isDrawnThere = (sign: 1 | -1): boolean =>
    given.every(({ iceM, filmPx }) => {
      const drawn = drawnBy(map, turnedBy(sign, iceM), picture);
      return drawn !== null && apartPx(drawn, filmPx) <= GIVEN_NEAR.value;
    });
  return isDrawnThere(1) ? 1 : isDrawnThere(-1) ? -1 : null;
};

/** A place of the ice, metres, or the same after a half turn of the sheet. By definition. */
export const turnedBy = (sign: 1 | -1, { xM, yM }: IcePoint): IcePoint => ({ xM: sign * xM, yM: sign * yM });

/** Given pins, as a map draws them, of which none of the measured ones is one: `[]` where the map does not agree with all. Source: our own rule. */
export const givenBeside = (
  map: ArrayLike<number>,
  given: readonly GivenPin[],
  measured: readonly { readonly filmPx: FilmPoint }[],
  picture: { readonly widthPx: number; readonly heightPx: number },
): GivenPin[] => {
  const sign = signOfGiven(map, given, picture);
  if (sign === null) return [];
  return given
    .filter(pin => measured.every(one => apartPx(one.filmPx, pin.filmPx) > GIVEN_NEAR.value))
    .map(({ iceM, filmPx }) => ({ iceM: turnedBy(sign, iceM), filmPx }));
};

const apartPx = (a: FilmPoint, b: FilmPoint): number => Math.hypot(a.xPx - b.xPx, a.yPx - b.yPx);
