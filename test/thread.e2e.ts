import { expect, it } from 'vitest';
import { appOfFile } from './app-of-file.ts';
import { mouseHand } from './hand.ts';
import { MOST_STEPS, walkBack, walkThere } from './thread-steps.ts';
import { withPage } from './with-page.ts';

const app = appOfFile();

it('leads by mouse from a film file to an ice card and a line in the ledger, and back to the clip', () =>
  withPage(app, 'thread', async page => {
    const hand = mouseHand(page);
    const title = await walkThere(hand, app.url);
    expect(hand.stepCount()).toBeLessThanOrEqual(MOST_STEPS);
    await walkBack(hand, title);
  }));
