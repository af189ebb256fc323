/** A waiting line, while a block goes on. Seconds from the first whistle. */
export interface Queue {
  /** Who waits, in the order in which they came, and since when. */
  readonly who: number[];
  readonly sinceS: number[];
  goCount: number;
  standsLongestS: number;
  standsSumS: number;
  /** Rests of those who had gone before, and how many. */
  restSumS: number;
  restCount: number;
  /** Reps that waited for this line, and reps without anybody from it. */
  lateCount: number;
  emptyCount: number;
}

/** A line that nobody stands in. */
export const queueOf = (): Queue => ({
  who: [],
  sinceS: [],
  goCount: 0,
  standsLongestS: 0,
  standsSumS: 0,
  restSumS: 0,
  restCount: 0,
  lateCount: 0,
  emptyCount: 0,
});

/** Takes the place that belongs to the time: whoever is back sooner stands further ahead, equal times in the order of coming. */
export const joinQueue = (queue: Queue, who: number, atS: number): void => {
  let place = queue.who.length;
  while (place > 0 && queue.sinceS[place - 1]! > atS) place--;
  queue.who.splice(place, 0, who);
  queue.sinceS.splice(place, 0, atS);
};

/** The first of the line goes at that time; undefined, and one more rep without anybody, when the line is empty. */
export const leaveQueue = (queue: Queue, atS: number): number | undefined => {
  const who = queue.who.shift();
  const sinceS = queue.sinceS.shift();
  if (who === undefined || sinceS === undefined) {
    queue.emptyCount++;
    return undefined;
  }
  const stoodS = atS - sinceS;
  queue.goCount++;
  queue.standsSumS += stoodS;
  queue.standsLongestS = Math.max(queue.standsLongestS, stoodS);
  return who;
};
