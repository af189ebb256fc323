import type { Moment } from '@icewright/book';

/** A moment in which one of ours could have done it, or missed it. What the others did is none, until somebody has seen in it that ours did. */
export const isChance = ({ ofOthers, verdict }: Pick<Moment, 'ofOthers' | 'verdict'>): boolean =>
  ofOthers !== true || verdict !== 'cannotSee';
