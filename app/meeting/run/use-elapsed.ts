import { useEffect, useState } from 'react';

/** Seconds since the meeting began: from the first press on, whole, by the clock of the machine. */
export function useElapsed(
  hasBegun: boolean,
  /** When it had begun before this page was loaded. */
  beganBeforeMs: number | undefined,
): { readonly elapsedS: number; readonly beganMs: number | undefined; readonly again: () => void } {
  const [beganMs, setBeganMs] = useState(beganBeforeMs);
  const [nowMs, setNowMs] = useState(() => Date.now());
  useEffect(() => {
    if (hasBegun && beganMs === undefined) {
      setBeganMs(Date.now());
      setNowMs(Date.now());
    }
  }, [hasBegun, beganMs]);
  useEffect(() => {
    if (beganMs === undefined) return;
    const timer = setInterval(() => setNowMs(Date.now()), 500);
    return () => clearInterval(timer);
  }, [beganMs]);
  return {
    beganMs,
    elapsedS: beganMs === undefined ? 0 : Math.max(0, Math.floor((nowMs - beganMs) / 1000)),
    again: () => {
      setBeganMs(Date.now());
      setNowMs(Date.now());
    },
  };
}
