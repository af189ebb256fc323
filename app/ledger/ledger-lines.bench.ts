import { emptyGame, emptyTeam, type Game, newDocument, readDocument, type Team } from '@icewright/book';
import { randomOf, rinkOf } from '@icewright/engine';
import * as Y from 'yjs';
import type { BenchRow } from '../../cli/bench-row.ts';
import { ledgerLinesOf } from './ledger-lines.ts';

const GAMES = 80;
const MOMENTS = 1500;
const HABITS = 10;
const ROUNDS = 5;
const BUDGET_MS = 500;

/** A season as large as one gets: its documents read from their stored bytes, and every line of the ledger counted. */
const bench = async (): Promise<BenchRow[]> => {
  const rink = rinkOf({ preset: '60x30m' });
  const team = teamOf();
  const { bytes, doneCount } = gameBytes();
  const readMs: number[] = [];
  const countMs: number[] = [];
  for (let round = 0; round < ROUNDS; round += 1) {
    const before = performance.now();
    const games = Array.from({ length: GAMES }, (_, index) => [`g${index}`, readGame(bytes)] as const);
    const read = performance.now();
    const lines = ledgerLinesOf(team, { games, practices: [], drills: new Map() }, rink, '2026-11-25');
    countMs.push(performance.now() - read);
    readMs.push(read - before);
    const seen = lines.reduce((sum, line) => sum + line.before.doneCount, 0);
    if (seen !== doneCount * GAMES)
      throw new Error(`the ledger counts ${seen} done, ${doneCount * GAMES} were made`);
  }
  const size = `${GAMES} games × ${MOMENTS} moments, ${HABITS} habits, judged by eye`;
  return [
    rowOf('ledger: count every line', countMs, size),
    rowOf(
      'ledger: read all games from their bytes',
      readMs,
      `${size}; the browser’s store and the painting are not in it`,
    ),
  ];
};

export default bench;

function rowOf(name: string, times: readonly number[], note: string): BenchRow {
  const sorted = [...times].sort((a, b) => a - b);
  const median = sorted[Math.floor(sorted.length / 2)]!;
  return {
    name,
    bar: `≤ ${BUDGET_MS} ms`,
    median,
    spread: `${sorted[0]!.toFixed(0)} to ${sorted.at(-1)!.toFixed(0)}`,
    unit: 'ms',
    meets: median <= BUDGET_MS,
    note,
  };
}

function readGame(bytes: Uint8Array): Game {
  const ydoc = new Y.Doc();
  Y.applyUpdate(ydoc, bytes);
  const read = readDocument(ydoc);
  if (read.kind !== 'ok' || read.value.kind !== 'game')
    throw new Error(`a game of ours cannot be read: ${read.kind}`);
  return read.value;
}

function gameBytes(): { bytes: Uint8Array; doneCount: number } {
  const random = randomOf(7);
  let doneCount = 0;
  const moments = Object.fromEntries(
    Array.from({ length: MOMENTS }, (_, index) => {
      const isDone = random.uniform() < 0.6;
      if (isDone) doneCount += 1;
      return [
        `moment-${index}`,
        {
          habit: `habit-${index % HABITS}`,
          verdict: isDone ? 'done' : 'missed',
          film: 'film',
          filmTimeS: index * 2.4,
          frameIndex: index * 72,
          costGoals: 0.05,
          note: '',
          by: 'Ashdown',
          taggedAt: '2026-11-01T20:00:00Z',
        },
      ];
    }),
  );
  const value = { ...emptyGame({ opponent: 'Moss Point', day: '2026-10-01' }), moments } as unknown as Game;
  return { bytes: Y.encodeStateAsUpdate(newDocument('game', 'game-bench', value)), doneCount };
}

function teamOf(): Team {
  const habits = Object.fromEntries(
    Array.from({ length: HABITS }, (_, index) => [
      `habit-${index}`,
      {
        rank: index,
        title: `Habit ${index}`,
        says: '',
        reason: '',
        standard: { kind: 'numbers', zone: 'house', atLeastCount: 2, when: { at: 'theyShoot' } },
        wantedRatio: 0.7,
        costGoals: 0.05,
        kept: true,
      },
    ]),
  );
  const empty = emptyTeam({
    name: 'Bench',
    level: 'u18',
    rink: { preset: '60x30m' },
    madeAt: '2026-09-01T10:00:00Z',
  });
  return { ...empty, habits } as unknown as Team;
}
