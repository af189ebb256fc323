import type { Game } from '@icewright/book';
import { knownFeet } from '../bodies/known-feet.ts';
import { type FrameTimes, timeOfFrame } from '../frame-index.ts';
import type { OverFilm } from './draw-over-film.ts';
import type { FilmTie } from './film-tie.ts';
import { isSeenAt, type MarksTeam, marksAt } from './marks-at.ts';

/** What stands over each picture of a film that is written into a file. */
export interface OverFilmOf {
  readonly overAt: (frameIndex: number) => OverFilm;
  /** Whether a mark belongs to the picture and cannot be drawn, because nothing ties it to the ice. */
  readonly isUntiedAt: (frameIndex: number) => boolean;
  /** Whether a mark is seen at this picture alone, while a freeze stands. */
  readonly hasStillMarksAt: (frameIndex: number) => boolean;
}

export const overFilmOf = (
  game: Pick<Game, 'marks' | 'tracks' | 'freezes'>,
  film: string,
  index: FrameTimes,
  tie: FilmTie,
  team: MarksTeam,
): OverFilmOf => {
  const all = Object.values(game.marks).filter(mark => mark.film === film);
  const at = (frameIndex: number) => ({ film, frameIndex, filmTimeS: timeOfFrame(index, frameIndex) });
  return {
    overAt: frameIndex => {
      const fit = all.length === 0 ? undefined : tie.fitAt(frameIndex);
      if (!fit) return { marks: [] };
      const picture = at(frameIndex);
      const marks = marksAt(game, picture, tie, fit, team);
      const standing = knownFeet(game, picture, fit);
      return { fit, marks, standing, ...(tie.rink ? { rink: tie.rink } : {}) };
    },
    isUntiedAt: frameIndex =>
      all.some(mark => isSeenAt(mark, game.freezes, at(frameIndex))) && tie.fitAt(frameIndex) === undefined,
    hasStillMarksAt: frameIndex =>
      all.some(({ freeze }) => freeze && game.freezes[freeze]?.frameIndex === frameIndex),
  };
};
