import { type KeyboardEvent, type PointerEvent, type ReactNode, useEffect, useRef } from 'react';

/** How far a hand may tremble before a press is a drag, px. */
const DRAG_FROM_PX = 4;

export interface Moved {
  readonly dxPx: number;
  readonly dyPx: number;
}

interface GrabProps {
  readonly name: string;
  readonly className: string;
  readonly isPressed?: boolean;
  readonly onPress: () => void;
  /** Begins at the first move; what it gives back is asked at every move. */
  readonly onDrag?: () => (moved: Moved) => void;
  readonly onDrop?: () => void;
  readonly onCancel?: () => void;
  readonly onKey?: (event: KeyboardEvent) => void;
  readonly children: ReactNode;
}

/** A part of the score that a mouse, a finger or a key takes hold of: pressed it is chosen, drawn along it is changed. */
export function Grab(props: GrabProps) {
  const take = useTake(props);
  return (
    // biome-ignore lint/a11y/useSemanticElements: a button element cannot stand in a drawing
    <g
      role="button"
      tabIndex={0}
      aria-label={props.name}
      aria-pressed={props.isPressed}
      className={props.className}
      onPointerDown={take}
      onKeyDown={event => {
        if (event.key === 'Enter') {
          event.preventDefault();
          props.onPress();
        } else props.onKey?.(event);
      }}
    >
      {props.children}
    </g>
  );
}

/**
 * From the press to where it is let go. The page listens and not the part itself: the drawing is laid out anew at every
 * move, and a part that changes its place among the others loses the pointer.
 */
function useTake(props: GrabProps): (event: PointerEvent) => void {
  const latest = useRef(props);
  latest.current = props;
  const stop = useRef<(() => void) | null>(null);
  const give = useRef<(() => void) | null>(null);
  // What is held may go from the drill, and its part of the score with it: then the hand is empty.
  useEffect(() => () => give.current?.(), []);
  return event => {
    if (event.button !== 0) return;
    event.stopPropagation();
    const { pointerId, clientX, clientY } = event;
    let drag: ((moved: Moved) => void) | null = null;
    const moved = (at: globalThis.PointerEvent) => {
      if (at.pointerId !== pointerId || latest.current.onDrag === undefined) return;
      const by = { dxPx: at.clientX - clientX, dyPx: at.clientY - clientY };
      if (drag === null && Math.hypot(by.dxPx, by.dyPx) < DRAG_FROM_PX) return;
      drag ??= latest.current.onDrag();
      drag(by);
    };
    const over = (isKept: boolean) => {
      stop.current?.();
      if (drag !== null) isKept ? latest.current.onDrop?.() : latest.current.onCancel?.();
      else if (isKept) latest.current.onPress();
    };
    const up = (at: globalThis.PointerEvent) => at.pointerId === pointerId && over(true);
    const cancel = (at: globalThis.PointerEvent) => at.pointerId === pointerId && over(false);
    const putBack = (key: globalThis.KeyboardEvent) => key.key === 'Escape' && drag !== null && over(false);
    stop.current?.();
    give.current = () => over(false);
    stop.current = () => {
      give.current = null;
      window.removeEventListener('pointermove', moved);
      window.removeEventListener('pointerup', up);
      window.removeEventListener('pointercancel', cancel);
      window.removeEventListener('keydown', putBack, true);
      stop.current = null;
    };
    window.addEventListener('pointermove', moved);
    window.addEventListener('pointerup', up);
    window.addEventListener('pointercancel', cancel);
    window.addEventListener('keydown', putBack, true);
  };
}
