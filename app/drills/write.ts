import type { Drill, Path } from '@icewright/book';
import { planAfter } from '@icewright/engine';

/**
 * One change of a drill, as it will be written into the document: the value at a path, or nothing when it goes.
 * The same writes make the preview under the hand and the change that is kept, so that both are one thing.
 */
export interface Write {
  readonly path: Path;
  readonly value: unknown;
}

/** The drill as it would stand after these writes. Parts that do not change keep their identity. */
export const afterWrites = (drill: Drill, writes: readonly Write[]): Drill => planAfter(drill, writes);
