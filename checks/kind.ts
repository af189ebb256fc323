import type { Compare } from './compare.ts';
import type { Fields } from './fields.ts';

/** A case as a kind sees it. `tolerance` is the file's own; a kind names the entry it uses and what holds without it. */
export interface KindCase {
  readonly input: Fields;
  readonly expected: Fields;
  readonly tolerance: Fields;
}

/**
 * Computes a case with the engine and compares. Two kinds may share a name in different files (a fit of gate times, a fit
 * of pins): `fits` then tells by the input's shape.
 */
export interface Kind {
  readonly name: string;
  readonly fits?: (input: Fields) => boolean;
  readonly run: (check: KindCase, compare: Compare) => void;
}
