import { useEffect, useState } from 'react';

/** As --m-stale-after of the tokens. */
export const REST_MS = 400;

/** True once `key` has stayed the same for 0.4 s: the hand rests, and a figure that is not there yet is late. */
export function useRested(key: string): boolean {
  const [restedKey, setRestedKey] = useState<string | null>(null);
  useEffect(() => {
    const timer = window.setTimeout(() => setRestedKey(key), REST_MS);
    return () => window.clearTimeout(timer);
  }, [key]);
  return restedKey === key;
}
