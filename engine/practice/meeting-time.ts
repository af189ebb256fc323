/** What takes time in a meeting; seconds, each ≥ 0. */
export interface TimedItem {
  /** Length of the film that is shown, at real speed. */
  readonly filmS: number;
  /** How long the film stands by the clock. A stand that waits for a press takes no time of its own: the talk does. */
  readonly standS: number;
  readonly talkS: number;
}

export interface MeetingTime {
  /** When each item begins and ends, seconds after the meeting does. */
  readonly items: readonly { readonly startS: number; readonly endS: number }[];
  readonly filmS: number;
  readonly standS: number;
  readonly talkS: number;
  readonly usedS: number;
  /** Of the budget; negative when the meeting runs over. */
  readonly leftS: number;
}

/**
 * The time a meeting takes, seconds: film, stands by the clock and talk, item after item. Items ≥ 0 s, budget > 0 s; no
 * items take no time.
 */
export const meetingTime = (items: readonly TimedItem[], budgetS: number): MeetingTime => {
  const total = { filmS: 0, standS: 0, talkS: 0 };
  let atS = 0;
  const times = items.map(({ filmS, standS, talkS }) => {
    total.filmS += filmS;
    total.standS += standS;
    total.talkS += talkS;
    const startS = atS;
    atS += filmS + standS + talkS;
    return { startS, endS: atS };
  });
  return { items: times, ...total, usedS: atS, leftS: budgetS - atS };
};
