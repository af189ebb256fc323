import type { Game } from '@icewright/book';
import { type FrameTimes, timeOfFrame } from '../frame-index.ts';
import type { FilmTie } from '../marks/film-tie.ts';
import { isSeenAt } from '../marks/marks-at.ts';
import type { ReelPlan } from './reel-plan.ts';

/** How many pictures of a reel have a mark that cannot be drawn, because nothing ties them to the ice. */
export const untiedCount = (
  { steps }: Pick<ReelPlan, 'steps'>,
  index: FrameTimes,
  { marks, freezes }: Pick<Game, 'marks' | 'freezes'>,
  film: string,
  tie: Pick<FilmTie, 'fitAt'>,
): number => {
  const all = Object.values(marks);
  if (all.length === 0) return 0;
  return steps.filter(step => {
    if (step.kind === 'card') return false;
    const { frameIndex } = step;
    const at = { film, frameIndex, filmTimeS: timeOfFrame(index, frameIndex) };
    return all.some(mark => isSeenAt(mark, freezes, at)) && tie.fitAt(frameIndex) === undefined;
  }).length;
};
