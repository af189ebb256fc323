import { type KeyboardEvent, type PointerEvent, useEffect, useRef, useState } from 'react';

interface Hand {
  readonly id: string;
  readonly toIndex: number;
  readonly byPx: number;
}

interface Start {
  readonly id: string;
  readonly at: number;
  readonly pointerId: number;
  /** A finger first holds still, so that a page can still be scrolled by what lies on it. */
  isHeld: boolean;
  readonly timer: ReturnType<typeof setTimeout> | undefined;
}

const HOLD_MS = 350;
const STILL_PX = 6;

/**
 * Puts the items of a list in another order: dragged by mouse, held and dragged by a finger, or moved with Alt and the
 * arrows. Elements carry `data-item` inside a `data-list`; the order changes when the hand lets go, and Escape lets go
 * without a change.
 */
export function useReorder(
  ids: readonly string[],
  axis: 'across' | 'down',
  onMove: (id: string, toIndex: number) => void,
) {
  const [hand, setHand] = useState<Hand | null>(null);
  const start = useRef<Start | null>(null);
  const along = (event: PointerEvent) => (axis === 'across' ? event.clientX : event.clientY);
  const letGo = () => {
    clearTimeout(start.current?.timer);
    start.current = null;
    setHand(null);
  };
  useEffect(() => {
    // Once something is held, the finger moves it and not the page.
    const keepStill = (event: TouchEvent) => {
      if (start.current?.isHeld) event.preventDefault();
    };
    document.addEventListener('touchmove', keepStill, { passive: false });
    return () => document.removeEventListener('touchmove', keepStill);
  }, []);

  const handle = (id: string) => ({
    onPointerDown: (event: PointerEvent<HTMLElement>) => {
      if (event.button !== 0) return;
      const isTouch = event.pointerType === 'touch';
      event.currentTarget.setPointerCapture(event.pointerId);
      start.current = {
        id,
        at: along(event),
        pointerId: event.pointerId,
        isHeld: !isTouch,
        timer: isTouch ? setTimeout(() => hold(id), HOLD_MS) : undefined,
      };
    },
    onPointerMove: (event: PointerEvent<HTMLElement>) => {
      const began = start.current;
      if (began === null || began.pointerId !== event.pointerId) return;
      const byPx = along(event) - began.at;
      if (!began.isHeld) {
        if (Math.abs(byPx) > STILL_PX) letGo();
        return;
      }
      if (hand === null && Math.abs(byPx) < STILL_PX) return;
      const list = event.currentTarget.closest('[data-list]');
      const toIndex = list === null ? ids.indexOf(id) : indexAt(list, id, along(event), axis);
      setHand({ id, byPx, toIndex });
    },
    onPointerUp: () => {
      if (hand !== null && hand.toIndex !== ids.indexOf(id)) onMove(id, hand.toIndex);
      letGo();
    },
    onPointerCancel: letGo,
    onContextMenu: (event: { preventDefault(): void }) => {
      if (start.current?.isHeld) event.preventDefault();
    },
  });

  const hold = (id: string) => {
    if (start.current?.id !== id) return;
    start.current.isHeld = true;
    setHand({ id, byPx: 0, toIndex: ids.indexOf(id) });
  };

  const onKeyDown = (id: string) => (event: KeyboardEvent) => {
    const [earlier, later] = axis === 'across' ? ['ArrowLeft', 'ArrowRight'] : ['ArrowUp', 'ArrowDown'];
    if (event.key === 'Escape' && start.current !== null) letGo();
    if (!event.altKey || (event.key !== earlier && event.key !== later)) return;
    event.preventDefault();
    const to = ids.indexOf(id) + (event.key === earlier ? -1 : 1);
    if (to >= 0 && to < ids.length) onMove(id, to);
  };

  return { hand, handle, onKeyDown };
}

/** Class names of an item while the hand holds one: what is held, and where it would be put. */
export function handClasses(
  id: string,
  hand: Pick<Hand, 'id' | 'toIndex'> | null,
  ids: readonly string[],
): string[] {
  if (hand === null) return [];
  if (hand.id === id) return ['in-hand'];
  // Before this one, or after the last.
  const others = ids.filter(other => other !== hand.id);
  if (others[hand.toIndex] === id) return ['before-here'];
  return hand.toIndex === others.length && others.at(-1) === id ? ['after-here'] : [];
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
