import type { ActDeed } from '../drill/drill.ts';
import type { PuckPath } from '../puck/path-parts.ts';
import type { Saucer } from '../puck/saucer.ts';

export type PassDeed = Extract<ActDeed, { kind: 'pass' }>;

/** How a pass leaves: its path, and when it meets the blade (seconds after the release; NaN when it cannot). */
export interface PassAim {
  readonly path: PuckPath;
  readonly meetsAfterS: number;
  /** How it flies, for one that goes through the air first. */
  readonly saucer?: Saucer;
}
