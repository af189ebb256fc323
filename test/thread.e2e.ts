import { afterAll, beforeAll, expect, it } from 'vitest';
import { type RunningApp, startApp } from './browser.ts';
import { mouseHand } from './hand.ts';
import { MOST_STEPS, walkBack, walkThere } from './thread-steps.ts';
import { withPage } from './with-page.ts';

let app: RunningApp;
beforeAll(async () => {
  app = await startApp();
});
afterAll(() => app.close());

it('leads by mouse from a film file to an ice card and a line in the ledger, and back to the clip', () =>
  withPage(app, 'thread', async page => {
    const hand = mouseHand(page);
    const title = await walkThere(hand, app.url);
    expect(hand.stepCount()).toBeLessThanOrEqual(MOST_STEPS);
    await walkBack(hand, title);
  }));
