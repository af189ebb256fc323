import type { Game, Team } from '@icewright/book';
import { AFTER_MOMENT, BEFORE_MOMENT } from '@icewright/engine';
import { named } from '../../parts/named.ts';
import { clockText } from '../film-clock.ts';
import { type FrameTimes, frameAtTime, timeOfFrame } from '../frame-index.ts';
import { gameTitle } from '../game-words.ts';
import { holdsOf } from '../holds/film-holds.ts';
import type { ListedMoment } from '../moments/filter-moments.ts';
import { verdictSaid } from '../moments/moment-glyph.tsx';
import { skaterWords } from '../people-words.ts';
import type { ReelEntry } from './reel-entry.ts';

/** The stretches of moments of one film, by their frames, and what is known of each. */
export const momentEntriesOf = (
  moments: readonly ListedMoment[],
  film: string,
  index: FrameTimes,
  game: Game,
  team: Team,
): ReelEntry[] => {
  const holds = holdsOf(game.freezes, film);
  return moments.map(([id, moment]) => {
    const { filmTimeS } = moment;
    const fromFrame = frameAtTime(index, Math.max(0, moment.fromS ?? filmTimeS - BEFORE_MOMENT.value));
    const last = frameAtTime(index, Math.min(index.endS, moment.toS ?? filmTimeS + AFTER_MOMENT.value));
    const toFrame = Math.max(fromFrame, last);
    return {
      id,
      aboutFrame: moment.frameIndex,
      film,
      fromFrame,
      toFrame,
      holds,
      lengthS: timeOfFrame(index, toFrame) - timeOfFrame(index, fromFrame),
      at: clockText(filmTimeS, 1),
      verdict: moment.verdict,
      card: {
        what: named(team.habits[moment.habit]?.title ?? '', 'habit'),
        verdict: verdictSaid(moment.verdict),
        who: skaterWords(moment.skater, team),
        note: moment.note,
        where: `${gameTitle(game)}, ${clockText(filmTimeS, 0)}`,
      },
    };
  });
};
