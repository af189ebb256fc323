/** The minutes at which a clock time stands over the plan. */
export interface ClockLabels {
  readonly minutes: readonly number[];
  /** Minutes between two marks of the rule. */
  readonly step: number;
}

/**
 * Clock times that do not touch: beginning and end of the ice always, of the marks between as many as have room, each
 * second one first. `roomMinutes` is what one label is wide with its gap, on the scale of the plan.
 */
export function clockLabelsOf(span: number, iceMinutes: number, roomMinutes: number): ClockLabels {
  const step = span > 100 ? 10 : 5;
  const marks = Array.from({ length: Math.floor(span / step) + 1 }, (_, index) => index * step);
  const even = marks.filter(minute => minute % (2 * step) === 0);
  const placed: [from: number, to: number][] = [];
  const shown: number[] = [];
  for (const minute of new Set([0, iceMinutes, ...even, ...marks])) {
    const [from, to] = standsAt(minute, iceMinutes, roomMinutes);
    if (placed.some(([left, right]) => from < right && to > left)) continue;
    placed.push([from, to]);
    shown.push(minute);
  }
  return { minutes: shown.sort((a, b) => a - b), step };
}

/** The first begins at its mark, the last ends there, all others stand on the middle. */
const standsAt = (minute: number, iceMinutes: number, room: number): [from: number, to: number] => {
  if (minute === 0) return [0, room];
  return minute === iceMinutes ? [minute - room, minute] : [minute - room / 2, minute + room / 2];
};
