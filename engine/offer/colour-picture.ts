/** A picture in colour as a canvas hands it out: row by row, red, green, blue and an unused fourth byte, 0 to 255. */
export interface ColourPicture {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly rgba: Uint8Array | Uint8ClampedArray;
}
