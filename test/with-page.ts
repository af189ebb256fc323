import { mkdirSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { BrowserContext, Page } from 'playwright-core';
import { expect } from 'vitest';
import type { RunningApp } from './browser.ts';

/** Pictures for somebody to look at; outside the repository, so that a run leaves nothing behind in it. */
const SHOTS = process.env.ICEWRIGHT_SHOTS ?? join(tmpdir(), 'icewright-shots');

export interface PageSet {
  readonly size?: { readonly width: number; readonly height: number };
  readonly touch?: boolean;
  /** Errors in the console that belong to the test. */
  readonly saysToo?: RegExp;
}

/** A page for one test, closed after it. A failure leaves its picture; an error of the page is a failure. */
export async function withPage(
  app: RunningApp,
  name: string,
  work: (page: Page, context: BrowserContext) => Promise<void>,
  set: PageSet = {},
): Promise<void> {
  const { page, context } = await app.newPage(set.size, set.touch);
  page.setDefaultTimeout(20_000);
  const wrong: string[] = [];
  page.on('pageerror', error => wrong.push(error.message));
  page.on('console', message => {
    const isExpected = set.saysToo?.test(message.text()) === true;
    if (message.type() === 'error' && !isExpected) wrong.push(message.text());
  });
  try {
    await work(page, context);
    expect(wrong).toEqual([]);
  } catch (error) {
    await shot(page, `failed ${name}`);
    throw error;
  } finally {
    await context.close();
  }
}

/** A picture of the page as it is, where one is asked for (ICEWRIGHT_SHOTS) or something went wrong. */
export async function shot(page: Page, name: string): Promise<void> {
  if (process.env.ICEWRIGHT_SHOTS === undefined && !name.startsWith('failed')) return;
  mkdirSync(SHOTS, { recursive: true });
  await page.screenshot({ path: join(SHOTS, `${name.replaceAll('/', ' ').trim()}.png`) });
}
