import { describe, expect, it } from 'vitest';
import { appOfFile } from '../../../test/app-of-file.ts';
import { seriousViolations } from '../../../test/axe.ts';
import { shot } from '../../../test/with-page.ts';

const app = appOfFile();

describe('the library of drills', () => {
  it('is asked by a sentence and by words, and says what each drill needs and where it was used', async () => {
    const { page, context } = await app.newPage();
    await page.goto(`${app.url}/drills`);
    const cards = page.locator('.postcard');
    await cards.first().waitFor();
    const all = await cards.count();
    const middle = page.getByRole('listitem').filter({ hasText: 'Middle first' }).first();
    expect(await middle.textContent()).toMatch(/4 skaters, 1 goalie, 1 coach a rep, the whole sheet, 12 min/);
    expect(await middle.textContent()).toMatch(/In \d practices? so far|Planned/);

    await page.getByRole('searchbox', { name: 'words' }).fill('midd fir');
    await expect.poll(() => cards.count()).toBeLessThan(all);
    await page.getByText(/^\d+ of \d+ drills and versions\./).waitFor();
    await page.getByRole('button', { name: 'Show all' }).press('Enter');
    await expect.poll(() => cards.count()).toBe(all);

    await page.getByRole('searchbox', { name: 'words' }).fill('bank');
    await expect.poll(() => page.locator('.postcard-title').allTextContents()).toContain('Off the boards');
    expect(await cards.count()).toBeLessThan(all);
    await page.getByRole('button', { name: 'Show all' }).press('Enter');

    await page.getByRole('button', { name: 'any ice' }).click();
    await page
      .getByRole('row', { name: 'half the ice' })
      .or(page.getByRole('option', { name: 'half the ice' }))
      .click();
    await expect.poll(() => cards.count()).toBeLessThan(all);
    expect(await seriousViolations(page)).toEqual([]);

    // One drawer at a time; a choice closes it, and the words it changed have the focus.
    await page.getByRole('button', { name: 'any number' }).click();
    await page
      .getByRole('row', { name: '6 skaters', exact: true })
      .or(page.getByRole('option', { name: '6 skaters', exact: true }))
      .click();
    await page.locator('.drawer').waitFor({ state: 'detached' });
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.textContent))
      .toBe('at most 6 skaters');
    await page.getByRole('button', { name: 'any time' }).click();
    await page.getByRole('button', { name: 'any level' }).click();
    expect(await page.locator('.drawer').count()).toBe(1);
    await page.keyboard.press('Escape');
    await page.locator('.drawer').waitFor({ state: 'detached' });

    // Opened and come back from, by the way back of the page and by the browser's.
    const few = await cards.count();
    expect(few).toBeLessThan(all);
    await cards.first().click();
    await page.getByRole('link', { name: 'Drills' }).first().waitFor();
    await page.locator('.board').waitFor();
    await page.goBack();
    await page.getByRole('button', { name: 'at most 6 skaters' }).waitFor();
    expect(await cards.count()).toBe(few);
    await cards.first().click();
    await page.locator('.board').waitFor();
    await page.locator('.head').getByRole('link', { name: 'Drills' }).click();
    await page.getByRole('button', { name: 'at most 6 skaters' }).waitFor();
    expect(await cards.count()).toBe(few);
    await context.close();
  });

  it('a version is made with one press, leads back to its drill, and stands under it', async () => {
    const { page, context } = await app.newPage();
    await page.goto(`${app.url}/drills/drill-four-corners`);
    const versions = page.locator('.versions');
    await versions.getByRole('button', { name: 'Half ice' }).click();
    await page.getByText(/^No such version:/).waitFor();
    await page.goto(`${app.url}/drills/drill-drop-and-follow`);
    await versions.getByRole('button', { name: 'Half ice' }).click();
    await versions.getByRole('button', { name: 'Make it, with those outside brought in' }).click();
    await page.getByText(/^Half ice than/).waitFor();
    await page.goto(`${app.url}/drills/drill-four-corners`);
    await versions.getByRole('button', { name: 'With fewer' }).click();
    await page.getByText(/nobody else does what F3 does: without F3 it is another problem/).waitFor();
    await page.goto(`${app.url}/drills/drill-three-on-the-heels`);
    await versions.getByRole('button', { name: 'With fewer' }).click();
    await page.waitForURL(url => !url.pathname.endsWith('drill-three-on-the-heels'));
    await page
      .locator('.versions')
      .getByText(/^With fewer than/)
      .waitFor();
    await page.locator('.versions').getByRole('link', { name: 'Three on the heels', exact: true }).click();
    await page.waitForURL(/drill-three-on-the-heels$/);
    await page
      .locator('.versions-made')
      .getByRole('link', { name: 'Three on the heels, without D2' })
      .waitFor();
    // A harder one is looked for, and is either there or refused with its reason.
    await page.goto(`${app.url}/drills/drill-middle-first`);
    await page.locator('.versions').getByRole('button', { name: 'How the habit went' }).click();
    await page.getByText('It shows that a rate moved').waitFor();
    await page.getByText(/95 % interval/).waitFor({ timeout: 60_000 });
    await page.locator('.versions').getByRole('button', { name: 'Harder' }).click();
    await page
      .locator('.versions')
      .getByText(/^Harder than|^No such version:/)
      .waitFor({ timeout: 120_000 });
    await context.close();
  }, 180_000);

  it('a drill is taken out, by undo and by hand put back, and the practice that uses it keeps it and says so', async () => {
    const { page, context } = await app.newPage();
    await page.goto(`${app.url}/drills`);
    const card = page.locator('.postcards > li').filter({ hasText: 'Four corners' }).first();
    const takeOut = page.getByRole('button', { name: 'Take Four corners out of the library' });
    await takeOut.click();
    await page
      .getByText(/The drill is out of the list; nothing in it is lost\. It stays in the practice/)
      .waitFor();
    await expect.poll(() => card.count()).toBe(0);
    await page.getByRole('button', { name: 'Undo' }).click();
    await card.waitFor();
    await takeOut.press('Enter');
    await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toBe('Put it back');
    await page.goto(`${app.url}/practices/practice-1`);
    await page
      .getByRole('heading', { name: /^Four corners/ })
      .first()
      .click();
    await page.getByText(', taken out of the library').first().waitFor();
    await page.goto(`${app.url}/drills`);
    await page.getByRole('button', { name: '1 drill taken out' }).click();
    await shot(page, 'drill taken out');
    expect(await seriousViolations(page)).toEqual([]);
    await page.getByRole('link', { name: 'Four corners' }).click();
    await page.getByText('This drill is out of the library; nothing in it is lost.').waitFor();
    await page.getByRole('button', { name: 'Put it back' }).click();
    await page.getByRole('button', { name: 'Take out of the library' }).waitFor();
    await page.goto(`${app.url}/drills`);
    await card.waitFor();
    expect(await page.locator('.taken-out').count()).toBe(0);
    await context.close();
  });
});
