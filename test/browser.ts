import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { startServer } from '@icewright/server';
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { holdReps } from './hold-reps.ts';

/** The workbench running on its own data folder, with a real browser beside it. */
export interface RunningApp {
  readonly url: string;
  readonly dataFolder: string;
  newPage(
    size?: { width: number; height: number },
    touch?: boolean,
    /**
     * Lets the page keep the whole app for a day without network, as a browser does by itself. That costs as much as
     * opening the page, so only tests that go offline ask for it.
     */
    keepsForOffline?: boolean,
  ): Promise<{ page: Page; context: BrowserContext }>;
  close(): Promise<void>;
}

export const BROWSER = process.env.ICEWRIGHT_BROWSER ?? '/usr/bin/chromium';

/**
 * What is left out of the browser. Chromium heeds the last list alone, so those that Playwright leaves out stand here too.
 * The first two are pages behind the address bar, made anew for every window although nobody sees one: two thirds of what
 * opening a window costs.
 */
const LEFT_OUT = [
  'WebUIOmniboxPopup',
  'WebUIOmniboxAimPopup',
  'AimEnabled',
  'AvoidCorsURLLoaderRestartOnRedirect',
  'AvoidUnnecessaryBeforeUnloadCheckSync',
  'DestroyProfileOnBrowserClose',
  'HttpsFirstBalancedModeAutoEnable',
  'HttpsUpgrades',
  'LensOverlay',
  'MediaRouter',
  'NetworkTimeServiceQuerying',
  'OptimizationHints',
  'PaintHolding',
  'PreconnectToSearch',
  'TcpPortRandomizationWin',
  'ThirdPartyStoragePartitioning',
];

/** Nothing a browser would do by itself: no updates, no account, no network but ours. */
export const BROWSER_FLAGS = [
  `--disable-features=${LEFT_OUT.join(',')}`,
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

export interface AppStart {
  /** Makes the new data folder ready. */
  readonly prepare?: (dataFolder: string) => Promise<void>;
  /** One that goes on when this app ends; else the app has one of its own. */
  readonly browser?: Browser;
  /** No many reps are played in its pages: for tests of what stands beside them. */
  readonly holdsReps?: boolean;
}

export const launchBrowser = (): Promise<Browser> =>
  chromium.launch({ executablePath: BROWSER, args: BROWSER_FLAGS });

/** Starts server and browser. The data folder is new and is removed at the end. */
export async function startApp({ prepare, browser: others, holdsReps }: AppStart = {}): Promise<RunningApp> {
  const dataFolder = mkdtempSync(join(tmpdir(), 'icewright-e2e-'));
  await prepare?.(dataFolder);
  const server = await startServer({ dataFolder, port: 0, host: '127.0.0.1' });
  const browser = others ?? (await launchBrowser());
  const url = `http://localhost:${server.port}`;
  return {
    url,
    dataFolder,
    async newPage(size = { width: 1440, height: 900 }, touch = false, keepsForOffline = false) {
      const context = await browser.newContext({
        viewport: size,
        hasTouch: touch,
        reducedMotion: 'reduce',
        serviceWorkers: keepsForOffline ? 'allow' : 'block',
      });
      if (holdsReps) await holdReps(context);
      const page = await context.newPage();
      return { page, context };
    },
    async close() {
      if (others === undefined) await browser.close();
      await server.close();
      rmSync(dataFolder, { recursive: true, force: true });
    },
  };
}
