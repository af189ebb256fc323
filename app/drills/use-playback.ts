import { useCallback, useEffect, useMemo, useRef, useState } from 'react';

export const SPEEDS = [0.25, 0.5, 1, 2] as const;
export type Speed = (typeof SPEEDS)[number];

/** The stretch that is played again and again, seconds of the rep. */
export interface Loop {
  readonly fromS: number;
  readonly toS: number;
}

/** The clock of one rep on the screen: it plays, stops, is pulled by hand, and stays inside the rep, or inside its loop. */
export interface Playback {
  readonly timeS: number;
  readonly isPlaying: boolean;
  readonly speed: Speed;
  /** Null: the rep is played once. Always inside the rep. */
  readonly loop: Loop | null;
  readonly toggle: () => void;
  readonly seek: (timeS: number) => void;
  /** Shows one instant of the rep, for what is said of it: played after that, the rep begins at the whistle. */
  readonly look: (timeS: number) => void;
  readonly setSpeed: (speed: Speed) => void;
  readonly setLoop: (loop: Loop | null) => void;
}

/** No loop is shorter: it would be a flicker. */
export const SHORTEST_LOOP_S = 0.5;

export function usePlayback(durationS: number): Playback {
  const [timeS, setTimeS] = useState(0);
  const [isPlaying, setPlaying] = useState(false);
  const [speed, setSpeed] = useState<Speed>(1);
  const [wanted, setLoop] = useState<Loop | null>(null);
  const loop = wanted && loopInside(wanted, durationS);
  const now = useRef(0);
  now.current = Math.min(timeS, durationS);
  const latest = useRef(loop);
  latest.current = loop;

  useEffect(() => {
    if (!isPlaying) return;
    let before = performance.now();
    let frame = requestAnimationFrame(function step(at) {
      const next = now.current + ((at - before) / 1000) * speed;
      before = at;
      const round = latest.current;
      if (round !== null && (next >= round.toS || next < round.fromS)) setTimeS(round.fromS);
      else setTimeS(Math.min(next, durationS));
      if (round === null && next >= durationS) setPlaying(false);
      else frame = requestAnimationFrame(step);
    });
    return () => cancelAnimationFrame(frame);
  }, [isPlaying, speed, durationS]);

  const looked = useRef(false);
  const toggle = useCallback(() => {
    const wasLooked = looked.current;
    looked.current = false;
    setPlaying(playing => {
      const isOver = wasLooked || now.current >= durationS - 1e-3;
      if (!playing && latest.current === null && isOver) setTimeS(0);
      return !playing;
    });
  }, [durationS]);
  const seek = useCallback(
    (to: number) => {
      looked.current = false;
      setPlaying(false);
      setTimeS(Math.max(0, Math.min(durationS, to)));
    },
    [durationS],
  );
  const look = useCallback(
    (at: number) => {
      seek(at);
      looked.current = true;
    },
    [seek],
  );
  const shownS = Math.min(timeS, durationS);
  const { fromS, toS } = loop ?? NO_LOOP;
  return useMemo(
    () => ({
      timeS: shownS,
      isPlaying,
      speed,
      loop: Number.isNaN(fromS) ? null : { fromS, toS },
      toggle,
      seek,
      look,
      setSpeed,
      setLoop,
    }),
    [shownS, isPlaying, speed, fromS, toS, toggle, seek, look],
  );
}

const NO_LOOP: Loop = { fromS: Number.NaN, toS: Number.NaN };

/** A loop that a changed rep has outrun is moved into it. */
function loopInside({ fromS, toS }: Loop, durationS: number): Loop {
  const end = Math.max(Math.min(toS, durationS), Math.min(SHORTEST_LOOP_S, durationS));
  return { fromS: Math.max(0, Math.min(fromS, end - SHORTEST_LOOP_S)), toS: end };
}
