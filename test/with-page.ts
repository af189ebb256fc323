import { mkdirSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect } from 'vitest';
import type { RunningApp } from './browser.ts';

/** Pictures for somebody to look at; outside the repository, so that a run leaves nothing behind in it. */
const SHOTS = process.env.ICEWRIGHT_SHOTS ?? join(tmpdir(), 'icewright-shots');

export interface PageSet {
  readonly size?: { readonly width: number; readonly height: number };
  readonly touch?: boolean;
  /** Keeps the whole app for a day without network. */
  readonly keepsForOffline?: boolean;
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
  const { page, context, wrong } = await watchedPage(app, set);
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

/**
 * One page for all tests of a `describe`, each of which goes on where the one before ended: where coming there costs much.
 * It is there from the first test on.
 */
export function onePage(app: RunningApp, name: string, set: PageSet = {}): () => Page {
  let watched: Awaited<ReturnType<typeof watchedPage>>;
  beforeAll(async () => {
    watched = await watchedPage(app, set);
  });
  afterEach(async ({ task }) => {
    if (task.result?.state === 'fail') await shot(watched.page, `failed ${name} ${task.name}`);
    expect(watched.wrong).toEqual([]);
  });
  afterAll(() => watched.context.close());
  return () => watched.page;
}

async function watchedPage(app: RunningApp, set: PageSet) {
  const { page, context } = await app.newPage(set.size, set.touch, set.keepsForOffline);
  page.setDefaultTimeout(20_000);
  const wrong: string[] = [];
  page.on('pageerror', error => wrong.push(error.message));
  page.on('console', message => {
    const isExpected = set.saysToo?.test(message.text()) === true;
    if (message.type() === 'error' && !isExpected) wrong.push(message.text());
  });
  return { page, context, wrong };
}

/** A picture of the page as it is, where one is asked for (ICEWRIGHT_SHOTS) or something went wrong. */
export async function shot(page: Page, name: string): Promise<void> {
  if (process.env.ICEWRIGHT_SHOTS === undefined && !name.startsWith('failed')) return;
  mkdirSync(SHOTS, { recursive: true });
  await page.screenshot({ path: join(SHOTS, `${name.replaceAll('/', ' ').trim()}.png`) });
}
