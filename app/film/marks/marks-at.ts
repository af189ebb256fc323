import type { Game, Mark, Team } from '@icewright/book';
import {
  distanceBetween,
  type Estimate,
  FOOT_SD,
  filmFromIce,
  type IcePoint,
  type PinFit,
  SURELY_SDS,
} from '@icewright/engine';
import type { FilmMark } from '@icewright/picture';
import { LENGTH_UNIT, type Lengths, lengthNumberSaid } from '../../parts/figures.ts';
import { personWords } from '../people-words.ts';
import type { FilmTie } from './film-tie.ts';
import { type PlaceNow, placeNow, SLACK_S } from './mark-places.ts';
import { personAt } from './mark-words.ts';

/** A mark as it is seen in one picture. */
export interface SeenMark extends FilmMark {
  readonly id: string;
}

/** What of a team its marks speak of. */
export type MarksTeam = Pick<Team, 'lengths' | 'skaters'>;

/** A picture of a film, by its number and its time. */
export interface PictureTime {
  readonly film: string;
  readonly frameIndex: number;
  readonly filmTimeS: number;
}

/** Whether a mark belongs to a picture: while its freeze stands, or between its two times, both counted. */
export const isSeenAt = (
  mark: Mark,
  freezes: Game['freezes'],
  { film, frameIndex, filmTimeS }: PictureTime,
): boolean => {
  if (mark.film !== film) return false;
  if (mark.freeze) return freezes[mark.freeze]?.frameIndex === frameIndex;
  return filmTimeS >= mark.fromS - SLACK_S && filmTimeS <= mark.toS + SLACK_S;
};

/** The marks of a picture that is tied to the ice, in the order they were made. A mark one of whose skaters is not known there is left out. */
export const marksAt = (
  game: Pick<Game, 'marks' | 'tracks' | 'freezes'>,
  picture: PictureTime,
  tie: FilmTie,
  fit: PinFit,
  team: MarksTeam,
): SeenMark[] =>
  Object.entries(game.marks)
    .filter(([, mark]) => isSeenAt(mark, game.freezes, picture))
    .sort(([, a], [, b]) => a.madeAt.localeCompare(b.madeAt))
    .flatMap(([id, mark]) => {
      const places = mark.at.map(place => placeNow(place, game, picture.filmTimeS, tie));
      return places.every(one => one !== undefined)
        ? [seen(id, mark, places as PlaceNow[], fit, game, team)]
        : [];
    });

const seen = (
  id: string,
  mark: Mark,
  places: readonly PlaceNow[],
  fit: PinFit,
  game: Pick<Game, 'tracks' | 'freezes'>,
  team: MarksTeam,
): SeenMark => {
  const figure = mark.kind === 'link' ? lengthOf(places, fit, team.lengths) : undefined;
  const person = mark.kind === 'ghost' && mark.at[0] ? personAt(mark.at[0], game) : undefined;
  return {
    id,
    kind: mark.kind,
    placesM: places.map(({ atM }) => atM),
    words: mark.text,
    ...(figure ? { figure } : {}),
    ...(person ? { who: personWords(person, team) } : {}),
    ...(mark.sizeM === undefined ? {} : { sizeM: mark.sizeM }),
  };
};

/** The distance between the two ends of a link with its 95 % ±: that of the picture's tie, and that of the two places. */
const lengthOf = (places: readonly PlaceNow[], fit: PinFit, lengths: Lengths): string | undefined => {
  const [a, b] = [places[0], places[places.length - 1]];
  if (!a || !b) return undefined;
  const { value, sd } = lengthBetween(a, b, fit);
  const figure = lengthNumberSaid(value, lengths);
  return sd === undefined
    ? `${figure} ${LENGTH_UNIT[lengths]}`
    : `${figure} ± ${lengthNumberSaid(SURELY_SDS * sd, lengths)} ${LENGTH_UNIT[lengths]}`;
};

export const lengthBetween = (
  a: PlaceNow,
  b: PlaceNow,
  fit: PinFit,
): { readonly value: number; readonly sd?: number } => {
  const value = apart(a.atM, b.atM);
  // Who is followed has a ± of his own, which holds the tie's already.
  if (a.sdM !== undefined || b.sdM !== undefined)
    return { value, sd: Math.hypot(a.sdM ?? 0, b.sdM ?? 0) } satisfies Estimate;
  const [aPx, bPx] = [filmFromIce(fit, a.atM), filmFromIce(fit, b.atM)];
  if (!aPx || !bPx) return { value };
  const measured = distanceBetween(fit, aPx, bPx, FOOT_SD.value);
  return measured.kind === 'measured' ? { value, sd: measured.lengthM.sd } : { value };
};

const apart = (a: IcePoint, b: IcePoint): number => Math.hypot(a.xM - b.xM, a.yM - b.yM);

/** For those who cannot see the picture. */
export const marksWords = (marks: readonly SeenMark[]): string =>
  marks.length === 0
    ? 'No marks here'
    : `Marks: ${marks.map(one => [one.kind, one.figure, one.words].filter(Boolean).join(' ')).join(', ')}`;
