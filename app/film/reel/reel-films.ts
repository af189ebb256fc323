import { timeOfFrame } from '../frame-index.ts';
import type { OverFilmOf } from '../marks/over-film-of.ts';
import type { OpenFilm } from '../open-film.ts';
import type { ReelItem, ReelPlan } from './reel-plan.ts';

/** A film that a reel takes pictures from, with what stands over them. */
export interface ReelFilm extends OverFilmOf {
  readonly film: OpenFilm;
}

/** By the keys that the items of the reel name. */
export type ReelFilms = ReadonlyMap<string, ReelFilm>;

/** How many pictures of a reel have a mark that cannot be drawn, because nothing ties them to the ice. */
export const untiedCount = (
  { steps }: Pick<ReelPlan, 'steps'>,
  items: readonly ReelItem[],
  films: ReadonlyMap<string, Pick<ReelFilm, 'isUntiedAt'>>,
): number =>
  steps.filter(
    step => step.kind === 'picture' && films.get(items[step.item]!.film)?.isUntiedAt(step.frameIndex),
  ).length;

/** Where a reel runs over a freeze that has marks and does not stand: those flash by in one picture. Times in the film, seconds. */
export const flashesS = (
  { steps }: Pick<ReelPlan, 'steps'>,
  items: readonly ReelItem[],
  films: ReadonlyMap<string, Pick<ReelFilm, 'hasStillMarksAt'> & { readonly film: Pick<OpenFilm, 'index'> }>,
): readonly number[] => {
  const found = new Map<string, number>();
  for (const step of steps) {
    const item = items[step.item]!;
    const of = films.get(item.film);
    if (step.kind === 'card' || !of?.hasStillMarksAt(step.frameIndex)) continue;
    if ((item.holds.get(step.frameIndex) ?? 0) > 0) continue;
    found.set(`${item.film} ${step.frameIndex}`, timeOfFrame(of.film.index, step.frameIndex));
  }
  return [...found.values()];
};
