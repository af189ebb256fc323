/** What is drawn over the picture and on the map besides the pins and the people. */
export interface Shown {
  /** The sheet's own lines, drawn faintly where the pins put them: do they lie on the paint? */
  readonly paint: boolean;
  readonly ellipses: boolean;
  /** Options of the carrier that are drawn, by `optionKey`; undefined: the best pass. */
  readonly options?: readonly string[];
}
