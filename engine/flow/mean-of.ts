import type { EachFlow, SkaterFlow } from './flow-result.ts';
import type { Block } from './play-block.ts';

/** What one skater has on the mean of all who are here, also of those who sit out. Seconds, metres; null where nothing can be said. */
export const meanOf = (skaters: readonly SkaterFlow[], block: Block): EachFlow => {
  const mean = (of: (skater: SkaterFlow) => number): number =>
    skaters.length === 0 ? 0 : skaters.reduce((sum, skater) => sum + of(skater), 0) / skaters.length;
  const goes = skaters.map(skater => skater.goCount);
  const workS = mean(skater => skater.workS);
  const waitS = mean(skater => skater.waitS);
  const restCount = block.queues.reduce((sum, queue) => sum + queue.restCount, 0);
  const restSumS = block.queues.reduce((sum, queue) => sum + queue.restSumS, 0);
  return {
    goCount: mean(skater => skater.goCount),
    fewestGoes: Math.min(...goes),
    mostGoes: Math.max(...goes),
    workS,
    waitS,
    restRatio: workS > 0 ? waitS / workS : null,
    restS: restCount > 0 ? restSumS / restCount : null,
    distanceM: mean(skater => skater.distanceM),
    highSpeedS: mean(skater => skater.highSpeedS),
    puckS: mean(skater => skater.puckS),
    receiveCount: mean(skater => skater.receiveCount),
    shotCount: mean(skater => skater.shotCount),
  };
};
