/** Watches whether somebody does anything on a page. */
export interface Stillness {
  /** Something was done that the page does not tell of by itself. */
  readonly acted: () => void;
  readonly forMs: () => number;
  readonly stop: () => void;
}

/** How long nobody has touched a key, a pointer or the wheel: what is made in the background waits for that. */
export const watchStillness = (page: EventTarget, nowMs: () => number): Stillness => {
  let actedMs = nowMs();
  const acted = () => {
    actedMs = nowMs();
  };
  // Before anything on the page can keep an event to itself.
  const how = { capture: true, passive: true };
  for (const kind of ACTS) page.addEventListener(kind, acted, how);
  return {
    acted,
    forMs: () => nowMs() - actedMs,
    stop: () => {
      for (const kind of ACTS) page.removeEventListener(kind, acted, how);
    },
  };
};

const ACTS = ['keydown', 'pointerdown', 'pointermove', 'wheel'] as const;
