import type { Game, Moment, Team } from '@icewright/book';
import { AFTER_MOMENT, BEFORE_MOMENT } from '@icewright/engine';
import { named } from '../../parts/named.ts';
import { clockText } from '../film-clock.ts';
import { type FrameTimes, frameAtTime } from '../frame-index.ts';
import { gameTitle } from '../game-words.ts';
import { verdictSaid } from '../moments/moment-glyph.tsx';
import { skaterWords } from '../people-words.ts';
import type { ReelItem } from './reel-plan.ts';

/** The stretch of a moment by its frames, and what its title card says. */
export const reelItemOf = (
  moment: Moment,
  index: FrameTimes,
  game: Pick<Game, 'opponent' | 'place'>,
  team: Team,
): ReelItem => {
  const { filmTimeS } = moment;
  const fromFrame = frameAtTime(index, Math.max(0, moment.fromS ?? filmTimeS - BEFORE_MOMENT.value));
  const toFrame = frameAtTime(index, Math.min(index.endS, moment.toS ?? filmTimeS + AFTER_MOMENT.value));
  return {
    fromFrame,
    toFrame: Math.max(fromFrame, toFrame),
    words: [
      named(team.habits[moment.habit]?.title ?? '', 'habit'),
      [verdictSaid(moment.verdict), skaterWords(moment.skater, team)].filter(Boolean).join(', '),
      `${gameTitle(game)}, ${clockText(filmTimeS, 0)}`,
    ],
  };
};
