import { useEffect, useReducer, useRef } from 'react';
import { REST_MS } from './many/use-rested.ts';

/** The hand is still for as long as this before what lags catches up, ms. */
const STILL_MS = 80;

/**
 * The value as it is; while `lags`, as it was: it catches up when it has not changed for a moment, and while it goes on
 * changing as often as a figure may be behind without its word, so that most pictures under a moving hand do without it.
 */
export function useLagging<Value>(value: Value, lags: boolean): Value {
  const latest = useRef(value);
  const shown = useRef(value);
  const [, again] = useReducer((count: number) => count + 1, 0);
  latest.current = value;
  if (!lags) shown.current = value;
  const catchUp = useRef(() => {
    if (shown.current === latest.current) return;
    shown.current = latest.current;
    again();
  }).current;

  // biome-ignore lint/correctness/useExhaustiveDependencies: each value begins its own wait
  useEffect(() => {
    if (!lags) return;
    const wait = window.setTimeout(catchUp, STILL_MS);
    return () => window.clearTimeout(wait);
  }, [value, lags, catchUp]);
  useEffect(() => {
    if (!lags) return;
    const beat = window.setInterval(catchUp, REST_MS);
    return () => window.clearInterval(beat);
  }, [lags, catchUp]);
  return shown.current;
}
