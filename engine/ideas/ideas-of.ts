import { clearIdea, findInTheWay, withoutSkater } from './clear-picture.ts';
import { IDEA_SHAPES, type IdeaShape } from './idea-plans.ts';
import { type Idea, type IdeaSetting, playIdea } from './play-idea.ts';
import type { Problem } from './problem-of.ts';

/**
 * Three proposals for a problem, one of each shape, each computed; yields after every one, so that who plays them in a worker can show
 * them as they come and can stop. A shape that cannot be run is left out. Same seed, same ideas; `newId` gives fresh ids.
 */
export function* ideasOf(problem: Problem, setting: IdeaSetting, newId: () => string): Generator<Idea, void> {
  for (const shape of IDEA_SHAPES) {
    const idea = clearlyPlayed(problem, shape, setting, newId);
    if (idea !== null) yield idea;
  }
}

/** Where the tuning moved somebody into a bystander, once more without that one. */
const clearlyPlayed = (
  problem: Problem,
  shape: IdeaShape,
  setting: IdeaSetting,
  newId: () => string,
): Idea | null => {
  const { rink, level } = setting;
  const idea = playIdea(problem, clearIdea(problem, shape, rink, level, newId), setting);
  const inTheWay = idea === null ? undefined : findInTheWay(idea, rink, level);
  return inTheWay === undefined
    ? idea
    : clearlyPlayed(withoutSkater(problem, inTheWay), shape, setting, newId);
};

/**
 * The best first: least `scoreM`; those in which two touch after those in which nobody does, and after all others those in which the
 * wanted thing never comes. Equal ones keep their order.
 */
export const ranked = (ideas: readonly Idea[]): readonly Idea[] =>
  [...ideas].sort(
    (a, b) =>
      Number(isNeverSo(a)) - Number(isNeverSo(b)) ||
      Number(hasTouch(a)) - Number(hasTouch(b)) ||
      a.scoreM - b.scoreM,
  );

/** Whether two bodies touch in its rep: nobody is to be handed that first. */
export const hasTouch = ({ lookFindings }: Pick<Idea, 'lookFindings'>): boolean =>
  lookFindings.some(({ kind }) => kind === 'bodiesTouch');

const isNeverSo = ({ counted }: Idea): boolean => (counted.rate?.rateRatio ?? 0) === 0;
