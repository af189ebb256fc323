import type { Moment } from '@icewright/book';
import { AFTER_MOMENT, BEFORE_MOMENT } from '@icewright/engine';
import { useEffect, useRef, useState } from 'react';
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

/** Plays the seconds of moments one after the other, each chosen as it comes; anything else asked of the film ends it, and what is `said` of it. */
export function usePlayMoments(
  player: Player,
  onComes: (id: string) => void,
): { readonly play: (moments: readonly ListedMoment[]) => void; readonly said: string } {
  const [said, setSaid] = useState('');
  const letGo = useRef(() => {});
  useEffect(() => () => letGo.current(), []);
  const play = async (moments: readonly ListedMoment[], nth: number): Promise<void> => {
    letGo.current();
    const next = moments[nth];
    if (next === undefined) return setSaid('');
    const [id, moment] = next;
    const { first, last } = stretchOf(moment, player.film.index);
    onComes(id);
    setSaid(
      moments.length > 1
        ? `${nth + 1} of ${moments.length} is playing. Any other press on the film ends it.`
        : '',
    );
    // The list that was pressed may be a page below it.
    if (nth === 0) document.querySelector('.film-room .picture')?.scrollIntoView({ block: 'nearest' });
    let isLetGo = false;
    letGo.current = () => {
      isLetGo = true;
    };
    await player.jump(first);
    if (isLetGo) return;
    if (player.now().frameIndex !== first) return setSaid('');
    letGo.current = playTo(
      player,
      last,
      () => void play(moments, nth + 1),
      () => setSaid(''),
    );
  };
  return { play: moments => void play(moments, 0), said };
}
