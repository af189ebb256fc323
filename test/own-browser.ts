import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { chromium, type Page } from 'playwright-core';
import { BROWSER, BROWSER_FLAGS } from './browser.ts';

/** A browser in a process and with a profile of its own, so that it can be killed and started again. */
export interface OwnBrowser {
  readonly page: Page;
  /** As a power cut would end it: it gets no word in. */
  kill(): Promise<void>;
}

export async function startOwnBrowser(profile: string): Promise<OwnBrowser> {
  const portFile = join(profile, 'DevToolsActivePort');
  rmSync(portFile, { force: true });
  const child = spawn(
    BROWSER,
    [
      ...BROWSER_FLAGS,
      '--headless=new',
      '--remote-debugging-port=0',
      `--user-data-dir=${profile}`,
      'about:blank',
    ],
    { stdio: 'ignore', detached: true },
  );
  const port = await portWhenThere(child, portFile);
  const browser = await chromium.connectOverCDP(`http://127.0.0.1:${port}`);
  const context = browser.contexts()[0]!;
  return {
    page: context.pages()[0] ?? (await context.newPage()),
    async kill() {
      const isOver = once(child, 'exit');
      // The whole group: what it started must not write on for it.
      process.kill(-child.pid!, 'SIGKILL');
      await isOver;
      await browser.close().catch(() => undefined);
    },
  };
}

async function portWhenThere(child: ChildProcess, portFile: string): Promise<string> {
  for (let waitedMs = 0; waitedMs < 30_000; waitedMs += 50) {
    if (child.exitCode !== null) throw new Error(`the browser ended with ${child.exitCode}`);
    const [port, path] = existsSync(portFile) ? readFileSync(portFile, 'utf8').split('\n') : [];
    if (port && path) return port;
    await new Promise(resolve => setTimeout(resolve, 50));
  }
  throw new Error('the browser does not say its port');
}
