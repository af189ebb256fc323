import type { Game, Track } from '@icewright/book';

/** How many of a track's feet were put down by hand, and how many were taken as they were offered in a freeze. */
export const handsWords = ({ film, hands }: Track, freezes: Game['freezes']): string => {
  const all = Object.values(hands);
  const offeredCount = all.filter(({ frameIndex, feet }) =>
    Object.values(freezes)
      .filter(freeze => freeze.film === film && freeze.frameIndex === frameIndex)
      .flatMap(freeze => Object.values(freeze.skaters))
      // A place that was offered keeps how well it is known, until a hand moves it.
      .some(one => one.feetSdPx !== undefined && one.feet.xPx === feet.xPx && one.feet.yPx === feet.yPx),
  ).length;
  const byHandCount = all.length - offeredCount;
  const parts = [
    ...(offeredCount > 0 ? [`${offeredCount} taken from an offer`] : []),
    ...(byHandCount > 0 || offeredCount === 0 ? [`${byHandCount} set by hand`] : []),
  ];
  return parts.join(', ');
};
