/** How figures are written: one place, so that a length or a clock time reads the same on every screen. */

export type Lengths = 'metres' | 'feet';
export type ClockFace = '24' | '12';

const FEET_IN_A_METRE = 1 / 0.3048; // exact by definition of the foot

const MINUS = '\u2212';

export function lengthSaid(lengthM: number, lengths: Lengths, digits = 1): string {
  return `${lengthNumberSaid(lengthM, lengths, digits)}\u2009${LENGTH_UNIT[lengths]}`;
}

/** A length without its unit, where the unit stands beside it. */
export const lengthNumberSaid = (lengthM: number, lengths: Lengths, digits = 1): string =>
  lengths === 'metres'
    ? numberSaid(lengthM, digits)
    : numberSaid(lengthM * FEET_IN_A_METRE, Math.max(0, digits - 1));

export const LENGTH_UNIT: Readonly<Record<Lengths, string>> = { metres: 'm', feet: 'ft' };

/** A figure in the unit it was computed in, turned to feet where that unit is a length or a speed. */
export const inUnitsOf = (lengths: Lengths, value: number, unit: string): string => {
  if (lengths === 'metres' || (unit !== 'm' && unit !== 'm/s')) return `${numberSaid(value)} ${unit}`;
  return `${lengthNumberSaid(value, lengths)} ${unit === 'm' ? 'ft' : 'ft/s'}`;
};

export const areaSaid = (areaSqM: number, lengths: Lengths): string =>
  lengths === 'metres'
    ? `${numberSaid(areaSqM, 0)}\u2009m²`
    : `${numberSaid(areaSqM * FEET_IN_A_METRE ** 2, 0)}\u2009sq ft`;

export const plusMinusSaid = (halfM: number, lengths: Lengths) => `± ${lengthSaid(halfM, lengths)}`;

export function numberSaid(value: number, digits = 1): string {
  const written = Math.abs(value).toFixed(digits);
  return value < 0 && Number(written) !== 0 ? `${MINUS}${written}` : written;
}

export const percentSaid = (ratio: number) => `${Math.round(ratio * 100)}\u2009%`;

/**
 * Whole hundredths of counts that sum to 100: the first as it is rounded everywhere, the others by the largest remainder. All 0 without
 * any.
 */
export function hundredthsOf([first = 0, ...others]: readonly number[]): readonly number[] {
  const sum = others.reduce((all, one) => all + one, first);
  if (sum === 0) return [first, ...others].map(() => 0);
  const firstShare = Math.round((100 * first) / sum);
  const exact = others.map(count => (100 * count) / sum);
  const shares = exact.map(Math.floor);
  let left = 100 - firstShare - shares.reduce((all, one) => all + one, 0);
  const byRemainder = exact
    .map((share, i) => ({ i, rest: share - Math.floor(share) }))
    .sort((a, b) => b.rest - a.rest);
  for (const { i } of byRemainder) {
    if (left <= 0) break;
    shares[i]!++;
    left--;
  }
  return [firstShare, ...shares];
}

/** +23, −4, 0: a change in points of a percentage. */
export function pointsSaid(ratio: number): string {
  const points = Math.round(ratio * 100);
  return points > 0 ? `+${points}` : points < 0 ? `${MINUS}${-points}` : '0';
}

/** `clock` is 19:40 as documents hold it. */
export function clockSaid(clock: string, face: ClockFace): string {
  if (face === '24') return clock;
  const [hours = 0, minutes = 0] = clock.split(':').map(Number);
  return `${((hours + 11) % 12) + 1}:${String(minutes).padStart(2, '0')}\u2009${hours < 12 ? 'am' : 'pm'}`;
}

/** A clock time as somebody typed it, in either face, as 19:40; null when it is none. */
export function findClock(typed: string): string | null {
  const [, hour = '', minute = '00', half] =
    /^\s*(\d{1,2})(?:[:.h ](\d{2}))?\s*([ap])?\.?(?:m\.?)?\s*$/i.exec(typed.replaceAll('\u2009', ' ')) ?? [];
  if (hour === '' || (half !== undefined && (Number(hour) < 1 || Number(hour) > 12))) return null;
  const hours =
    half === undefined ? Number(hour) : (Number(hour) % 12) + (half.toLowerCase() === 'p' ? 12 : 0);
  if (hours > 23 || Number(minute) > 59) return null;
  return `${String(hours).padStart(2, '0')}:${minute}`;
}

export function clockAfter(clock: string, minutes: number): string {
  const [hours = 0, start = 0] = clock.split(':').map(Number);
  const total = (((hours * 60 + start + Math.round(minutes)) % 1440) + 1440) % 1440;
  return `${String(Math.floor(total / 60)).padStart(2, '0')}:${String(total % 60).padStart(2, '0')}`;
}

/** Thu 12 Nov; a day is a day wherever it is read, so it is formatted as UTC. */
export function daySaid(day: string, length: 'short' | 'long' = 'short'): string {
  const parts = new Intl.DateTimeFormat('en-GB', {
    weekday: length,
    day: 'numeric',
    month: length === 'short' ? 'short' : 'long',
    timeZone: 'UTC',
  }).formatToParts(new Date(`${day}T00:00:00Z`));
  const part = (type: string) => parts.find(one => one.type === type)?.value ?? '';
  return `${part('weekday')} ${part('day')} ${part('month').replace('Sept', 'Sep')}`;
}

/** 12 Nov. */
export const dayInMonth = (day: string) => daySaid(day).split(' ').slice(1).join(' ');

/** Today as the person at the desk has it. */
export function today(): string {
  const now = new Date();
  return `${now.getFullYear()}-${String(now.getMonth() + 1).padStart(2, '0')}-${String(now.getDate()).padStart(2, '0')}`;
}

export function daysBetween(from: string, to: string): number {
  return Math.round((Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / 86_400_000);
}

/** in 3 days, today, 9 days ago; seen from another day for what is read on that day. */
export function fromToday(day: string, from = today()): string {
  const days = daysBetween(from, day);
  if (days === 0) return 'today';
  if (days === 1) return 'tomorrow';
  if (days === -1) return 'yesterday';
  return days > 0 ? `in ${days} days` : `${-days} days ago`;
}

/** 1 game, 3 games. */
export const countSaid = (count: number, one: string, many = `${one}s`) =>
  `${count} ${count === 1 ? one : many}`;
