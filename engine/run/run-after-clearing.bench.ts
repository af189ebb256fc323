import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import type { BenchRow } from '../../cli/bench-row.ts';
import { playableFrom } from './drill-shorthand.reference.ts';
import { runMemory } from './recorder.ts';
import { busyDrill } from './run-drill.bench.ts';
import { runDrill } from './run-drill.ts';

const ROUNDS = 41;
const WARM_UP = 30;
const BAR = 2.5;

/**
 * A run right after memory was cleared, against the usual one: what was compiled for a run must still be there. See
 * docs/decisions/what-a-run-was-made-of-stays.md.
 */
export default async (): Promise<BenchRow[]> => {
  setFlagsFromString('--expose-gc');
  const clear = runInNewContext('gc') as () => void;
  const playable = playableFrom(busyDrill());
  const memory = runMemory();
  const play = (): number => msOf(() => runDrill(playable, { limitS: 20, memory }));
  for (let i = 0; i < WARM_UP; i++) play();
  // All of these come first: after a clearing the run after the next is not the usual one yet.
  const usualMs = middleOf(Array.from({ length: ROUNDS }, play));
  const cleared = Array.from({ length: ROUNDS }, () => {
    clear();
    return play() / usualMs;
  });
  const median = middleOf(cleared);
  return [
    {
      name: 'a run right after memory was cleared, against the usual one',
      bar: `≤ ${BAR} ×`,
      median,
      spread: `${Math.min(...cleared).toFixed(2)} to ${Math.max(...cleared).toFixed(2)}`,
      unit: '×',
      meets: median <= BAR,
      note: `processor time; usual ${usualMs.toFixed(2)} ms`,
    },
  ];
};

const middleOf = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[values.length >> 1]!;

const msOf = (work: () => unknown): number => {
  const from = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(from);
  return (user + system) / 1000;
};
