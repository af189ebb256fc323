import { type KeyboardEvent, type PointerEvent, useRef, useState } from 'react';

interface Hand {
  readonly id: string;
  readonly toIndex: number;
  readonly byPx: number;
}

/**
 * Puts the items of a list in another order: dragged by mouse or finger, or moved with Alt and the arrows.
 * Elements carry `data-item`; the order changes when the hand lets go, and Escape lets go without a change.
 */
export function useReorder(
  ids: readonly string[],
  axis: 'across' | 'down',
  onMove: (id: string, toIndex: number) => void,
) {
  const [hand, setHand] = useState<Hand | null>(null);
  const start = useRef<{ readonly at: number; readonly pointerId: number } | null>(null);
  const along = (event: PointerEvent) => (axis === 'across' ? event.clientX : event.clientY);

  const handle = (id: string) => ({
    onPointerDown: (event: PointerEvent<HTMLElement>) => {
      if (event.button !== 0) return;
      event.currentTarget.setPointerCapture(event.pointerId);
      start.current = { at: along(event), pointerId: event.pointerId };
    },
    onPointerMove: (event: PointerEvent<HTMLElement>) => {
      if (start.current?.pointerId !== event.pointerId) return;
      const byPx = along(event) - start.current.at;
      if (hand === null && Math.abs(byPx) < 6) return;
      const list = event.currentTarget.closest('[data-list]');
      setHand({ id, byPx, toIndex: list === null ? ids.indexOf(id) : indexAt(list, id, along(event), axis) });
    },
    onPointerUp: () => {
      start.current = null;
      if (hand !== null && hand.toIndex !== ids.indexOf(id)) onMove(id, hand.toIndex);
      setHand(null);
    },
    onPointerCancel: () => {
      start.current = null;
      setHand(null);
    },
  });

  const onKeyDown = (id: string) => (event: KeyboardEvent) => {
    const [earlier, later] = axis === 'across' ? ['ArrowLeft', 'ArrowRight'] : ['ArrowUp', 'ArrowDown'];
    if (event.key === 'Escape' && start.current !== null) {
      start.current = null;
      setHand(null);
    }
    if (!event.altKey || (event.key !== earlier && event.key !== later)) return;
    event.preventDefault();
    const to = ids.indexOf(id) + (event.key === earlier ? -1 : 1);
    if (to >= 0 && to < ids.length) onMove(id, to);
  };

  return { hand, handle, onKeyDown };
}

/** The place among the others that the hand is over, counted without the one in the hand. */
function indexAt(list: Element, id: string, at: number, axis: 'across' | 'down'): number {
  const others = [...list.querySelectorAll<HTMLElement>('[data-item]')].filter(
    item => item.dataset.item !== id,
  );
  return others.filter(item => {
    const box = item.getBoundingClientRect();
    return axis === 'across' ? box.left + box.width / 2 < at : box.top + box.height / 2 < at;
  }).length;
}
