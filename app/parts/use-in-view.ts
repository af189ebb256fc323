import { type RefObject, useEffect, useState, useSyncExternalStore } from 'react';

/** What is this near to the window is as good as in it: it is ready when somebody gets there. */
const NEAR = '160px 0px';

/** Which children of a list are in the window, or nearly; `of` changes with the list. */
export function useChildrenInView(list: RefObject<HTMLElement | null>, of: unknown): ReadonlySet<number> {
  const [inView, setInView] = useState<ReadonlySet<number>>(NONE);
  // biome-ignore lint/correctness/useExhaustiveDependencies: other children are to be watched
  useEffect(() => {
    const children = [...(list.current?.children ?? [])];
    const seen = new Set<number>();
    const observer = new IntersectionObserver(
      entries => {
        for (const { target, isIntersecting } of entries) {
          const index = children.indexOf(target);
          if (isIntersecting) seen.add(index);
          else seen.delete(index);
        }
        setInView(new Set(seen));
      },
      { rootMargin: NEAR },
    );
    for (const child of children) observer.observe(child);
    return () => {
      observer.disconnect();
      setInView(NONE);
    };
  }, [list, of]);
  return inView;
}

/** False while the window is behind another one, or its screen is off. */
export function useIsPageShown(): boolean {
  return useSyncExternalStore(listenToShown, () => document.visibilityState !== 'hidden');
}

const listenToShown = (listener: () => void) => {
  document.addEventListener('visibilitychange', listener);
  return () => document.removeEventListener('visibilitychange', listener);
};

/** True while the element is in the window, or nearly. */
export function useIsInView(ref: RefObject<HTMLElement | null>): boolean {
  const [isInView, setInView] = useState(false);
  useEffect(() => {
    const observer = new IntersectionObserver(entries => setInView(entries.at(-1)?.isIntersecting ?? false), {
      rootMargin: NEAR,
    });
    if (ref.current !== null) observer.observe(ref.current);
    return () => observer.disconnect();
  }, [ref]);
  return isInView;
}

const NONE: ReadonlySet<number> = new Set();
