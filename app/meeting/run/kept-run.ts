import { FIRST_RUN, isRunning, type Run, type RunItem } from './meeting-run.ts';

/** Where a meeting stood and when it began, as the speaker's window keeps it for itself: a page loaded again goes on there. */
export interface KeptRun {
  /** The item by its name: the order may have changed meanwhile. */
  readonly item: string;
  readonly phase: Run['phase'];
  readonly from: number;
  readonly heldAt?: number;
  /** Where the film was while it ran, as often as it was written down. */
  readonly filmAt?: number;
  readonly isBlack: boolean;
  readonly turn: number;
  /** By the clock of the machine, milliseconds; absent until the first press. */
  readonly beganMs?: number;
}

export const keptOf = (
  { index, ...run }: Run,
  items: readonly Pick<RunItem, 'id'>[],
  beganMs: number | undefined,
  filmAt?: number,
): KeptRun | undefined => {
  const item = items[index]?.id;
  if (item === undefined) return undefined;
  return {
    ...run,
    item,
    ...(beganMs === undefined ? {} : { beganMs }),
    ...(filmAt !== undefined && isRunning(run) ? { filmAt } : {}),
  };
};

/**
 * The run to go on with. A film that ran is held where it was: a page that was just loaded may not start one with its sound; the team's window, where one runs
 * on, says so and is followed. From the beginning when
 * nothing is kept, its item is gone, or it began longer ago than any meeting takes.
 */
export const runFrom = (
  kept: string | null,
  items: readonly Pick<RunItem, 'id'>[],
  nowMs: number,
): { readonly run: Run; readonly beganMs?: number } => {
  const found = kept === null ? undefined : readKept(kept);
  const index = items.findIndex(({ id }) => id === found?.item);
  if (!found || index < 0 || nowMs - (found.beganMs ?? nowMs) > LONGEST_MS) return { run: FIRST_RUN };
  const { item: _, beganMs, filmAt, ...run } = found;
  return {
    // A window that shows the picture has followed the last order already.
    run: {
      ...run,
      index,
      turn: run.turn + 1,
      ...(isRunning(run) ? { heldAt: run.heldAt ?? filmAt ?? run.from } : {}),
    },
    ...(beganMs === undefined ? {} : { beganMs }),
  };
};
const LONGEST_MS = 4 * 3_600_000;

const PHASES: readonly string[] = ['ready', 'toStop', 'stands', 'toEnd', 'ended', 'over'];

const readKept = (text: string): KeptRun | undefined => {
  try {
    const said = JSON.parse(text) as Partial<KeptRun> | null;
    const isRun =
      typeof said?.item === 'string' &&
      PHASES.includes(said.phase ?? '') &&
      [said.from, said.turn].every(Number.isFinite) &&
      [said.heldAt, said.beganMs, said.filmAt].every(one => one === undefined || Number.isFinite(one)) &&
      typeof said.isBlack === 'boolean';
    return isRun ? (said as KeptRun) : undefined;
  } catch {
    return undefined;
  }
};
