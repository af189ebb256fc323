import { growthRow } from '../../cli/bench-growth.ts';
import type { BenchRow } from '../../cli/bench-row.ts';
import type { DrillPlan } from '../drill/drill.ts';
import { at, planOf, playableFrom, skate, type TestSpot } from './drill-shorthand.reference.ts';
import { runDrill } from './run-drill.ts';

const SKATERS = [2, 4, 8, 16, 24] as const;
const SECONDS = [5, 10, 20, 40] as const;

/** How the cost of a run grows: the exponent of the straight line through log size and log time. Linear is 1. */
export default async (): Promise<BenchRow[]> => {
  const bySkaters = SKATERS.map(count => ({ size: count, work: runOf(crowd(count, 20), 20) }));
  const bySteps = SECONDS.map(seconds => ({ size: 120 * seconds, work: runOf(crowd(12, seconds), seconds) }));
  return [
    growthRow('a run grows with skaters, 2 to 24', bySkaters),
    growthRow('a run grows with steps, 5 to 40 s at 120 Hz', bySteps),
  ];
};

/** Half of them skate to and fro all the time, the other half keep a gap to one each: nobody is idle. */
const crowd = (count: number, seconds: number): DrillPlan => {
  const half = count / 2;
  const place = (i: number): number => -11 + (22 * (i + 0.5)) / half;
  const skaters: TestSpot[] = Array.from({ length: half }, (_, i) => ({
    role: `F${i}`,
    atM: at(-4, place(i)),
    acts: [
      skate(
        Array.from({ length: Math.ceil(seconds / 2.5) }, (_, lap) =>
          at(lap % 2 ? -16 : 16, place(i) + (lap % 4 < 2 ? 0.4 : -0.4)),
        ),
      ),
    ],
  }));
  const gaps: TestSpot[] = Array.from({ length: half }, (_, i) => ({
    role: `D${i}`,
    side: 'them',
    atM: at(6, place(i)),
    acts: [{ kind: 'gap', whom: `F${i}` as never, distanceM: 3 }],
  }));
  return planOf([...skaters, ...gaps]);
};

/** A run of that many seconds, checked once: as long as asked, and everybody moved. */
const runOf = (plan: DrillPlan, seconds: number): (() => void) => {
  const playable = playableFrom(plan);
  const options = { limitS: seconds };
  const done = runDrill(playable, options);
  const isWhole = done.sampleCount === 120 * seconds + 1 && done.tracks.every(track => track.distanceM > 2);
  if (!isWhole)
    throw new Error(`${done.tracks.length} skaters for ${seconds} s gave ${done.sampleCount} samples`);
  return () => {
    runDrill(playable, options);
  };
};
