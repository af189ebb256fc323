import type { HabitTally } from '@icewright/engine';
import type { Change, LedgerBand, LedgerPlace, LedgerRow } from '@icewright/picture';
import type { LedgerLine } from './ledger-lines.ts';
import { dayNumber } from './season-scale.ts';

/** A band reaches a little over its first and last game, so that one game alone shows its interval. */
const BAND_REACH_DAYS = 2;

/** The values of a ledger line as the picture room draws them. */
export function rowOf(line: LedgerLine, scale: Pick<LedgerPlace, 'fromDay' | 'toDay'>): LedgerRow {
  const { practised } = line;
  const firstDay = practised[0] === undefined ? undefined : dayNumber(practised[0].day);
  const days = line.games.map(({ day }) => dayNumber(day));
  const [from, to] = [Math.min(...days) - BAND_REACH_DAYS, Math.max(...days) + BAND_REACH_DAYS];
  const split = firstDay ?? to;
  const before = bandOf(line.before, Math.max(from, scale.fromDay), Math.min(split - 0.5, scale.toDay));
  const after = bandOf(line.after, split + 0.5, Math.min(to, scale.toDay));
  return {
    games: line.games.flatMap(({ day, tally: { rate } }) =>
      'kind' in rate
        ? []
        : [{ day: dayNumber(day), rate: rate.rateRatio, low: rate.lowerRatio, high: rate.upperRatio }],
    ),
    ...(before === undefined ? {} : { before }),
    ...(after === undefined ? {} : { after }),
    ...(firstDay === undefined ? {} : { practisedFromDay: firstDay }),
    practices: practised.map(({ day, minutes }) => ({ day: dayNumber(day), minutes })),
    wanted: line.habit.wantedRatio,
  };
}

function bandOf({ rate }: HabitTally, fromDay: number, toDay: number): LedgerBand | undefined {
  if ('kind' in rate || toDay <= fromDay) return undefined;
  return { fromDay, toDay, rate: rate.rateRatio, low: rate.lowerRatio, high: rate.upperRatio };
}

const VERDICTS = {
  'moved up': 'movedUp',
  'moved down': 'movedDown',
  'no sign yet': 'noSignYet',
  'cannot tell': 'cannotTell',
} as const;

/** The change in points; null where one side has no chances. */
export function changeOf({ change }: LedgerLine): Change | null {
  if (change === null || 'kind' in change.change) return null;
  const { differenceRatio, lowerRatio, upperRatio } = change.change;
  return {
    points: differenceRatio * 100,
    low: lowerRatio * 100,
    high: upperRatio * 100,
    verdict: VERDICTS[change.word],
  };
}
