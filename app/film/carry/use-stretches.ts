import { useEffect, useState } from 'react';
import { type FollowedStretch, findStretches, keepStretch } from './kept-stretches.ts';
import type { CarryState } from './use-carry.ts';

/** All stretches of a film that were followed, now or before, the newest first. What has just been followed is kept. */
export const useStretches = (hash: string, state: CarryState): readonly FollowedStretch[] => {
  const [kept, setKept] = useState<readonly FollowedStretch[]>([]);
  useEffect(() => {
    let isOver = false;
    void findStretches(hash).then(found => {
      // One that was followed while this was looked for stays in front.
      if (!isOver) setKept(before => [...before, ...found]);
    });
    return () => {
      isOver = true;
      setKept([]);
    };
  }, [hash]);
  useEffect(() => {
    if (state.kind !== 'followed') return;
    const one = { stretch: state.stretch, lens: state.lens };
    setKept(before => [one, ...before]);
    void keepStretch(hash, one);
  }, [hash, state]);
  return kept;
};
