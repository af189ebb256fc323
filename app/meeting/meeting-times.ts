import type { Meeting } from '@icewright/book';
import { type MeetingTime, meetingTime } from '@icewright/engine';
import type { ShownItem } from './shown-item.ts';

export interface ItemTime {
  readonly startS: number;
  readonly endS: number;
  readonly filmS: number;
}

export interface MeetingTimes extends Omit<MeetingTime, 'items'> {
  /** Of the items that are shown; hidden ones take no time. */
  readonly of: ReadonlyMap<string, ItemTime>;
}

export function meetingTimesOf(
  meeting: Pick<Meeting, 'budgetMinutes'>,
  items: readonly ShownItem[],
): MeetingTimes {
  const counted = items.filter(({ item }) => !item.hidden);
  const timed = counted.map(shown => ({
    filmS: filmSecondsOf(shown),
    standS: shown.item.stop?.seconds ?? 0,
    talkS: shown.item.talkMinutes * 60,
  }));
  const { items: times, ...sums } = meetingTime(timed, meeting.budgetMinutes * 60);
  return {
    ...sums,
    of: new Map(counted.map(({ id }, i) => [id, { ...times[i]!, filmS: timed[i]!.filmS }])),
  };
}

export const filmSecondsOf = (shown: ShownItem): number =>
  shown.state === 'there' ? shown.toS - shown.fromS : 0;

/** 40 s, 8 min, 8 min 20 s: to the whole second. */
export function spanSaid(seconds: number): string {
  const whole = Math.round(Math.abs(seconds));
  const [minutes, left] = [Math.floor(whole / 60), whole % 60];
  if (minutes === 0) return `${left} s`;
  return left === 0 ? `${minutes} min` : `${minutes} min ${left} s`;
}

/** 1 min 40 s left, 2 min over, just full. */
export function leftSaid(leftS: number): string {
  if (Math.round(leftS) === 0) return 'just full';
  return leftS > 0 ? `${spanSaid(leftS)} left` : `${spanSaid(leftS)} over`;
}

/** 0:00, 12:05; −0:20 once it has run over. */
export function meetingClock(seconds: number): string {
  const whole = Math.floor(Math.abs(seconds));
  const text = `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`;
  return seconds <= -1 ? `−${text}` : text;
}
