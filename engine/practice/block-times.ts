/** What takes time: the block itself, and moving nets, pucks and people before the next one. Minutes, ≥ 0. */
export interface TimedBlock {
  readonly minutes: number;
  readonly changeoverMinutes: number;
}

export interface BlockTime {
  /** Clock times `HH:MM` of a 24 h day, to the nearest minute; past midnight they start again at 00:00. */
  readonly startsClock: string;
  readonly endsClock: string;
  /** Minutes after the ice starts, exact. */
  readonly startMinute: number;
  readonly endMinute: number;
  /** True when the block ends after the ice does. */
  readonly isOver: boolean;
}

export interface PracticeTimes {
  readonly blocks: readonly BlockTime[];
  /** Blocks and the changeovers between them; after the last block there is nothing to change to. */
  readonly usedMinutes: number;
  /** Ice minutes not used; negative when the blocks run over. */
  readonly leftMinutes: number;
  /** When the ice ends. */
  readonly iceEndsClock: string;
}

const DAY_MINUTES = 24 * 60;

/**
 * Clock times of the blocks of a practice that starts at `startsClock` (`HH:MM`, 24 h) and has `iceMinutes` of ice.
 * Throws on a clock that is none: it was checked where the document was read. Minutes ≥ 0.
 */
export const blockTimes = (
  startsClock: string,
  blocks: readonly TimedBlock[],
  iceMinutes: number,
): PracticeTimes => {
  const firstMinute = minuteOfClock(startsClock);
  let minute = 0;
  let usedMinutes = 0;
  const times = blocks.map(block => {
    const startMinute = minute;
    const endMinute = startMinute + block.minutes;
    usedMinutes = endMinute;
    minute = endMinute + block.changeoverMinutes;
    return {
      startsClock: clockOf(firstMinute + startMinute),
      endsClock: clockOf(firstMinute + endMinute),
      startMinute,
      endMinute,
      isOver: endMinute > iceMinutes,
    };
  });
  return {
    blocks: times,
    usedMinutes,
    leftMinutes: iceMinutes - usedMinutes,
    iceEndsClock: clockOf(firstMinute + iceMinutes),
  };
};

const minuteOfClock = (clock: string): number => {
  const [, hours, minutes] = /^([01]\d|2[0-3]):([0-5]\d)$/.exec(clock) ?? [];
  if (hours === undefined || minutes === undefined) throw new RangeError(`"${clock}" is no clock time HH:MM`);
  return 60 * Number(hours) + Number(minutes);
};

const clockOf = (minute: number): string => {
  const ofDay = ((Math.round(minute) % DAY_MINUTES) + DAY_MINUTES) % DAY_MINUTES;
  const two = (value: number) => String(value).padStart(2, '0');
  return `${two(Math.floor(ofDay / 60))}:${two(ofDay % 60)}`;
};
