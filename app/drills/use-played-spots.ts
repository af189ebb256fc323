import type { Drill } from '@icewright/book';
import { useRef } from 'react';
import { isSameButNames } from './same-but-names.ts';

/**
 * The spots as they were when something last changed that is computed: a new name alone plays no rep anew. Their names may be old; what
 * is said takes them from the drill itself.
 */
export function usePlayedSpots(spots: Drill['spots']): Drill['spots'] {
  const last = useRef(spots);
  if (!isSameButNames(last.current, spots)) last.current = spots;
  return last.current;
}
