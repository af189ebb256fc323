import type { RepFacts } from './rep-facts.ts';

/** Eighths of a second: exact in binary, so that both ways of counting meet on the tick. */
export const TICK_S = 1 / 8;

interface Person {
  line: number;
  /** Ticks at which the person works, and when the person stands in the line again. */
  backTick: number;
  goes: number;
  workTicks: number;
}

/**
 * The block as a stopwatch sees it, plainly: tick by tick, everybody looked at each time. At one end, for times that are whole
 * ticks. Slow; what `playBlock` must agree with.
 */
export const watchBlock = (
  rep: RepFacts,
  counts: readonly number[],
  afterS: number,
  lengthS: number,
): {
  readonly startsS: readonly number[];
  readonly goes: readonly number[];
  readonly workS: readonly number[];
} => {
  const people: Person[] = counts.flatMap((count, line) =>
    Array.from({ length: count }, () => ({ line, backTick: 0, goes: 0, workTicks: 0 })),
  );
  const ticks = (timeS: number): number => Math.round(timeS / TICK_S);
  const startsS: number[] = [];
  let dueTick = 0;
  for (let tick = 0; tick + ticks(rep.durationS) <= ticks(lengthS); tick++) {
    if (tick < dueTick) continue;
    const next = rep.spots.map((_, line) => {
      const inLine = people.filter(one => one.line === line).sort((a, b) => a.backTick - b.backTick);
      return inLine[0];
    });
    if (next.every(one => one === undefined)) break;
    if (next.some(one => one !== undefined && one.backTick > tick)) continue;
    startsS.push(tick * TICK_S);
    dueTick = tick + ticks(afterS);
    for (const [line, one] of next.entries()) {
      if (one === undefined) continue;
      const facts = rep.spots[line]!;
      one.goes++;
      one.workTicks += ticks(facts.toS - facts.fromS);
      one.backTick = tick + ticks(facts.freeS + facts.backS);
      one.line = rep.spots.findIndex(other => other.spot === facts.goesTo);
      // Who joins stands behind those who came before, as in a list.
      people.splice(people.indexOf(one), 1);
      people.push(one);
    }
  }
  return {
    startsS,
    goes: people.map(one => one.goes).sort((a, b) => a - b),
    workS: people.map(one => one.workTicks * TICK_S).sort((a, b) => a - b),
  };
};
