/** A picture in grey, row by row, 0 (black) to 255. A film's own luma plane will do: only differences count. */
export interface GreyPicture {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly grey: Uint8Array | Uint8ClampedArray | Float32Array;
}

/** A part of the shown picture, pixels, with its right and lower edge outside it: score box, counter, a sponsor's mark. */
export interface PictureRect {
  readonly leftPx: number;
  readonly topPx: number;
  readonly rightPx: number;
  readonly bottomPx: number;
}

/** Points of the shown picture, pixels, (0, 0) the top left corner: two arrays, because thousands are followed a second. */
export interface PicturePoints {
  readonly xPx: Float64Array;
  readonly yPx: Float64Array;
}
