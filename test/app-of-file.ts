import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach } from 'vitest';
import { type AppStart, launchBrowser, type RunningApp, startApp } from './browser.ts';

/** One browser for all the files of a worker; every page has a profile of its own. It ends with the worker's process. */
let shared: Promise<Browser> | undefined;

/**
 * The workbench for the tests of one file, on a data folder of its own: started before the first test, ended after the
 * last. Before that it has no address yet.
 */
export const appOfFile = (start: Start = {}): RunningApp => appBetween(beforeAll, afterAll, start);

/** The same anew for each test, on a folder of its own: one that fails half way leaves nothing behind for the next. */
export const appOfEachTest = (start: Start = {}): RunningApp => appBetween(beforeEach, afterEach, start);

type Start = Omit<AppStart, 'browser'>;
type Hook = (work: () => Promise<void>) => void;

function appBetween(before: Hook, after: Hook, start: Start): RunningApp {
  let running: RunningApp | undefined;
  const app = (): RunningApp => {
    if (running === undefined) throw new Error('the app is started before the first test, and not here yet');
    return running;
  };
  before(async () => {
    shared ??= launchBrowser();
    running = await startApp({ ...start, browser: await shared });
  });
  after(async () => running?.close());
  return {
    get url() {
      return app().url;
    },
    get dataFolder() {
      return app().dataFolder;
    },
    newPage: (...asked) => app().newPage(...asked),
    close: () => app().close(),
  };
}
