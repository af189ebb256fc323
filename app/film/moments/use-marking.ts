import type { Game, MomentKey, Team } from '@icewright/book';
import type { Id } from '@icewright/engine';
import { useState } from 'react';
import { named } from '../../parts/named.ts';
import { clockText } from '../film-clock.ts';
import type { MarkDraft } from './mark-moment.tsx';
import { verdictSaid } from './moment-glyph.tsx';
import { addMoment, type MarkedMoment, type MomentPlace, type Situation } from './new-moment.ts';
import { useOwnKeys } from './use-own-keys.ts';

export interface MarkingClock {
  readonly now: () => { readonly frameIndex: number; readonly timeS: number };
  readonly endS: number;
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
  readonly onMarked: (id: string) => void;
}) {
  const [draft, setDraft] = useState<MarkDraft>();
  /** What the last key did, said under the film: the list is below the fold while it runs. */
  const [said, setSaid] = useState('');
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
    const place = here();
    const fromS = Math.max(0, place.filmTimeS - key.beforeS);
    const toS = Math.min(clock.endS, place.filmTimeS + key.afterS);
    const costGoals = key.verdict === 'missed' ? (team.habits[key.habit]?.costGoals ?? 0) : 0;
    add(place, { habit: key.habit, verdict: key.verdict, costGoals, fromS, toS });
    const title = named(team.habits[key.habit]?.title ?? '', 'habit');
    setSaid(
      `${title}, ${verdictSaid(key.verdict)}: kept from ${clockText(fromS, 1)} to ${clockText(toS, 1)}.`,
    );
  };
  useOwnKeys(team, press);
  return {
    draft,
    said,
    here,
    press,
    begin: () => {
      const { frameIndex, filmTimeS } = here();
      setDraft({ frameIndex, filmTimeS });
    },
    leave: () => setDraft(undefined),
    mark: (marked: MarkedMoment) => {
      if (!draft) return;
      add({ film: partId, ...draft }, marked);
      setDraft(undefined);
    },
  };
}
