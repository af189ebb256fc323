import type { Team } from '@icewright/book';
import { clockText } from '../../film/film-clock.ts';
import { timeOfFrame } from '../../film/frame-index.ts';
import { gameTitle } from '../../film/game-words.ts';
import { verdictSaid } from '../../film/moments/moment-glyph.tsx';
import { skaterWords } from '../../film/people-words.ts';
import type { ReelEntry } from '../../film/reel/reel-entry.ts';
import type { ReelFilms } from '../../film/reel/reel-films.ts';
import { itemFramesOf } from '../item-frames.ts';
import { lineOf, type ShownItem } from '../shown-item.ts';
import { itemHoldsOf } from './item-holds.ts';
import { reelKeyOf } from './reel-key.ts';

/** The items of a meeting whose film is at hand, as stretches of a reel in the meeting's order; hidden ones are left out. */
export const meetingEntriesOf = (
  items: readonly ShownItem[],
  films: Pick<ReelFilms, 'get'>,
  team: Team,
): ReelEntry[] =>
  items.flatMap(shown => {
    if (shown.state !== 'there' || shown.item.hidden) return [];
    const film = reelKeyOf(shown);
    const index = films.get(film)?.film.index;
    if (!index) return [];
    const { item, game } = shown;
    const { first, last } = itemFramesOf(shown, index);
    const moment = item.of.kind === 'moment' ? game.moments[item.of.moment] : undefined;
    return {
      id: shown.id,
      aboutFrame: item.stop?.frameIndex ?? shown.frameIndex,
      film,
      fromFrame: first,
      toFrame: last,
      holds: itemHoldsOf(shown),
      lengthS: timeOfFrame(index, last) - timeOfFrame(index, first),
      at: clockText(shown.filmTimeS, 1),
      ...(moment ? { verdict: moment.verdict } : {}),
      card: {
        what: lineOf(shown, team),
        verdict: moment ? verdictSaid(moment.verdict) : '',
        who: skaterWords(moment?.skater, team),
        note: shown.seen === lineOf(shown, team) ? '' : shown.seen,
        where: `${gameTitle(game)}, ${clockText(shown.filmTimeS, 0)}`,
      },
    };
  });
