import { type RefObject, useLayoutEffect, useRef, useState } from 'react';

/** The width of an element as the page lays it out, px: for drawings whose letters must keep their size. 0 until known. */
export function useWidth<Element extends HTMLElement>(): [RefObject<Element | null>, number] {
  const ref = useRef<Element>(null);
  const [width, setWidth] = useState(0);
  useLayoutEffect(() => {
    const element = ref.current;
    if (element === null) return;
    const observer = new ResizeObserver(() => setWidth(Math.floor(element.clientWidth)));
    setWidth(Math.floor(element.clientWidth));
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return [ref, width];
}
