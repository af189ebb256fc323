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
