import { type Game, type Meeting, type MeetingItem, newId, rankAtEnd, type Team } from '@icewright/book';
import { type Id, TALK_A_MOMENT } from '@icewright/engine';
import { clockText } from '../film/film-clock.ts';
import { edit, endStep } from '../shell/book.ts';

/** A moment or a freeze of a game, to be put in a meeting. */
export type Chosen =
  | { readonly kind: 'moment'; readonly id: string }
  | { readonly kind: 'freeze'; readonly id: string };

interface OfGame {
  readonly gameId: string;
  readonly game: Game;
  readonly team: Team;
}

/** Puts them at the end of the meeting, as one step of undo; gives the id of the first. */
export function addItems(
  meetingId: string,
  meeting: Meeting,
  of: OfGame,
  chosen: readonly Chosen[],
): string | undefined {
  let rank = rankAtEnd(meeting.items);
  let first: string | undefined;
  const change = edit(meetingId);
  endStep(meetingId);
  change.transact(() => {
    for (const one of chosen) {
      const item = itemOf(of, one, rank);
      if (item === undefined) continue;
      const id = newId<'item'>();
      change.set(['items', id], item);
      first ??= id;
      rank += 1;
    }
  });
  endStep(meetingId);
  return first;
}

/** A fresh item. The film stands at the moment's own picture until somebody presses: that is where the talk is. */
export function itemOf(
  { gameId, game, team }: OfGame,
  chosen: Chosen,
  rank: number,
): MeetingItem | undefined {
  const at =
    chosen.kind === 'moment'
      ? game.moments[chosen.id as Id<'moment'>]
      : game.freezes[chosen.id as Id<'freeze'>];
  if (at === undefined) return undefined;
  const habit = at.habit === undefined ? undefined : team.habits[at.habit]?.title;
  const title = 'title' in at && at.title !== '' ? at.title : habit;
  const said = [title, clockText(at.filmTimeS, 1)].filter(Boolean).join(', ').slice(0, 200);
  const holdS = 'holdS' in at && at.holdS !== undefined && at.holdS >= 1 ? at.holdS : undefined;
  const inGame = gameId as Id<'document'>;
  return {
    rank,
    of:
      chosen.kind === 'moment'
        ? { kind: 'moment', game: inGame, moment: chosen.id as Id<'moment'>, said }
        : { kind: 'freeze', game: inGame, freeze: chosen.id as Id<'freeze'>, said },
    says: '',
    asks: '',
    notes: '',
    stop: {
      frameIndex: at.frameIndex,
      filmTimeS: at.filmTimeS,
      ...(holdS === undefined ? {} : { seconds: holdS }),
    },
    talkMinutes: TALK_A_MOMENT.value,
    hidden: false,
  };
}
