import { useSyncExternalStore } from 'react';

/** True while the window is narrower than this, px: for layouts that differ in more than their style. */
export function useIsNarrow(widthPx: number): boolean {
  const query = `(max-width: ${widthPx - 1}px)`;
  return useSyncExternalStore(
    listener => {
      const list = window.matchMedia(query);
      list.addEventListener('change', listener);
      return () => list.removeEventListener('change', listener);
    },
    () => window.matchMedia(query).matches,
  );
}
