import { useSyncExternalStore } from 'react';

/** True while the window is narrower than this, px: for layouts that differ in more than their style. */
export function useIsNarrow(widthPx: number): boolean {
  return useMatches(`(max-width: ${widthPx - 1}px)`);
}

/** True where a finger is what points: things to press are drawn as large as one. */
export function useIsCoarse(): boolean {
  return useMatches('(pointer: coarse)');
}

function useMatches(query: string): boolean {
  return useSyncExternalStore(
    listener => {
      const list = window.matchMedia(query);
      list.addEventListener('change', listener);
      return () => list.removeEventListener('change', listener);
    },
    () => window.matchMedia(query).matches,
  );
}
