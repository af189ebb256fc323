import { existsSync, readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { type RunningApp, startApp } from '../../test/browser.ts';

/** The workbench in a browser, for as long as `work` takes; `RunningApp` of the tests, so both see the same app. */
export async function withApp<Result>(work: (app: RunningApp) => Promise<Result>): Promise<Result> {
  const app = await startApp();
  try {
    return await work(app);
  } finally {
    await app.close();
  }
}

/** A fresh browser, as a coach who was never here, for as long as `work` takes. An error in the page is an error here. */
export async function withPage<Result>(
  app: RunningApp,
  work: (page: Page) => Promise<Result>,
): Promise<Result> {
  const { page, context } = await openPage(app);
  const wrong: string[] = [];
  page.on('pageerror', error => wrong.push(error.message));
  try {
    const result = await work(page);
    if (wrong.length > 0) throw new Error(`the page said: ${wrong.join('; ')}`);
    return result;
  } finally {
    await context.close();
  }
}

export async function openPage(app: RunningApp): ReturnType<RunningApp['newPage']> {
  const opened = await app.newPage(undefined, false, true);
  // The loader of the benches names functions by a helper that a page does not have.
  await opened.page.addInitScript('globalThis.__name = named => named');
  return opened;
}

export interface Memory {
  /** Live objects of the page's scripts, after everything unreachable was thrown away. */
  readonly heapMB: number;
  /** All that the page's process holds in main memory, pictures and code too; null where the system does not say. */
  readonly processMB: number | null;
}

export async function memoryOf(page: Page): Promise<Memory> {
  const session = await page.context().newCDPSession(page);
  try {
    await session.send('HeapProfiler.collectGarbage');
    await session.send('HeapProfiler.collectGarbage');
    const { usedSize } = await session.send('Runtime.getHeapUsage');
    return { heapMB: usedSize / 1e6, processMB: await processMB(page) };
  } finally {
    await session.detach();
  }
}

/** The largest page process of the browser, on a system that shows processes as files. */
async function processMB(page: Page): Promise<number | null> {
  const browser = page.context().browser();
  if (browser === null || !existsSync('/proc/self/status')) return null;
  const session = await browser.newBrowserCDPSession();
  const { processInfo } = await session.send('SystemInfo.getProcessInfo');
  await session.detach();
  const sizes = processInfo
    .filter(({ type, id }) => type === 'renderer' && existsSync(`/proc/${id}/status`))
    .map(({ id }) => Number(/RssAnon:\s+(\d+)/.exec(readFileSync(`/proc/${id}/status`, 'utf8'))?.[1] ?? 0));
  return sizes.length === 0 ? null : Math.max(...sizes) / 1000;
}
