import type { ItemFrames } from '../item-frames.ts';

/** An item as it is run. Without frames its film is not at hand: its words are shown, and a press goes on. */
export interface RunItem {
  readonly id: string;
  readonly frames?: ItemFrames | undefined;
  /** Its film is on its way: a press waits for it. */
  readonly isOpening?: boolean;
}

/**
 * Where a meeting stands. A press shows the next thing the team should see: the film runs to where it is to stand, runs on to its
 * end, and the next item's film runs. Its first picture stands, while its line is said, for whoever goes there by skipping or by going
 * back, and at the beginning.
 */
export interface Run {
  readonly index: number;
  readonly phase: 'ready' | 'toStop' | 'stands' | 'toEnd' | 'ended' | 'over';
  /** The frame from which the film runs. */
  readonly from: number;
  /** The frame at which the film is held in between. */
  readonly heldAt?: number;
  readonly isBlack: boolean;
  /** Counts what the players are told, so that a late answer to an older order is known as one. */
  readonly turn: number;
}

export type Press =
  | { readonly does: 'on' | 'back' | 'skip' }
  /** With the frame that is shown, since the film stands still meanwhile. */
  | { readonly does: 'black' | 'hold'; readonly frameIndex: number }
  | { readonly does: 'to'; readonly index: number }
  /** A player stands where it was told to run to. */
  | { readonly does: 'arrived'; readonly turn: number }
  /** The team's window still follows the order that was given before this page was loaded again, and is so far. */
  | { readonly does: 'found'; readonly turn: number; readonly frameIndex: number };

export const FIRST_RUN: Run = { index: 0, phase: 'ready', from: 0, isBlack: false, turn: 0 };

export function nextRun(run: Run, press: Press, items: readonly RunItem[]): Run {
  switch (press.does) {
    case 'on':
      return run.isBlack ? lit(run) : run.heldAt === undefined ? goOn(run, items) : letGo(run);
    case 'back':
      return run.isBlack ? lit(run) : goBack(run, items);
    case 'skip':
      // Out of the last there is nothing to skip to: one key too many does not end a meeting.
      return run.index + 1 < items.length ? readyAt(run, run.index + 1) : run;
    case 'black':
      return run.isBlack ? lit(run) : { ...held(run, press.frameIndex), isBlack: true };
    case 'hold':
      return run.heldAt === undefined ? held(run, press.frameIndex) : letGo(run);
    case 'to':
      return readyAt(run, Math.max(0, Math.min(items.length - 1, press.index)));
    case 'arrived':
      if (press.turn !== run.turn || run.heldAt !== undefined) return run;
      if (run.phase === 'toStop') return { ...run, phase: 'stands', turn: run.turn + 1 };
      return run.phase === 'toEnd' ? { ...run, phase: 'ended', turn: run.turn + 1 } : run;
    case 'found':
      return isRunning(run) && press.turn === run.turn - 1
        ? letGo({ ...run, heldAt: Math.max(run.from, press.frameIndex) })
        : run;
  }
}

/** What a player is told: to stand at a frame, or to run from one to another. Null: there is no picture. */
export type Order =
  | { readonly turn: number; readonly stand: number }
  | { readonly turn: number; readonly from: number; readonly to: number };

export function orderOf(run: Run, items: readonly RunItem[]): Order | null {
  const frames = items[run.index]?.frames;
  const { turn, phase } = run;
  if (frames === undefined || phase === 'over') return null;
  if (run.heldAt !== undefined) return { turn, stand: run.heldAt };
  if (phase === 'ready') return { turn, stand: frames.first };
  if (phase === 'stands') return { turn, stand: frames.stop ?? frames.last };
  if (phase === 'ended') return { turn, stand: frames.last };
  return { turn, from: run.from, to: phase === 'toStop' ? (frames.stop ?? frames.last) : frames.last };
}

/** What the next press does, in words. */
export function onSaid(run: Run, items: readonly RunItem[]): string {
  if (run.isBlack) return 'Show the picture again';
  if (run.heldAt !== undefined) return 'Run on';
  const next = goOn(run, items);
  if (next.phase === 'over') return run.phase === 'over' ? 'The end' : 'To the end';
  if (next.index !== run.index) return isRunning(next) ? 'Run the next moment' : 'The next moment';
  if (next.phase === 'stands') return 'To where it stands';
  return run.phase === 'ready' ? 'Run the film' : 'Run on';
}

const lit = (run: Run): Run => ({ ...run, isBlack: false });

export const isRunning = ({ phase }: Pick<Run, 'phase'>): boolean => phase === 'toStop' || phase === 'toEnd';

const held = (run: Run, frameIndex: number): Run =>
  isRunning(run) && run.heldAt === undefined ? { ...run, heldAt: frameIndex, turn: run.turn + 1 } : run;

function letGo({ heldAt, ...run }: Run): Run {
  return heldAt === undefined ? run : { ...run, from: heldAt, turn: run.turn + 1 };
}

function goOn(run: Run, items: readonly RunItem[]): Run {
  const { frames, isOpening } = items[run.index] ?? {};
  const to = (phase: Run['phase'], from = run.from): Run => ({ ...run, phase, from, turn: run.turn + 1 });
  const next = () => begun(itemAfter(run, items), items);
  if (run.phase === 'over' || isOpening) return run;
  if (frames === undefined) return next();
  const { first, stop, last } = frames;
  switch (run.phase) {
    case 'ready':
      // It stands at its first picture already, or is one picture alone.
      if (last === first) return next();
      return to(stop === undefined || stop === first ? 'toEnd' : 'toStop', first);
    case 'toStop':
      return to('stands');
    case 'stands':
      return stop === undefined || stop >= last ? next() : to('toEnd', stop);
    default:
      return next();
  }
}

const itemAfter = (run: Run, items: readonly RunItem[]): Run =>
  run.index + 1 < items.length
    ? readyAt(run, run.index + 1)
    : { index: run.index, phase: 'over', from: run.from, isBlack: false, turn: run.turn + 1 };

/** An item as the press that comes to it shows it: its film runs, or stands where it is to stand at once. */
function begun(run: Run, items: readonly RunItem[]): Run {
  const { frames, isOpening } = items[run.index] ?? {};
  if (run.phase !== 'ready' || frames === undefined || isOpening) return run;
  if (frames.stop === frames.first) return { ...run, phase: 'stands', from: frames.first };
  return frames.last === frames.first ? run : goOn(run, items);
}

function goBack(run: Run, items: readonly RunItem[]): Run {
  if (run.phase === 'over') return readyAt(run, items.length - 1);
  return readyAt(run, run.phase === 'ready' ? Math.max(0, run.index - 1) : run.index);
}

const readyAt = ({ turn }: Run, index: number): Run => ({
  index,
  phase: 'ready',
  from: 0,
  isBlack: false,
  turn: turn + 1,
});
