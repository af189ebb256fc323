import type { Drill } from '@icewright/book';
import type { Write } from './write.ts';

/**
 * Whether what a hand would write still has its place: somebody else, or undo, may have taken the skater, the act or the puck off
 * while it is held. Written all the same it would leave half a thing, which is no drill.
 */
export const stillFits = (drill: Drill, writes: readonly Write[]): boolean =>
  writes.every(({ path }) => {
    let part: unknown = drill;
    for (const key of path.slice(0, -1)) {
      if (typeof part !== 'object' || part === null) return false;
      part = (part as Record<string, unknown>)[key];
    }
    return typeof part === 'object' && part !== null;
  });
