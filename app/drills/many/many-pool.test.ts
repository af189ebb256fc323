import { describe, expect, it } from 'vitest';
import type { ManyAnswered, ManyAsked, ManyDrill } from './many-messages.ts';
import { Cancelled, type ManyWorker, manyPool } from './many-pool.ts';

const drill = (seed: number): ManyDrill => ({
  plan: { spots: {}, pucks: {}, gear: {} },
  rink: { preset: '200x85ft' },
  level: 'u18',
  seed,
});
const part = (fromRep: number) => ({ successCount: fromRep, trialCount: 99 });
const chunk = (fromRep: number) => ({ kind: 'tally' as const, outcomes: [], fromRep, repCount: 1 });

/** Workers that answer with the first rep of the chunk when told to, and remember what they were asked. */
const workersByHand = () => {
  const asked: ManyAsked[] = [];
  const due: (() => void)[] = [];
  let madeCount = 0;
  const make = (): ManyWorker => {
    madeCount++;
    const worker: ManyWorker = {
      onmessage: null,
      onerror: null,
      postMessage: message => {
        asked.push(message);
        const data: ManyAnswered =
          message.chunk.fromRep === 13
            ? { kind: 'failed', why: 'thirteen' }
            : { kind: 'part', part: { successCount: message.chunk.fromRep, trialCount: 99 } };
        due.push(() => worker.onmessage?.({ data }));
      },
    };
    return worker;
  };
  return { asked, due, make, made: () => madeCount };
};

const finish = (due: (() => void)[]): void => {
  while (due.length > 0) due.shift()!();
};

describe('the pool of workers', () => {
  it('gives the parts in the order of the chunks and tells each worker the drill once', async () => {
    const hands = workersByHand();
    const pool = manyPool(hands.make, 2);
    const seen: number[] = [];
    const work = pool.play(drill(1), [5, 6, 7, 8, 9].map(chunk), (_, done) => seen.push(done));
    expect(hands.asked.length).toBe(2);
    // The second worker is quicker.
    hands.due.splice(0, 2, hands.due[1]!, hands.due[0]!);
    finish(hands.due);
    expect(await work.parts).toEqual([5, 6, 7, 8, 9].map(part));
    expect(seen).toEqual([1, 2, 3, 4, 5]);
    expect(hands.made()).toBe(2);
    expect(hands.asked.filter(message => message.drill !== undefined).length).toBe(2);
  });

  it('begins nothing of what is cancelled, and is free for the newest drill after one chunk', async () => {
    const hands = workersByHand();
    const pool = manyPool(hands.make, 1);
    const old = pool.play(drill(1), [1, 2, 3, 4].map(chunk));
    const newest = pool.play(drill(2), [20].map(chunk));
    old.cancel();
    finish(hands.due);
    await expect(old.parts).rejects.toThrow(Cancelled);
    expect(await newest.parts).toEqual([20].map(part));
    expect(hands.asked.map(message => message.chunk.fromRep)).toEqual([1, 20]);
    expect(hands.asked[1]!.drill?.seed).toBe(2);
  });

  it('says why a chunk failed, and goes on with other work', async () => {
    const hands = workersByHand();
    const pool = manyPool(hands.make, 1);
    const bad = pool.play(drill(1), [13, 14].map(chunk));
    const good = pool.play(drill(1), [15].map(chunk));
    finish(hands.due);
    await expect(bad.parts).rejects.toThrow('thirteen');
    expect(await good.parts).toEqual([15].map(part));
  });
});
