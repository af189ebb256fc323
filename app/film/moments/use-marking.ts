import type { Game, MomentKey, Team } from '@icewright/book';
import type { Id } from '@icewright/engine';
import { useState } from 'react';
import { named } from '../../parts/named.ts';
import { clockText } from '../film-clock.ts';
import { isMarking, saysBesides } from './key-words.ts';
import type { MarkDraft } from './mark-moment.tsx';
import { verdictSaid } from './moment-glyph.tsx';
import { addMoment, type MarkedMoment, type MomentPlace, type Situation } from './new-moment.ts';
import { useOwnKeys } from './use-own-keys.ts';

export interface MarkingClock {
  readonly now: () => { readonly frameIndex: number; readonly timeS: number };
  /** What of a moment's seconds there is. */
  readonly within: <M extends { filmTimeS: number; fromS: number; toS: number }>(seconds: M) => M;
  /** What is said besides of a moment that is marked now. */
  readonly says?: string;
}

/** Marking moments in the film room: in three presses, or in one by a key of the coach's own. */
export function useMarking({
  gameId,
  game,
  team,
  partId,
  clock,
  frozen,
  stands,
  onStands,
  rests = false,
  keysRest = false,
  onMarked,
}: {
  readonly gameId: string;
  readonly game: Game;
  readonly team: Team;
  readonly partId: Id<'film'>;
  /** What says the time: the film that is shown, or a watch. */
  readonly clock: MarkingClock;
  /** The freeze that is open, with its frame: a moment of that frame is tied to it. */
  readonly frozen: { readonly id: Id<'freeze'>; readonly frameIndex: number } | undefined;
  /** How the game stands, where that is said beside the keys; otherwise as it stood at the moment before. */
  readonly stands?: Partial<Situation>;
  /** Told by a key of the coach's own. */
  readonly onStands?: (stands: Partial<Situation>) => void;
  /** Somebody judges blindly: nothing is marked meanwhile, and nothing said of what was. */
  readonly rests?: boolean;
  /** Letters are typed at something else: no key of the coach's own marks a moment. */
  readonly keysRest?: boolean;
  readonly onMarked: (id: string) => void;
}) {
  const [draft, setDraft] = useState<MarkDraft>();
  /** What the last press did, said under the film: the list is below the fold while it runs. */
  const [said, setSaid] = useState('');
  const besides = clock.says ? ` ${clock.says}` : '';
  const here = (): MomentPlace => ({
    film: partId,
    frameIndex: clock.now().frameIndex,
    filmTimeS: clock.now().timeS,
  });
  const add = (place: MomentPlace, marked: MarkedMoment) => {
    const tied = frozen?.frameIndex === place.frameIndex ? { freeze: frozen.id } : {};
    onMarked(addMoment(gameId, place, { ...marked, ...tied }, game, stands));
  };
  const press = (key: MomentKey) => {
    if (rests) return;
    const says = {
      ...(key.strength ? { strength: key.strength } : {}),
      ...(key.unit ? { unit: key.unit } : {}),
    };
    if (!isMarking(key)) {
      onStands?.({ ...stands, ...says });
      setSaid(`${saysBesides(key, team).join(', ')} from now on.`);
      return;
    }
    const place = here();
    const { filmTimeS } = place;
    const { fromS, toS } = clock.within({
      filmTimeS,
      fromS: Math.max(0, filmTimeS - key.beforeS),
      toS: filmTimeS + key.afterS,
    });
    const costGoals = key.verdict === 'missed' ? (team.habits[key.habit]?.costGoals ?? 0) : 0;
    const who = key.skater ? { skater: key.skater } : {};
    add(place, { habit: key.habit, verdict: key.verdict, costGoals, fromS, toS, ...who, ...says });
    setSaid(
      `${[wordsOf(team, key), ...saysBesides(key, team)].join(', ')}: kept from ${clockText(fromS, 1)} to ${clockText(toS, 1)}.${besides}`,
    );
  };
  useOwnKeys(team, press, { rest: rests || keysRest, withStands: onStands !== undefined });
  return {
    draft,
    said: rests ? '' : said,
    say: setSaid,
    here,
    press,
    begin: (habit?: Id<'habit'>) => {
      if (rests) return;
      const { frameIndex, filmTimeS } = here();
      setDraft({ frameIndex, filmTimeS, ...(habit ? { habit } : {}) });
    },
    leave: () => setDraft(undefined),
    mark: (marked: MarkedMoment) => {
      if (rests) return;
      const { frameIndex, filmTimeS } = draft ?? here();
      add({ film: partId, frameIndex, filmTimeS }, marked);
      setSaid(`${wordsOf(team, marked)}: marked at ${clockText(filmTimeS, 1)}.${besides}`);
      setDraft(undefined);
    },
  };
}

const wordsOf = (team: Team, { habit, verdict }: Pick<MarkedMoment, 'habit' | 'verdict'>): string =>
  `${named(team.habits[habit]?.title ?? '', 'habit')}, ${verdictSaid(verdict)}`;
