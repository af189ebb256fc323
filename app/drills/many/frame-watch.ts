/** Frames and long tasks of a page while something else works. To be run in the page. */
export interface FramesSeen {
  readonly frames: number;
  readonly seconds: number;
  readonly longestGapMs: number;
  readonly longTaskMs: readonly number[];
}

/** Starts to watch; `stop` gives what was seen. Names nothing outside itself, since it is sent into the page. */
export const watchFrames = (): { readonly stop: () => FramesSeen } => {
  const startMs = performance.now();
  const longTaskMs: number[] = [];
  let frames = 0;
  let lastMs = startMs;
  let longestGapMs = 0;
  let isOn = true;
  const observer = new PerformanceObserver(list => {
    for (const entry of list.getEntries()) longTaskMs.push(entry.duration);
  });
  observer.observe({ type: 'longtask' });
  const frame = (nowMs: number): void => {
    frames++;
    longestGapMs = Math.max(longestGapMs, nowMs - lastMs);
    lastMs = nowMs;
    if (isOn) requestAnimationFrame(frame);
  };
  requestAnimationFrame(frame);
  return {
    stop: () => {
      isOn = false;
      observer.disconnect();
      return { frames, seconds: (performance.now() - startMs) / 1000, longestGapMs, longTaskMs };
    },
  };
};
