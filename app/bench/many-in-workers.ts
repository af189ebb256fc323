import type { Page } from 'playwright-core';
import type { BenchRow } from '../../cli/bench-row.ts';
import { watchFrames } from '../drills/many/frame-watch.ts';
import { budget, short } from './rows.ts';

const ROUNDS = 3;
/** The hand has rested so long before reps are played. */
const REST_S = 0.4;

/** A thousand reps of the drill on the page, played anew because this spot of it was moved, and what the page does meanwhile. */
export const manyInWorkers = async (page: Page, role: string, what: string): Promise<BenchRow[]> => {
  const tookS: number[] = [];
  const framesPerS: number[] = [];
  const longTaskMs: number[] = [];
  await page.getByText(/^95 % interval/).waitFor();
  for (let round = 0; round < ROUNDS; round++) {
    const watched = await page.evaluateHandle(watchFrames);
    await page.getByRole('button', { name: new RegExp(`^${role}, one of`) }).press('ArrowRight');
    await page.locator('.many-rate.stale').waitFor();
    await page.locator('.many-rate:not(.stale)').waitFor();
    const seen = await watched.evaluate(one => one.stop());
    tookS.push(seen.seconds - REST_S);
    framesPerS.push(seen.frames / seen.seconds);
    longTaskMs.push(Math.max(0, ...seen.longTaskMs));
  }
  const least = Math.min(...framesPerS);
  return [
    budget({
      name: '1,000 reps in the workers, from rest to figure',
      values: tookS,
      most: 3,
      unit: 's',
      note: what,
    }),
    {
      name: 'pictures a second of the page meanwhile',
      bar: '≥ 58',
      median: least,
      spread: `${short(least)} to ${short(Math.max(...framesPerS))}`,
      unit: '1/s',
      meets: least >= 58,
    },
    budget({ name: 'longest task of the page meanwhile', values: longTaskMs, most: 50, share: 1 }),
  ];
};
