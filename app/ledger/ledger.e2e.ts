import { describe, expect, it } from 'vitest';
import { appOfFile } from '../../test/app-of-file.ts';
import { seriousViolations } from '../../test/axe.ts';

const app = appOfFile();

describe('the ledger', () => {
  it('has a line for each habit: minutes practised, games, and a word for the change that can be asked why', async () => {
    const { page, context } = await app.newPage();
    await page.goto(`${app.url}/ledger`);
    const line = page.locator('.ledger-line', { hasText: 'Five in the picture' });
    await line.getByText('36 min planned in 2 practices').waitFor();
    expect(await page.locator('.ledger-line').count()).toBe(6);
    expect(await line.getByRole('img').getAttribute('aria-label')).toContain(
      '1 of 1 done before its first practice',
    );
    await line.getByRole('button', { name: /cannot tell/ }).click();
    const why = line.getByRole('group', { name: 'Why' });
    await why.getByText('Newcombe', { exact: false }).waitFor();
    // One chance on one side: all against none among so few is still luck.
    expect(await why.textContent()).toContain('could show nothing, not even all against none');
    expect(await seriousViolations(page)).toEqual([]);
    await context.close();
  });

  it('says the same as a table', async () => {
    const { page, context } = await app.newPage();
    await page.goto(`${app.url}/ledger`);
    await page.getByRole('button', { name: 'As a table' }).click();
    const row = page.getByRole('row', { name: /Gap at our blue line/ });
    await row.getByText(/1 of 1: 100.*\(21 to 100\)/).waitFor();
    expect(await seriousViolations(page)).toEqual([]);
    // With the system's own few colours the pressed act and the place one is in are told from the others all the same.
    await page.emulateMedia({ forcedColors: 'active' });
    const grounds = await page.evaluate(() => {
      const groundOf = (selector: string, part?: string) => {
        const one = document.querySelector(selector);
        return one === null ? 'none' : getComputedStyle(one, part).backgroundColor;
      };
      return {
        pressed: groundOf('.act[aria-pressed="true"]'),
        here: groundOf('.strip a[aria-current]', '::after'),
        elsewhere: groundOf('.strip a:not([aria-current])', '::after'),
        page: groundOf('body'),
      };
    });
    expect(grounds.pressed).not.toBe(grounds.page);
    expect(grounds.here).toBe(grounds.pressed);
    expect(grounds.elsewhere).toBe(grounds.page);
    await context.close();
  });

  // Last: a browser that has not chosen opens the first own team there is.
  it('is empty with a way on, for a team that has marked and practised nothing', async () => {
    const { page, context } = await app.newPage();
    await page.goto(app.url);
    await page.getByRole('button', { name: 'Name your team' }).click();
    await page.getByRole('textbox', { name: /team.s name/ }).fill('Lower Inlet Herons');
    await page.getByLabel('Sheet of ice you play on').selectOption('60x30m');
    await page.getByRole('button', { name: 'Start', exact: true }).click();
    await page.getByRole('link', { name: 'Ledger' }).click();
    await page.getByText('Mark on film when a habit is done or missed', { exact: false }).waitFor();
    expect(await seriousViolations(page)).toEqual([]);
    await context.close();
  });
});
