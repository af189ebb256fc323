import { useEffect, useRef } from 'react';
import { playTo } from '../../film/play-to.ts';
import type { Player } from '../../film/player.ts';
import type { Order } from './meeting-run.ts';

/** The player does what it is told: stands at a frame, or runs from one to another and says when it stands there. */
export function useOrder(
  player: Player | undefined,
  order: Order | null,
  onArrived: (turn: number) => void,
): void {
  const told = useRef(onArrived);
  told.current = onArrived;
  const turn = order?.turn;
  // biome-ignore lint/correctness/useExhaustiveDependencies: an order is followed once, and known by its turn
  useEffect(() => {
    if (!player) return;
    if (order === null) return player.pause();
    let isOver = false;
    let letGo = () => {};
    void (async () => {
      if ('stand' in order) {
        const { frameIndex, playing, shownFrame } = player.now();
        if (playing || frameIndex !== order.stand || shownFrame !== order.stand)
          await player.jump(order.stand);
        return;
      }
      const { frameIndex, playing } = player.now();
      // Running there already: the speaker's page was loaded again and goes on with where this one is.
      const isOnTheWay = playing && frameIndex >= order.from && frameIndex <= order.to;
      if (!isOnTheWay && (playing || frameIndex !== order.from)) await player.jump(order.from);
      if (!isOver) letGo = playTo(player, order.to, () => told.current(order.turn));
    })();
    return () => {
      isOver = true;
      letGo();
    };
  }, [player, turn, order === null]);
}
