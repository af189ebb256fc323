/** What can come out one way or the other in a rep. */
export type Occasion = 'passDirection' | 'passSpeed' | 'control' | 'contest' | 'shot';

/**
 * One draw of everything human in a rep besides the skaters' own powers. `uniform` in [0, 1) and `normal` (mean 0, standard
 * deviation 1) are asked by who (index of the spot), what, and the how-manieth time this rep. The same question always has the
 * same answer, whatever else was asked: so two plans are compared with the same luck (common random numbers).
 */
export interface Chance {
  readonly uniform: (spotIndex: number, occasion: Occasion, nth: number) => number;
  readonly normal: (spotIndex: number, occasion: Occasion, nth: number) => number;
}
