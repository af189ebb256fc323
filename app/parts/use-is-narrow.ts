import { useCallback, useMemo, useSyncExternalStore } from 'react';

/**
 * True while the window is narrower than this, px at letters of 16 px: for layouts that differ in more than their style.
 * As in the style sheets it is asked in letters, so that a reader with larger ones has the layout they have room in.
 */
export function useIsNarrow(widthPx: number): boolean {
  return useMatches(`(max-width: ${(widthPx - 1) / LETTER_PX}em)`);
}

/** True while the window is lower than this, px, as an enlarged page is: what stands above the work must be short. */
export function useIsShort(heightPx: number): boolean {
  return useMatches(`(max-height: ${(heightPx - 1) / LETTER_PX}em)`);
}

const LETTER_PX = 16;

/** True where a finger is what points: things to press are drawn as large as one. */
export function useIsCoarse(): boolean {
  return useMatches('(pointer: coarse)');
}

/** Listens once: a page that is drawn anew at every move of a hand must not ask the window each time. */
function useMatches(query: string): boolean {
  const list = useMemo(() => window.matchMedia(query), [query]);
  const listen = useCallback(
    (listener: () => void) => {
      list.addEventListener('change', listener);
      return () => list.removeEventListener('change', listener);
    },
    [list],
  );
  return useSyncExternalStore(listen, () => list.matches);
}
