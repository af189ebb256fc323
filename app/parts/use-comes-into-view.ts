import { type RefObject, useEffect, useRef } from 'react';

/** For what opens below the fold: it is brought into view as it opens, by no more than is needed. */
export const useComesIntoView = <Element extends HTMLElement>(): RefObject<Element | null> => {
  const opened = useRef<Element>(null);
  useEffect(() => {
    const isStill = matchMedia('(prefers-reduced-motion: reduce)').matches;
    opened.current?.scrollIntoView({ block: 'nearest', behavior: isStill ? 'instant' : 'smooth' });
  }, []);
  return opened;
};
