import { letteringOf } from '../lettering.ts';
import { letterWidth } from './letter-widths.ts';
import type { Pen } from './pen.ts';
import { letterSize } from './stroke-set.ts';

/** What words are measured with before there is a pen: as every pen measures on a page in points. */
export type Measure = Pick<Pen, 'measure'>;

const PAPER = { k: 1, thinFloor: 0, turnRad: 0 };

export const PAPER_MEASURE: Measure = {
  measure: (lettering, words, size) =>
    letterWidth(words, letteringOf(lettering)) * letterSize(lettering, PAPER, size),
};
