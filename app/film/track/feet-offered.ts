import type { Game, Track } from '@icewright/book';

/** How well the feet of a hand are known, pixels (standard deviation), where they stand as they were offered in a freeze; undefined where a hand set them. */
export const feetOffered = (
  film: Track['film'],
  { frameIndex, feet }: Pick<Track['hands'][keyof Track['hands']], 'frameIndex' | 'feet'>,
  freezes: Game['freezes'],
): number | undefined =>
  Object.values(freezes)
    .filter(freeze => freeze.film === film && freeze.frameIndex === frameIndex)
    .flatMap(freeze => Object.values(freeze.skaters))
    // A place that was offered keeps how well it is known, until a hand moves it.
    .find(one => one.feetSdPx !== undefined && one.feet.xPx === feet.xPx && one.feet.yPx === feet.yPx)
    ?.feetSdPx;
