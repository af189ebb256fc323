import type { Pen } from './pen.ts';

/** Marks grow from here on, so there is less room between them. */
export const SMALL_FROM_K = 1.3;

/** A drawing of a list or of paper, whose marks are larger than true. */
export const isSmall = (pen: Pen): boolean => pen.k >= SMALL_FROM_K;
