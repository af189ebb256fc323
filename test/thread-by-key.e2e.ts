import { expect, it } from 'vitest';
import { appOfFile } from './app-of-file.ts';
import { keysHand } from './hand.ts';
import { MOST_STEPS, walkBack, walkThere } from './thread-steps.ts';
import { withPage } from './with-page.ts';

const app = appOfFile();

it(
  'leads by keys alone from a film file to an ice card and a line in the ledger, and back to the clip',
  {
    timeout: 240_000,
  },
  () =>
    withPage(app, 'thread by key', async page => {
      await page.addInitScript(countPointers);
      const hand = keysHand(page);
      const title = await walkThere(hand, app.url);
      expect(hand.stepCount()).toBeLessThanOrEqual(MOST_STEPS);
      await walkBack(hand, title);
      expect(await page.evaluate(() => (window as unknown as { pointersSeen: number }).pointersSeen)).toBe(0);
    }),
);

/** Proof that no mouse and no finger had a part in it: events of either that a person's hand, not a script, makes. */
function countPointers(): void {
  const seen = window as unknown as { pointersSeen: number };
  seen.pointersSeen = 0;
  for (const kind of ['pointerdown', 'mousedown', 'touchstart'])
    window.addEventListener(
      kind,
      event => {
        if (event.isTrusted) seen.pointersSeen += 1;
      },
      true,
    );
}
