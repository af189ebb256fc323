import type { FilmPart, Game } from '@icewright/book';
import type { Id } from '@icewright/engine';
import { countSaid } from '../parts/figures.ts';
import { clockBetween } from './cameras/tied-clock.ts';
import { isLive } from './live/live-part.ts';

type FilmId = Id<'film'>;

/** What there is of a game on film: cameras on one clock saw the same play, and count once. */
export function filmWords(game: Pick<Game, 'films'>): string {
  const entries = Object.entries(game.films) as [FilmId, FilmPart][];
  const films = entries.filter(([, part]) => !isLive(part));
  if (films.length === 0) return entries.length === 0 ? 'no film yet' : 'marked live, no film yet';
  const plays = playsOf(game.films, films);
  const lengthS = plays.reduce((sum, play) => sum + coveredS(play), 0);
  const cameras = Math.max(...plays.map(play => play.length));
  return [
    plays.length > 1 || cameras === 1 ? countSaid(plays.length, 'part') : '',
    lengthS < 120 ? `${Math.round(lengthS)} s` : `${Math.round(lengthS / 60)} min`,
    cameras > 1 ? `${cameras} cameras` : '',
  ]
    .filter(Boolean)
    .join(', ');
}

/** A film on the clock of its play, seconds. */
type OnClock = readonly [fromS: number, toS: number];

/** Films that are tied to one another, each group on the clock of its first. */
function playsOf(all: Game['films'], films: readonly (readonly [FilmId, FilmPart])[]): OnClock[][] {
  const plays: { readonly first: FilmId; readonly films: OnClock[] }[] = [];
  for (const [id, { durationS }] of films) {
    const play = plays.find(one => clockBetween(all, id, one.first).kind === 'tied');
    const clock = play && clockBetween(all, id, play.first);
    if (play && clock?.kind === 'tied') play.films.push([clock.shiftS, clock.shiftS + durationS]);
    else plays.push({ first: id, films: [[0, durationS]] });
  }
  return plays.map(play => play.films);
}

/** How long at least one of them runs. */
function coveredS(play: readonly OnClock[]): number {
  let sumS = 0;
  let endS = Number.NEGATIVE_INFINITY;
  for (const [fromS, toS] of [...play].sort(([a], [b]) => a - b)) {
    sumS += Math.max(0, toS - Math.max(fromS, endS));
    endS = Math.max(endS, toS);
  }
  return sumS;
}
