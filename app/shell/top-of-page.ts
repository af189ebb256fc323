import { useEffect, useLayoutEffect, useRef } from 'react';

/** Another page begins at its top. Back and forward are left to the browser, which knows where one stood. */
export const useTopOfPage = (path: string): void => {
  const before = useRef(path);
  const isBack = useRef(false);
  useEffect(() => {
    const note = () => {
      isBack.current = true;
    };
    addEventListener('popstate', note);
    return () => removeEventListener('popstate', note);
  }, []);
  useLayoutEffect(() => {
    if (before.current !== path && !isBack.current) scrollTo(0, 0);
    before.current = path;
    isBack.current = false;
  }, [path]);
};
