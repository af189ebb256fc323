import { useLayoutEffect, useState } from 'react';

/** The width of an element in pixels of the page, followed as it changes; 0 before it stands. */
export const useWidth = (element: HTMLElement | null): number => useSide(element, 'clientWidth');

/** Its height, as its width. */
export const useHeight = (element: HTMLElement | null): number => useSide(element, 'clientHeight');

const useSide = (element: HTMLElement | null, side: 'clientWidth' | 'clientHeight'): number => {
  const [sidePx, setSidePx] = useState(0);
  useLayoutEffect(() => {
    if (!element) return;
    const look = () => setSidePx(element[side]);
    look();
    const observer = new ResizeObserver(look);
    observer.observe(element);
    return () => observer.disconnect();
  }, [element, side]);
  return sidePx;
};
