/** A picture in colours as shown, row by row: red, green, blue and a byte that is not read, each 0 to 255. */
export interface ColourPicture {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly rgba: Uint8Array | Uint8ClampedArray;
}
