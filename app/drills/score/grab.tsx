import { type KeyboardEvent, type PointerEvent, type ReactNode, useRef } from 'react';

/** How far a hand may tremble before a press is a drag, px. */
const DRAG_FROM_PX = 4;

export interface Moved {
  readonly dxPx: number;
  readonly dyPx: number;
}

/** A part of the score that a mouse, a finger or a key takes hold of: pressed it is chosen, drawn along it is changed. */
export function Grab(props: {
  readonly name: string;
  readonly className: string;
  readonly isPressed?: boolean;
  readonly onPress: () => void;
  /** Begins at the first move; what it gives back is asked at every move, and at the end. */
  readonly onDrag?: () => (moved: Moved) => void;
  readonly onDrop?: () => void;
  readonly onCancel?: () => void;
  readonly onKey?: (event: KeyboardEvent) => void;
  readonly children: ReactNode;
}) {
  const from = useRef<{ x: number; y: number; drag: ((moved: Moved) => void) | null } | null>(null);
  const moved = (event: PointerEvent) => {
    const start = from.current;
    if (start === null || props.onDrag === undefined) return;
    const by = { dxPx: event.clientX - start.x, dyPx: event.clientY - start.y };
    if (start.drag === null && Math.hypot(by.dxPx, by.dyPx) < DRAG_FROM_PX) return;
    start.drag ??= props.onDrag();
    start.drag(by);
  };
  const over = (isKept: boolean) => {
    const wasDrag = from.current?.drag != null;
    const wasPress = from.current !== null && !wasDrag;
    from.current = null;
    if (wasDrag) isKept ? props.onDrop?.() : props.onCancel?.();
    else if (wasPress && isKept) props.onPress();
  };
  return (
    // biome-ignore lint/a11y/useSemanticElements: a button element cannot stand in a drawing
    <g
      role="button"
      tabIndex={0}
      aria-label={props.name}
      aria-pressed={props.isPressed}
      className={props.className}
      onPointerDown={event => {
        if (event.button !== 0) return;
        event.stopPropagation();
        event.currentTarget.setPointerCapture(event.pointerId);
        from.current = { x: event.clientX, y: event.clientY, drag: null };
      }}
      onPointerMove={moved}
      onPointerUp={() => over(true)}
      onPointerCancel={() => over(false)}
      onKeyDown={event => {
        if (event.key === 'Enter') {
          event.preventDefault();
          props.onPress();
        } else if (event.key === 'Escape' && from.current?.drag) {
          event.stopPropagation();
          over(false);
        } else props.onKey?.(event);
      }}
    >
      {props.children}
    </g>
  );
}
