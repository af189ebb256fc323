import type { Moment } from '@icewright/book';
import { AFTER_MOMENT, BEFORE_MOMENT } from '@icewright/engine';
import { useEffect, useRef } from 'react';
import { type FrameTimes, frameAtTime } from '../frame-index.ts';
import { playTo } from '../play-to.ts';
import type { Player } from '../player.ts';
import type { ListedMoment } from './filter-moments.ts';

/** First and last frame of a moment's seconds, its own or the usual ones around it, held inside the film. */
export function stretchOf(
  moment: Pick<Moment, 'filmTimeS'> & Partial<Pick<Moment, 'fromS' | 'toS'>>,
  index: FrameTimes,
): { readonly first: number; readonly last: number } {
  const { filmTimeS, fromS = filmTimeS - BEFORE_MOMENT.value, toS = filmTimeS + AFTER_MOMENT.value } = moment;
  const at = (timeS: number) => frameAtTime(index, Math.max(0, timeS));
  return { first: at(fromS), last: Math.max(at(fromS), at(toS)) };
}

/** Plays the seconds of moments one after the other, each chosen as it comes; anything else asked of the film ends it. */
export function usePlayMoments(player: Player, onComes: (id: string, nth: number, count: number) => void) {
  const letGo = useRef(() => {});
  useEffect(() => () => letGo.current(), []);
  const play = async (moments: readonly ListedMoment[], nth: number): Promise<void> => {
    letGo.current();
    const next = moments[nth];
    if (next === undefined) return;
    const [id, moment] = next;
    const { first, last } = stretchOf(moment, player.film.index);
    onComes(id, nth + 1, moments.length);
    // The list that was pressed may be a page below it.
    if (nth === 0) document.querySelector('.film-room .picture')?.scrollIntoView({ block: 'nearest' });
    let isLetGo = false;
    letGo.current = () => {
      isLetGo = true;
    };
    await player.jump(first);
    if (isLetGo || player.now().frameIndex !== first) return;
    letGo.current = playTo(player, last, () => void play(moments, nth + 1));
  };
  return (moments: readonly ListedMoment[]) => void play(moments, 0);
}
