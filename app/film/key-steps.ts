/** Which way an arrow key points, x to the right and y down; undefined for other keys. */
export const arrowOf = (key: string): readonly [x: number, y: number] | undefined => ARROWS[key];

const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** Pixels an arrow moves: one, a tenth with Shift, twenty with Ctrl; held down it gathers speed. */
export const pixelsOf = (
  event: {
    readonly shiftKey: boolean;
    readonly ctrlKey: boolean;
    readonly metaKey: boolean;
    readonly repeat: boolean;
  },
  repeats: number,
): number => {
  if (event.shiftKey) return 0.1;
  if (event.ctrlKey || event.metaKey) return 20;
  return event.repeat ? Math.min(16, 1 + Math.floor(repeats / 6) * 3) : 1;
};
