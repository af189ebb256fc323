/** What was seen in the page while somebody dragged. */
export interface Watched {
  /** From a pointer's move to the end of the picture that shows its figures. */
  readonly shownMs: readonly number[];
  readonly longTaskMs: readonly number[];
  /** Moves after whose frame the drawing was as before. */
  readonly unchangedCount: number;
  /** The usual time between two pictures. */
  readonly frameMs: number;
}

/**
 * Runs in the page, and so holds everything it needs. Moves are seen before the app sees them; new figures when the
 * drawing has changed; their picture is over when the first task after the next frame begins.
 */
export function watchDrags(): { stop: () => Watched } {
  const shownMs: number[] = [];
  const longTaskMs: number[] = [];
  const framesMs: number[] = [];
  let movedAt: number | null = null;
  let isRunning = true;
  let isInFrame = false;
  let unchangedCount = 0;
  const afterTask = (then: () => void): void => {
    const channel = new MessageChannel();
    channel.port1.onmessage = then;
    channel.port2.postMessage(0);
  };
  const onMove = (event: PointerEvent): void => {
    if (event.buttons > 0 && movedAt === null) movedAt = performance.now();
  };
  window.addEventListener('pointermove', onMove, { capture: true });
  const board = document.querySelector('.drill-drawing')!;
  const changes = new MutationObserver(() => {
    if (movedAt === null) return;
    const from = movedAt;
    movedAt = null;
    const shown = () => afterTask(() => shownMs.push(performance.now() - from));
    // Changed inside a frame, it is in that frame's picture; else in the next one's.
    if (isInFrame) shown();
    else requestAnimationFrame(shown);
  });
  changes.observe(board, { childList: true });
  const tasks = new PerformanceObserver(list => {
    for (const { duration } of list.getEntries()) longTaskMs.push(duration);
  });
  tasks.observe({ type: 'longtask' });
  let lastFrame = 0;
  const onFrame = (now: number): void => {
    if (lastFrame > 0) framesMs.push(now - lastFrame);
    lastFrame = now;
    isInFrame = true;
    const movedBefore = movedAt;
    afterTask(() => {
      isInFrame = false;
      // The hand is drawn to a line of the ice and moves on along it: the picture is already as it should be, and the next change is another move's.
      if (movedBefore === null || movedAt !== movedBefore) return;
      movedAt = null;
      unchangedCount++;
    });
    if (isRunning) requestAnimationFrame(onFrame);
  };
  requestAnimationFrame(onFrame);
  return {
    stop: () => {
      isRunning = false;
      changes.disconnect();
      tasks.disconnect();
      window.removeEventListener('pointermove', onMove, { capture: true });
      framesMs.sort((one, other) => one - other);
      return { shownMs, longTaskMs, unchangedCount, frameMs: framesMs[framesMs.length >> 1] ?? 0 };
    },
  };
}
