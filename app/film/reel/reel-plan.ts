import { type FrameTimes, timeOfFrame } from '../frame-index.ts';
import type { FilmHolds } from '../holds/film-holds.ts';

/** A stretch of film that goes into a reel, both frames counted. */
export interface ReelItem {
  /** Which film it is of: a key of the films the reel is made from. */
  readonly film: string;
  readonly fromFrame: number;
  readonly toFrame: number;
  /** Frames at which the reel stands, and for how long. */
  readonly holds: FilmHolds;
  /** How fast it runs, times real speed: once for each number. */
  readonly rates: readonly number[];
  /** What stands on its title card, most important first. */
  readonly words: readonly string[];
}

/** One picture of the reel, from when and for how long. */
export type ReelStep =
  | { readonly kind: 'card'; readonly item: number; readonly atS: number; readonly lengthS: number }
  | {
      readonly kind: 'picture';
      readonly item: number;
      /** Counts how often the item was begun: it may run twice. */
      readonly pass: number;
      readonly frameIndex: number;
      readonly atS: number;
      readonly lengthS: number;
    };

/** A piece of a film's sound and where in the reel it is heard; between pieces the reel is silent. */
export interface ReelSound {
  readonly film: string;
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
 * What a reel shows and lets be heard, and when: the stretches in their order, each frame for as long as its film shows it (longer
 * where it is slowed) and, the last time it runs, for the seconds of its hold besides; before each a card when `cardS` > 0. Slowed
 * stretches are silent.
 */
export const reelPlanOf = (
  items: readonly ReelItem[],
  timesOf: (film: string) => FrameTimes,
  cardS: number,
): ReelPlan => {
  const steps: ReelStep[] = [];
  const sounds: ReelSound[] = [];
  let atS = 0;
  const add = (item: number, pass: number, { film, fromFrame, toFrame, holds, rates }: ReelItem) => {
    const times = timesOf(film);
    const rate = rates[pass]!;
    let sound = { film, fromS: timeOfFrame(times, fromFrame), atS };
    for (let frameIndex = fromFrame; frameIndex <= toFrame; frameIndex++) {
      const startS = timeOfFrame(times, frameIndex);
      const endS = frameIndex + 1 < times.frameCount ? timeOfFrame(times, frameIndex + 1) : times.endS;
      const holdS = pass === rates.length - 1 ? (holds.get(frameIndex) ?? 0) : 0;
      const lengthS = (endS - startS) / rate + holdS;
      steps.push({ kind: 'picture', item, pass, frameIndex, atS, lengthS });
      atS += lengthS;
      if (rate !== 1 || (holdS === 0 && frameIndex < toFrame)) continue;
      // The sound stops where the picture does, and goes on with it; what the held frame sounds like comes before it stands.
      sounds.push({ ...sound, toS: endS });
      sound = { film, fromS: endS, atS };
    }
  };
  items.forEach((one, item) => {
    if (cardS > 0) {
      steps.push({ kind: 'card', item, atS, lengthS: cardS });
      atS += cardS;
    }
    for (const pass of one.rates.keys()) add(item, pass, one);
  });
  return { steps, sounds, lengthS: atS };
};

/**
 * When the pictures of a step are written, at the film's own rate: one that stands or is slowed is written again and again, since
 * players and cutters of film expect the next picture after as long as the one before.
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
/** Pictures of films at a varying rate last up to so much longer than most, and those are not standing. */
const LONGER = 1.8;

/** How long most pictures of a film last: the middle one of all lengths. */
export const usualFrameS = ({ timesS, endS }: FrameTimes): number => {
  const lengths = Float64Array.from(timesS, (timeS, i) => (timesS[i + 1] ?? endS) - timeS).sort();
  return lengths[lengths.length >> 1] || 1 / 30;
};
