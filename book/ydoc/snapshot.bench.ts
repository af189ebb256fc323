import type { BenchRow } from '../../cli/bench-row.ts';
import { setAt } from './change.ts';
import { newDocument } from './new-document.ts';
import { sampleGame, sampleMoment } from './sample-documents.ts';
import { snapshotOf } from './snapshot.ts';

const momentCount = 1500;
const changeCount = 100;
/** Changes before the clock counts, so that the code is compiled. */
const warmUpCount = 40;

/** One change in a game of 1,500 moments, until a screen has the new value with all else unchanged. */
export default async function snapshotBench(): Promise<BenchRow[]> {
  const moments = Object.fromEntries(
    Array.from({ length: momentCount }, (_, index) => [
      `moment-${index}`,
      sampleMoment('seen from the bench'),
    ]),
  );
  const ydoc = newDocument('game', 'game-bench', { ...sampleGame(), moments } as never);
  let last = snapshotOf(ydoc);
  const timesMs: number[] = [];
  for (let index = 0; index < warmUpCount + changeCount; index += 1) {
    const begin = performance.now();
    setAt(ydoc, ['moments', `moment-${index}`, 'costGoals'], index / 1000, 'bench');
    const next = snapshotOf(ydoc, last);
    if (index >= warmUpCount) timesMs.push(performance.now() - begin);
    checkAnswer(last, next, `moment-${index}`, index / 1000);
    last = next;
  }
  timesMs.sort((a, b) => a - b);
  const at = (ratio: number) => timesMs[Math.floor(ratio * (changeCount - 1))]!;
  return [
    {
      name: `change and read again, game of ${momentCount} moments`,
      bar: 'p95 ≤ 16 ms (one picture)',
      median: at(0.5),
      spread: `p95 ${at(0.95).toFixed(1)}`,
      unit: 'ms',
      meets: at(0.95) <= 16,
    },
  ];
}

type Read = ReturnType<typeof snapshotOf>;

function checkAnswer(before: Read, after: Read, changed: string, costGoals: number): void {
  if (before.read.kind !== 'ok' || after.read.kind !== 'ok') throw new Error('the game is not read');
  const [a, b] = [before.read.value, after.read.value].map(
    value => (value as unknown as { moments: Record<string, { costGoals: number }> }).moments,
  );
  if (b![changed]!.costGoals !== costGoals) throw new Error(`${changed} is not changed`);
  if (Object.keys(b!).some(id => id !== changed && a![id] !== b![id]))
    throw new Error('an unchanged moment is new');
}
