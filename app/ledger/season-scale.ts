import type { LedgerLine } from './ledger-lines.ts';

/** Days as whole numbers, so that a season lies on one scale; day 0 is 1 January 1970. */
export const dayNumber = (day: string): number => Math.round(Date.parse(`${day}T00:00:00Z`) / 86_400_000);

/** The weeks to show, Monday to Sunday: from the first thing that happened to a little after today. */
export function weeksOf(lines: readonly LedgerLine[], today: string): { fromDay: number; toDay: number } {
  const days = lines.flatMap(({ games, practised }) =>
    [...games, ...practised].map(({ day }) => dayNumber(day)),
  );
  const first = Math.min(...days, dayNumber(today) - 14);
  const last = Math.max(...days, dayNumber(today));
  return { fromDay: mondayOf(first - 2), toDay: mondayOf(last + 2) + 7 };
}

/** 1 January 1970 was a Thursday. */
const mondayOf = (day: number): number => day - ((((day + 3) % 7) + 7) % 7);

/** Each month with the day it begins on the scale, for the figures below the rule. */
export function monthsOf(fromDay: number, toDay: number): { day: number; said: string }[] {
  const said = new Intl.DateTimeFormat('en-GB', { month: 'long', timeZone: 'UTC' });
  const months: { day: number; said: string }[] = [];
  for (let day = fromDay; day <= toDay; day += 1) {
    const date = new Date(day * 86_400_000);
    if (day === fromDay || date.getUTCDate() === 1) months.push({ day, said: said.format(date) });
  }
  // A month of which only its last days are shown would have its name run into the next.
  return months.filter(
    (month, index) => (months[index + 1]?.day ?? Number.POSITIVE_INFINITY) - month.day > 6,
  );
}
