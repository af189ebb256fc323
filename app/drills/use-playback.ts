import { useCallback, useEffect, useRef, useState } from 'react';

export const SPEEDS = [0.25, 0.5, 1] as const;
export type Speed = (typeof SPEEDS)[number];

/** The clock of one rep on the screen: it plays, stops, is pulled by hand, and stays inside the rep. */
export interface Playback {
  readonly timeS: number;
  readonly isPlaying: boolean;
  readonly speed: Speed;
  readonly toggle: () => void;
  readonly seek: (timeS: number) => void;
  readonly setSpeed: (speed: Speed) => void;
}

export function usePlayback(durationS: number): Playback {
  const [timeS, setTimeS] = useState(0);
  const [isPlaying, setPlaying] = useState(false);
  const [speed, setSpeed] = useState<Speed>(1);
  const now = useRef(0);
  now.current = Math.min(timeS, durationS);

  useEffect(() => {
    if (!isPlaying) return;
    let before = performance.now();
    let frame = requestAnimationFrame(function step(at) {
      const next = now.current + ((at - before) / 1000) * speed;
      before = at;
      setTimeS(Math.min(next, durationS));
      if (next >= durationS) setPlaying(false);
      else frame = requestAnimationFrame(step);
    });
    return () => cancelAnimationFrame(frame);
  }, [isPlaying, speed, durationS]);

  const toggle = useCallback(() => {
    setPlaying(playing => {
      if (!playing && now.current >= durationS - 1e-3) setTimeS(0);
      return !playing;
    });
  }, [durationS]);
  const seek = useCallback(
    (to: number) => {
      setPlaying(false);
      setTimeS(Math.max(0, Math.min(durationS, to)));
    },
    [durationS],
  );
  return { timeS: Math.min(timeS, durationS), isPlaying, speed, toggle, seek, setSpeed };
}
