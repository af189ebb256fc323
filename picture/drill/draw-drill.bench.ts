import { levelOf, playableOf, type Run, rinkOf, runDrill } from '@icewright/engine';
import type { BenchRow } from '../../cli/bench-row.ts';
import { svgParts } from '../pen/svg-pen.ts';
import { MIDDLE_FIRST } from '../scenes/middle-first.plan.ts';
import { drawScore } from '../score/draw-score.ts';
import { drawDrillOnly } from './draw-drill.ts';

const ROUNDS = 61;
const rink = rinkOf({ preset: '200x85ft' });

/** A drag redraws the drill and its score: both must leave most of a frame of 16 ms to the engine and the browser. */
const bench = async (): Promise<BenchRow[]> => {
  const playable = playableOf(MIDDLE_FIRST, rink, levelOf('collegeWomen'));
  if (playable.kind === 'unplayable') throw new Error('Middle first cannot be played');
  const run = runDrill(playable);
  const drill = timed(() => drillMarkup(run), /data-spot="F3"/);
  const score = timed(() => scoreMarkup(run), /data-spot="F3"/);
  return [rowOf('drill of six spots to markup', drill, 4), rowOf('its score to markup', score, 4)];
};

export default bench;

const drillMarkup = (run: Run): string =>
  svgParts(pen => drawDrillOnly(pen, MIDDLE_FIRST, rink, { run }), { digits: 2 });

const scoreMarkup = (run: Run): string =>
  svgParts(pen => drawScore(pen, run, MIDDLE_FIRST, rink, { width: 920 }), { digits: 1 });

const timed = (draw: () => string, mustHold: RegExp): readonly number[] => {
  if (!mustHold.test(draw())) throw new Error(`the drawing lacks ${mustHold}`);
  const times: number[] = [];
  let length = 0;
  for (let round = 0; round < ROUNDS; round++) {
    const start = performance.now();
    length += draw().length;
    times.push(performance.now() - start);
  }
  if (length === 0) throw new Error('nothing was drawn');
  return times.sort((one, other) => one - other);
};

const rowOf = (name: string, times: readonly number[], budgetMs: number): BenchRow => {
  const at = (share: number): number => times[Math.floor(share * (times.length - 1))] ?? 0;
  return {
    name,
    bar: `≤ ${budgetMs} ms`,
    median: at(0.5),
    spread: `${at(0.05).toFixed(2)} to ${at(0.95).toFixed(2)}`,
    unit: 'ms',
    meets: at(0.5) <= budgetMs,
    note: 'our share of the 16 ms a drag has',
  };
};
