import { describe, expect, it } from 'vitest';
import { appOfFile } from '../../../test/app-of-file.ts';
import { seriousViolations } from '../../../test/axe.ts';

/** Three ideas are some ten thousand reps: seconds on a quiet machine, a minute on a busy one. */
const PATIENT_MS = 240_000;

const app = appOfFile();

describe('how do I practise that', () => {
  it(
    'a frozen picture and its habit become three computed drills; one is taken, once, with its way back',
    async () => {
      const { page, context } = await app.newPage();
      await page.goto(`${app.url}/film/game-hunt?freeze=ourLine`);
      const think = page.getByRole('button', { name: 'Three ideas' });
      await think.click();
      // It can be stopped, and says how far it is.
      await page.getByRole('button', { name: /^Stop, \d of 3/ }).click();
      await page.getByRole('button', { name: /Three ideas|Think again/ }).click();
      // The room of all three stands from the first moment on.
      await page.locator('.idea-coming').nth(2).waitFor();
      await page.getByRole('button', { name: 'Think again' }).waitFor({ timeout: PATIENT_MS });
      const ideas = page.locator('.idea');
      expect(await ideas.count()).toBe(3);
      for (const words of await ideas.allTextContents()) {
        expect(words).toMatch(/in \d(\.\d)? of ten reps, set by where C starts/);
        expect(words).toMatch(/people stand [\d.]+\sm, why\? from where they stood/);
      }
      await ideas
        .first()
        .getByRole('button', { name: /, why\?/ })
        .first()
        .click();
      await ideas
        .first()
        .getByText(/^At \d+\.\d s of the rep/)
        .waitFor();
      expect(await seriousViolations(page)).toEqual([]);

      await ideas.first().getByRole('button', { name: 'Take it' }).click();
      await page.waitForURL(/\/drills\//);
      await page.locator('a[href*="?freeze=ourLine"]').first().waitFor();
      const taken = page.url();
      await page.goto(`${app.url}/drills`);
      await page.locator('.postcard').first().waitFor();
      expect(await page.getByRole('link', { name: /, harder$/ }).count()).toBe(0);
      await page.goto(`${app.url}/film/game-hunt?freeze=ourLine`);
      await page.getByRole('button', { name: 'Three ideas' }).click();
      await page.getByRole('button', { name: 'Think again' }).waitFor({ timeout: PATIENT_MS });
      await page.getByRole('link', { name: 'Open what was taken' }).click();
      await page.waitForURL(taken);
      await context.close();
    },
    PATIENT_MS,
  );

  it('on a phone one act in the head leads to the ideas', async () => {
    const { page, context } = await app.newPage({ width: 390, height: 844 }, true);
    await page.goto(`${app.url}/film/game-hunt?freeze=ourLine`);
    await page.getByRole('button', { name: 'To practise it' }).click();
    const think = await page.getByRole('button', { name: 'Three ideas' }).boundingBox();
    expect(think?.y).toBeGreaterThanOrEqual(0);
    expect(think?.y).toBeLessThan(844 - 44);
    await context.close();
  });
});
