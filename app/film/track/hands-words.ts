import type { Game, Track } from '@icewright/book';
import { feetOffered } from './feet-offered.ts';

/** How many of a track's feet were put down by hand, and how many were taken as they were offered in a freeze. */
export const handsWords = ({ film, hands }: Track, freezes: Game['freezes']): string => {
  const all = Object.values(hands);
  const offeredCount = all.filter(hand => feetOffered(film, hand, freezes) !== undefined).length;
  const byHandCount = all.length - offeredCount;
  const parts = [
    ...(offeredCount > 0 ? [`${offeredCount} taken from an offer`] : []),
    ...(byHandCount > 0 || offeredCount === 0 ? [`${byHandCount} set by hand`] : []),
  ];
  return parts.join(', ');
};
