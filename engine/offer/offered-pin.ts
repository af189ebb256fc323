import type { FilmPoint } from '../units/points.ts';

/** A landmark found in a picture: where, pixels, and its standard deviation in the worse direction. */
export interface OfferedPin {
  readonly landmark: string;
  readonly filmPx: FilmPoint;
  readonly sdPx: number;
}
