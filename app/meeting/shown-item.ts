import {
  type FilmPart,
  type Game,
  inOrder,
  type Meeting,
  type MeetingItem,
  type Team,
} from '@icewright/book';
import { AFTER_MOMENT, BEFORE_MOMENT, type Id } from '@icewright/engine';
import { clockText } from '../film/film-clock.ts';
import { gameTitle } from '../film/game-words.ts';
import { verdictSaid } from '../film/moments/moment-glyph.tsx';
import { skaterWords } from '../film/people-words.ts';
import type { View } from '../shell/book.ts';

/** An item with what it shows: a picture of a film and the stretch around it, or why there is none. */
export type ShownItem = { readonly id: string; readonly item: MeetingItem } & (
  | ShownFilm
  | { readonly state: 'opening' }
  /** The game cannot be read here, or the moment was taken out since. */
  | { readonly state: 'gone' }
);

export interface ShownFilm {
  readonly state: 'there';
  readonly gameId: string;
  readonly game: Game;
  readonly partId: Id<'film'>;
  readonly part: FilmPart;
  /** The picture that the item is about. */
  readonly frameIndex: number;
  readonly filmTimeS: number;
  readonly fromS: number;
  readonly toS: number;
  readonly freezeId: Id<'freeze'> | undefined;
  readonly habitId: Id<'habit'> | undefined;
  readonly skaterId: Id<'skater'> | undefined;
  /** What was seen, in short words. */
  readonly seen: string;
}

/** The items in their order, each with its film. */
export const shownItemsOf = (
  meeting: Pick<Meeting, 'items'>,
  games: ReadonlyMap<string, View<'game'>>,
): ShownItem[] =>
  inOrder(meeting.items).map(([id, item]) => {
    const view = games.get(item.of.game);
    if (view === undefined || view.state === 'loading') return { id, item, state: 'opening' };
    const film = view.state === 'ready' ? filmOf(item, view.value) : undefined;
    return film === undefined ? { id, item, state: 'gone' } : { id, item, ...film };
  });

/** Games that the items speak of, each once. */
export const gamesOf = (meeting: Pick<Meeting, 'items'> | undefined): string[] => [
  ...new Set(Object.values(meeting?.items ?? {}).map(({ of }) => of.game)),
];

function filmOf({ of, stretch }: MeetingItem, game: Game): ShownFilm | undefined {
  const moment = of.kind === 'moment' ? game.moments[of.moment] : undefined;
  const freezeId = of.kind === 'freeze' ? of.freeze : moment?.freeze;
  const freeze = freezeId === undefined ? undefined : game.freezes[freezeId];
  const at = moment ?? (of.kind === 'freeze' ? freeze : undefined);
  const part = at && game.films[at.film];
  if (at === undefined || part === undefined) return undefined;
  const endS = Math.max(part.durationS, at.filmTimeS);
  const fromS = stretch?.fromS ?? moment?.fromS ?? at.filmTimeS - BEFORE_MOMENT.value;
  const toS = stretch?.toS ?? moment?.toS ?? at.filmTimeS + AFTER_MOMENT.value;
  return {
    state: 'there',
    gameId: of.game,
    game,
    partId: at.film,
    part,
    frameIndex: at.frameIndex,
    filmTimeS: at.filmTimeS,
    fromS: Math.max(0, Math.min(fromS, endS)),
    toS: Math.max(0, fromS, Math.min(toS, endS)),
    freezeId: freeze === undefined ? undefined : freezeId,
    habitId: at.habit,
    skaterId: moment?.skater,
    seen: moment === undefined ? (freeze?.title ?? '') : moment.note,
  };
}

/** The line of an item: what is said, else what its freeze is called, else the habit it is about, else what it was called when it was put here. */
export const lineOf = (shown: ShownItem, team: Team): string => {
  const { item } = shown;
  if (item.says.trim() !== '') return item.says;
  if (item.of.kind === 'freeze' && shown.state === 'there' && shown.seen !== '') return shown.seen;
  const habit = shown.state === 'there' && shown.habitId ? team.habits[shown.habitId]?.title : undefined;
  return habit ?? item.of.said;
};

/** Which moment it is: verdict, who, clock, game. */
export const whichOf = (shown: ShownItem, team: Team): string => {
  if (shown.state !== 'there') return shown.item.of.said;
  const { game, item } = shown;
  const moment = item.of.kind === 'moment' ? game.moments[item.of.moment] : undefined;
  return [
    moment === undefined ? 'freeze' : verdictSaid(moment.verdict),
    skaterWords(moment?.skater, team),
    clockText(shown.filmTimeS, 1),
    gameTitle(game),
  ]
    .filter(Boolean)
    .join(', ');
};
