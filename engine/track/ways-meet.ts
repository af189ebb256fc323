import type { FoundPlace } from './follow-one-way.ts';
import { MEET, MET_SHARE } from './track-rows.ts';

/** When two ways of one stretch are at the same body, seconds; as near as `MEET`. Empty where they never are. */
export const meetingsOf = (forward: readonly FoundPlace[], backward: readonly FoundPlace[]): number[] => {
  const other = new Map(backward.map(place => [place.frameIndex, place]));
  return forward.flatMap(({ frameIndex, timeS, atM }) => {
    const met = other.get(frameIndex);
    return met && Math.hypot(met.atM.xM - atM.xM, met.atM.yM - atM.yM) < MEET.value ? [timeS] : [];
  });
};

/** Whether two ways are at the same body in most of the frames in which either found it (share `MET_SHARE`). */
export const goTogether = (forward: readonly FoundPlace[], backward: readonly FoundPlace[]): boolean => {
  const frames = new Set([...forward, ...backward].map(({ frameIndex }) => frameIndex));
  return meetingsOf(forward, backward).length >= MET_SHARE.value * frames.size;
};
