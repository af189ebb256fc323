import { useLayoutEffect, useState } from 'react';

/** The width of an element in pixels of the page, followed as it changes; 0 before it stands. */
export const useWidth = (element: HTMLElement | null): number => {
  const [width, setWidth] = useState(0);
  useLayoutEffect(() => {
    if (!element) return;
    const look = () => setWidth(element.clientWidth);
    look();
    const observer = new ResizeObserver(look);
    observer.observe(element);
    return () => observer.disconnect();
  }, [element]);
  return width;
};
