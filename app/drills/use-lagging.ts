import { useEffect, useReducer, useRef } from 'react';

/** The hand is still for as long as this before what lags catches up, ms. */
const STILL_MS = 200;

/** The value as it is; while `lags`, as it was when it last stood still for a moment. */
export function useLagging<Value>(value: Value, lags: boolean): Value {
  const shown = useRef(value);
  const [, again] = useReducer((count: number) => count + 1, 0);
  if (!lags) shown.current = value;
  useEffect(() => {
    if (!lags || shown.current === value) return;
    const wait = window.setTimeout(() => {
      shown.current = value;
      again();
    }, STILL_MS);
    return () => window.clearTimeout(wait);
  }, [value, lags]);
  return shown.current;
}
