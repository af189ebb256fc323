import type { MeetingItem, Team } from '@icewright/book';
import { inOrder } from '@icewright/book';
import type { Id } from '@icewright/engine';
import { itemOf } from '../new-item.ts';
import { type ShownFilm, type ShownItem, shownItemsOf } from '../shown-item.ts';

export type HisItem = ShownFilm & Pick<ShownItem, 'id' | 'item'>;

/** The items of a meeting that are about one skater: his moments, and freezes in which he stands. Hidden ones are left out. */
export const hisItemsOf = (items: readonly ShownItem[], skaterId: string): HisItem[] =>
  items.filter((shown): shown is HisItem => {
    if (shown.state !== 'there' || shown.item.hidden) return false;
    if (shown.item.of.kind === 'moment') return shown.skaterId === skaterId;
    const freeze = shown.freezeId && shown.game.freezes[shown.freezeId];
    return Object.values(freeze?.skaters ?? {}).some(({ skater }) => skater === skaterId);
  });

/** All moments that are marked with him in the games of the meeting: those of the meeting with its words, then the rest by film. */
export function allHisItemsOf(items: readonly ShownItem[], skaterId: string, team: Team): HisItem[] {
  const inMeeting = hisItemsOf(items, skaterId);
  const known = new Set(inMeeting.map(({ item }) => keyOf(item)));
  const games = new Map(
    items.flatMap(shown => (shown.state === 'there' ? [[shown.gameId, shown.game] as const] : [])),
  );
  const others = [...games].flatMap(([gameId, game]) => {
    const made = Object.entries(game.moments)
      .filter(([, { skater }]) => skater === skaterId)
      .sort(([, a], [, b]) => a.filmTimeS - b.filmTimeS)
      .flatMap(([id], rank) => {
        const item = itemOf({ gameId, game, team }, { kind: 'moment', id }, rank);
        return item === undefined || known.has(keyOf(item)) ? [] : [[id, item] as const];
      });
    const view = { state: 'ready', value: game, issues: [] } as const;
    return hisItemsOf(
      shownItemsOf(
        { items: Object.fromEntries(made) as Record<Id<'item'>, MeetingItem> },
        new Map([[gameId, view]]),
      ),
      skaterId,
    );
  });
  return [...inMeeting, ...others];
}

/** Skaters about whom there is something in the games of the meeting, in the order of the roster. */
export const whoIsInIt = (items: readonly ShownItem[], team: Team): [string, Team['skaters'][never]][] =>
  inOrder(team.skaters).filter(([id]) => allHisItemsOf(items, id, team).length > 0) as never;

const keyOf = ({ of }: MeetingItem): string => `${of.game} ${of.kind === 'moment' ? of.moment : of.freeze}`;
