import { useCallback, useRef } from 'react';

/** The same function at every picture, which does what the latest one would: what is kept from drawing anew can still call it. */
export function useSteady<Args extends unknown[], Answer>(
  call: (...args: Args) => Answer,
): (...args: Args) => Answer {
  const latest = useRef(call);
  latest.current = call;
  return useCallback((...args: Args) => latest.current(...args), []);
}
