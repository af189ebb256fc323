import { useEffect, useRef, useState } from 'react';
import { keptOf, runFrom } from './kept-run.ts';
import type { Run, RunItem } from './meeting-run.ts';

/** What this window kept of the meeting before its page was loaded again, and the hand that keeps it. Whoever leaves for another page of the app begins anew. */
export const useKeptRun = (meetingId: string, items: readonly Pick<RunItem, 'id'>[]) => {
  const key = `icewright.meeting-run.${meetingId}`;
  const [first] = useState(() => runFrom(sessionStorage.getItem(key), items, Date.now()));
  const latest = useRef(items);
  latest.current = items;
  useEffect(() => () => sessionStorage.removeItem(key), [key]);
  const keep = (run: Run, beganMs: number | undefined, filmAt: number | undefined) => {
    const kept = keptOf(run, latest.current, beganMs, filmAt);
    if (kept) sessionStorage.setItem(key, JSON.stringify(kept));
  };
  return { first, keep };
};
