import { type FrameTimes, timeOfFrame } from '../frame-index.ts';
import type { FilmHolds } from '../holds/film-holds.ts';

/** A stretch of film that goes into a reel, both frames counted. */
export interface ReelItem {
  readonly fromFrame: number;
  readonly toFrame: number;
  /** What stands on its title card, most important first. */
  readonly words: readonly string[];
}

/** One picture of the reel, from when and for how long. */
export type ReelStep =
  | { readonly kind: 'card'; readonly item: number; readonly atS: number; readonly lengthS: number }
  | {
      readonly kind: 'picture';
      readonly item: number;
      readonly frameIndex: number;
      readonly atS: number;
      readonly lengthS: number;
    };

/** A piece of the film's sound and where in the reel it is heard; between pieces the reel is silent. */
export interface ReelSound {
  readonly fromS: number;
  readonly toS: number;
  readonly atS: number;
}

export interface ReelPlan {
  readonly steps: readonly ReelStep[];
  readonly sounds: readonly ReelSound[];
  readonly lengthS: number;
}

/**
 * What a reel shows and lets be heard, and when: the stretches in their order, each frame for as long as the film shows it, and for
 * the seconds of its hold besides; before each a card when `cardS` > 0.
 */
export const reelPlanOf = (
  items: readonly ReelItem[],
  index: FrameTimes,
  holds: FilmHolds,
  cardS: number,
): ReelPlan => {
  const steps: ReelStep[] = [];
  const sounds: ReelSound[] = [];
  let atS = 0;
  items.forEach(({ fromFrame, toFrame }, item) => {
    if (cardS > 0) {
      steps.push({ kind: 'card', item, atS, lengthS: cardS });
      atS += cardS;
    }
    let sound = { fromS: timeOfFrame(index, fromFrame), atS };
    for (let frameIndex = fromFrame; frameIndex <= toFrame; frameIndex++) {
      const startS = timeOfFrame(index, frameIndex);
      const endS = frameIndex + 1 < index.frameCount ? timeOfFrame(index, frameIndex + 1) : index.endS;
      const holdS = holds.get(frameIndex) ?? 0;
      steps.push({ kind: 'picture', item, frameIndex, atS, lengthS: endS - startS + holdS });
      atS += endS - startS + holdS;
      if (holdS === 0 && frameIndex < toFrame) continue;
      // The sound stops where the picture does, and goes on with it; what the held frame sounds like comes before it stands.
      sounds.push({ ...sound, toS: endS });
      sound = { fromS: endS, atS };
    }
  });
  return { steps, sounds, lengthS: atS };
};

/**
 * When the pictures of a step are written, at the film's own rate: one that stands is written again and again, since players and
 * cutters of film expect the next picture after as long as the one before.
 */
export const writesOf = (
  { atS, lengthS }: ReelStep,
  frameS: number,
): { readonly atS: number; readonly lengthS: number }[] => {
  const count = Math.max(1, lengthS <= LONGER * frameS ? 1 : Math.round(lengthS / frameS));
  return Array.from({ length: count }, (_, i) => ({
    atS: atS + (i * lengthS) / count,
    lengthS: lengthS / count,
  }));
};
/** Films at a varying rate have pictures that last longer than most: those are not standing. */
const LONGER = 3;

/** How long most pictures of a film last: the middle one of all lengths. */
export const usualFrameS = ({ timesS, endS }: FrameTimes): number => {
  const lengths = Float64Array.from(timesS, (timeS, i) => (timesS[i + 1] ?? endS) - timeS).sort();
  return lengths[lengths.length >> 1] || 1 / 30;
};
