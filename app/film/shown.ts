/** What is drawn over the picture and on the map besides the pins and the people. */
export interface Shown {
  /** The sheet's own lines, drawn faintly where the pins put them: do they lie on the paint? */
  readonly paint: boolean;
  readonly ellipses: boolean;
  /** Passing lanes of the carrier: none, those of one team mate, or all. */
  readonly lanes: 'none' | 'all' | string;
}
