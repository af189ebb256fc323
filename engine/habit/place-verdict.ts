import {
  type FrozenScene,
  type PlaceIndex,
  placeOf,
  SURELY_SDS,
  sceneEstimate,
} from '../film/frozen-scene.ts';
import type { Estimate } from '../units/points.ts';
import type { Standard, StandardAnswer, Whom } from './standard.ts';
import {
  carrierIndex,
  differenceOf,
  distanceApart,
  distanceToPoint,
  lastOfThem,
  nearestOf,
  ourNetOf,
  theirsOf,
} from './who.ts';

export type PlaceStandard = Exclude<Standard, { kind: 'numbers' }>;

export interface Verdict {
  readonly answer: StandardAnswer;
  readonly why: 'clear' | 'straddles' | 'whoIsUnsure';
  readonly reading: Estimate;
  readonly whom: readonly string[];
}

/** One of us against everyone who may be the one meant. */
export const verdictOf = (scene: FrozenScene, standard: PlaceStandard, who: number): Verdict => {
  const whoms = whomsOf(scene, standard.whom, who);
  const readings = whoms.map(whom => readingOf(scene, standard.kind, who, whom));
  const answers = readings.map(reading => answerOf(reading, standard.withinM));
  const answer = agreed(answers);
  const why =
    answer !== 'cannotTell' ? 'clear' : answers.includes('cannotTell') ? 'straddles' : 'whoIsUnsure';
  return { answer, why, reading: readings[0]!, whom: whoms.map(whom => idOf(scene, whom)) };
};

const whomsOf = (scene: FrozenScene, whom: Whom, who: number): (PlaceIndex | 'ourNet')[] => {
  switch (whom) {
    case 'puck':
    case 'ourNet':
      return [whom];
    case 'carrier':
      return [carrierIndex(scene)];
    case 'lastOfThem':
      return lastOfThem(scene);
    case 'nearestOfThem':
      return nearestOf(scene, theirsOf(scene), place => distanceApart(scene, place, who));
  }
};

const readingOf = (
  scene: FrozenScene,
  kind: PlaceStandard['kind'],
  who: PlaceIndex,
  whom: PlaceIndex | 'ourNet',
): Estimate => {
  const net = ourNetOf(scene);
  const at = placeOf(scene, who);
  const otherM = whom === 'ourNet' ? net : placeOf(scene, whom);
  // Towards the net we attack is ahead.
  const ahead = scene.attacks === 'plusX' ? 1 : -1;
  switch (kind) {
    case 'levelWith':
    case 'upWith': {
      const sign = kind === 'levelWith' ? ahead : -ahead;
      return sceneEstimate(scene, sign * (at.xM - otherM.xM), [
        [who, sign, 0],
        ...(whom === 'ourNet' ? [] : [[whom, -sign, 0] as const]),
      ]);
    }
    case 'within': {
      const apart = whom === 'ourNet' ? distanceToPoint(scene, who, net) : distanceApart(scene, who, whom);
      return sceneEstimate(scene, apart.valueM, apart.pulls);
    }
    case 'goalSide': {
      const ours = distanceToPoint(scene, who, net);
      const theirs = whom === 'ourNet' ? { valueM: 0, pulls: [] } : distanceToPoint(scene, whom, net);
      return differenceOf(scene, ours, theirs);
    }
  }
};

const answerOf = (reading: Estimate, threshold: number): StandardAnswer => {
  const reach = SURELY_SDS * reading.sd;
  if (reading.value + reach <= threshold) return 'yes';
  return reading.value - reach > threshold ? 'no' : 'cannotTell';
};

/** The answer when all give the same one. */
export const agreed = (answers: readonly StandardAnswer[]): StandardAnswer => {
  const [first = 'cannotTell'] = answers;
  return answers.every(answer => answer === first) ? first : 'cannotTell';
};

/** The id of a place, 'puck' and 'ourNet' by their own word. */
export const idOf = (scene: FrozenScene, place: PlaceIndex | 'ourNet'): string =>
  typeof place === 'number' ? scene.skaters[place]!.id : place;
