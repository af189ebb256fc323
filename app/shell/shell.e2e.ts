import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { appOfFile } from '../../test/app-of-file.ts';
import { seriousViolations } from '../../test/axe.ts';

const app = appOfFile();

it('another page begins at its top, wherever the list was left', async () => {
  const { page, context } = await app.newPage({ width: 390, height: 844 });
  await page.goto(`${app.url}/drills`);
  await page
    .getByRole('link', { name: /Middle first/ })
    .first()
    .click();
  await page.getByRole('heading', { name: 'Score' }).or(page.locator('.score')).first().waitFor();
  expect(await page.evaluate(() => scrollY)).toBe(0);
  await context.close();
});

describe('the frame', () => {
  it('asks at the front door, shows the cautions, and opens the invented team', async () => {
    const { page, context } = await app.newPage();
    await page.goto(app.url);
    await page.getByText('Coaching and rules come first', { exact: false }).waitFor();
    expect(await seriousViolations(page)).toEqual([]);
    await page.getByRole('button', { name: 'Look round with the Lanterns' }).click();
    await page.getByRole('link', { name: /Team: Tern Harbour Lanterns/ }).waitFor();
    await page.getByText(/^Kept \d\d:\d\d:\d\d$/).waitFor();
    await context.close();
  });

  it('goes from place to place by key, and lists its keys', async () => {
    const { page, context } = await app.newPage();
    await page.goto(`${app.url}/habits`);
    await page.getByRole('heading', { name: 'Habits', level: 1 }).waitFor();
    await page.keyboard.press('g');
    await page.keyboard.press('l');
    await page.getByRole('heading', { name: 'Ledger', level: 1 }).waitFor();
    await page.getByRole('button', { name: 'Keys' }).click();
    const keys = page.getByRole('group', { name: 'Keys of this place' });
    await keys.getByText('go to Film').waitFor();
    expect(await seriousViolations(page)).toEqual([]);
    await page.keyboard.press('Escape');
    await keys.waitFor({ state: 'detached' });
    // By its key they lie over the page wherever that stands, move nothing, and give the focus back.
    const last = page.locator('main a, main button').last();
    await last.focus();
    await page.evaluate(() => scrollTo(0, document.body.scrollHeight));
    const placeOf = () => last.evaluate(one => [one.getBoundingClientRect().top, scrollY]);
    const before = await placeOf();
    await page.keyboard.press('?');
    await keys.waitFor();
    expect(await keys.evaluate(one => one.getBoundingClientRect().top)).toBeGreaterThanOrEqual(0);
    expect(await placeOf()).toEqual(before);
    await page.keyboard.press('Escape');
    await keys.waitFor({ state: 'detached' });
    expect(await placeOf()).toEqual(before);
    expect(await last.evaluate(one => one === document.activeElement)).toBe(true);
    await context.close();
  });

  it('opens Settings over one page only, and closes it with one Escape', async () => {
    const { page, context } = await app.newPage();
    await page.goto(`${app.url}/habits`);
    const settings = page.getByRole('group', { name: 'Settings' });
    const opener = page.getByRole('button', { name: 'Settings' });
    await opener.click();
    await settings.waitFor();
    await page.keyboard.press('Escape');
    await settings.waitFor({ state: 'detached' });
    expect(await opener.evaluate(button => button === document.activeElement)).toBe(true);
    await opener.click();
    await page.getByRole('link', { name: 'Practices' }).click();
    await page.getByRole('heading', { name: 'Practices', level: 1 }).waitFor();
    expect(await settings.count()).toBe(0);
    await context.close();
  });

  it('takes the number of a new skater at once, and says who else wears it', async () => {
    const { page, context } = await app.newPage();
    await page.goto(`${app.url}/team`);
    await page.getByRole('button', { name: 'Add a skater' }).click();
    const row = page.locator('.roster tbody tr').last();
    await row.getByText('Also number').waitFor({ state: 'detached' });
    await page.keyboard.type('14');
    await row.getByText('Also number 14: Nakatani.').waitFor();
    await page.getByText('Also number 14: skater without a name.').waitFor();
    await row.getByRole('button', { name: 'Take out' }).click();
    await page.getByText('Also number').first().waitFor({ state: 'detached' });
    await context.close();
  });

  it.each(['/film/nope', '/habits/nope', '/drills/nope', '/drills/%00', '/practices/nope', '/nowhere'])(
    'leads back from %s, where there is nothing',
    async path => {
      const { page, context } = await app.newPage();
      await page.goto(`${app.url}${path}`);
      await page.locator('.failure, .empty').waitFor();
      await page.locator('a.back').click();
      await page.getByRole('heading', { name: /^(Film|Habits|Drills|Practices)$/, level: 1 }).waitFor();
      await context.close();
    },
  );

  it('takes a roster from a file, and refuses one that does not fit in one sentence', async () => {
    const { page, context } = await app.newPage();
    await page.goto(`${app.url}/team`);
    await page.getByRole('button', { name: 'Roster from a file' }).click();
    const door = page.getByLabel('A roster file');
    const csv = (text: string) => ({ name: 'roster.csv', mimeType: 'text/csv', buffer: Buffer.from(text) });
    const rows = page.locator('.roster tbody tr');
    const countBefore = await rows.count();
    await door.setInputFiles(csv('shirt,who\n9,Somebody'));
    await page
      .getByRole('alert')
      .getByText(/^roster\.csv: The column "number" is missing.*Nothing was changed\.$/)
      .waitFor();
    expect(await rows.count()).toBe(countBefore);
    // A column there is no place for is named before anything is taken.
    await door.setInputFiles(csv('number,name,position,Birth date\n78,Somebody,F,2010-01-01'));
    await page.getByText('roster.csv: 1 skater. “Birth date” is left out', { exact: false }).waitFor();
    expect(await rows.count()).toBe(countBefore);
    await page.getByRole('button', { name: 'Take the rest in' }).click();
    await page.getByText('1 skater added, 0 brought up to date', { exact: false }).waitFor();
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => rows.count()).toBe(countBefore);
    await door.setInputFiles(csv('number,name,position\n77,Žižková,D\n14,Nakatani,F'));
    await page.getByText('1 skater added, 1 brought up to date', { exact: false }).waitFor();
    expect(await rows.count()).toBe(countBefore + 1);
    expect(await seriousViolations(page)).toEqual([]);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => rows.count()).toBe(countBefore);
    await context.close();
  });

  it('takes the whole team out as a file, and refuses a file that a newer one wrote', async () => {
    const { page, context } = await app.newPage();
    await page.goto(`${app.url}/habits`);
    await page.getByRole('button', { name: 'Settings' }).click();
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('link', { name: 'Take the team out as a file' }).click(),
    ]);
    const file = JSON.parse(readFileSync(await download.path(), 'utf8')) as { version: number };
    expect(file).toMatchObject({ format: 'icewright-team' });
    await page.getByLabel('A team file').setInputFiles({
      name: 'newer.json',
      mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify({ ...file, version: file.version + 1 })),
    });
    await page
      .getByRole('alert')
      .getByText(/newer\.json: .*made by a newer Icewright.* Nothing was changed\.$/)
      .waitFor();
    expect(await seriousViolations(page)).toEqual([]);
    // The team of this file is here, and says the same.
    const taken = (text: string) =>
      page
        .getByLabel('A team file')
        .setInputFiles({ name: 'team.json', mimeType: 'application/json', buffer: Buffer.from(text) });
    await taken(JSON.stringify(file));
    await page.getByText(/“Tern Harbour Lanterns” is here, .* bring nothing new/).waitFor();
    expect(await page.getByRole('button', { name: 'Take it in' }).count()).toBe(0);
    // A drill that was written anew by hand is kept beside the one here, once that was said and taken.
    const changed = JSON.stringify(file).replace('"Middle first"', '"Middle second"');
    await taken(changed);
    await page
      .getByText(/ 0 are new, 0 are merged .* made apart from the one here and kept beside it/)
      .waitFor();
    expect(await seriousViolations(page)).toEqual([]);
    await page.getByRole('button', { name: 'Take it in' }).click();
    await page.getByText('made apart from the one here').waitFor({ state: 'detached' });
    await page.getByRole('link', { name: 'Drills', exact: true }).click();
    await page.getByText('Middle second (from a file)').first().waitFor();
    await context.close();
  });

  it('shows one window what another changes', async () => {
    const [one, other] = [await app.newPage(), await app.newPage()];
    for (const { page } of [one, other]) await page.goto(`${app.url}/practices/practice-1`);
    const today = (page: typeof one.page) => page.getByRole('textbox', { name: 'Today, in one sentence' });
    await today(one.page).fill('Sticks first.');
    await expect.poll(() => today(other.page).inputValue()).toBe('Sticks first.');
    await one.context.close();
    await other.context.close();
  });

  // Last: a browser that has not chosen opens the first own team there is.
  it('starts an own team beside the demo, and goes back to it', async () => {
    const { page, context } = await app.newPage();
    await page.goto(`${app.url}/practices/practice-3`);
    await page.getByRole('button', { name: 'Settings' }).click();
    await page.getByRole('button', { name: 'Start my own team' }).click();
    await page.getByRole('textbox', { name: /team.s name/ }).fill('Lower Inlet Herons');
    await page.getByText('Start waits: say which sheet of ice you play on.').waitFor();
    await page.getByLabel('Sheet of ice you play on').selectOption('60x30m');
    await page.getByRole('button', { name: 'Start', exact: true }).click();
    await page.getByText('Put what failed on Saturday', { exact: false }).waitFor();
    await page.getByRole('button', { name: 'Settings' }).click();
    await page.getByRole('button', { name: 'Go to Tern Harbour Lanterns' }).click();
    await page.getByRole('link', { name: 'Practice 31' }).waitFor();
    // A page of the other team says whose it is, and shows nothing of it under this one.
    await page.getByRole('button', { name: 'Settings' }).click();
    await page.getByRole('button', { name: 'Go to Lower Inlet Herons' }).click();
    await page.getByRole('link', { name: 'Practice 31' }).waitFor({ state: 'detached' });
    await page.goto(`${app.url}/practices/practice-3`);
    await page
      .getByText('This practice belongs to Tern Harbour Lanterns; you are with Lower Inlet Herons.')
      .waitFor();
    expect(await page.locator('main, .plan').count()).toBe(0);
    expect(await seriousViolations(page)).toEqual([]);
    await page.getByRole('button', { name: 'Go to Tern Harbour Lanterns' }).click();
    await page.locator('.plan .block').first().waitFor();
    expect(new URL(page.url()).pathname).toBe('/practices/practice-3');
    await page.getByRole('link', { name: 'Team: Tern Harbour Lanterns' }).waitFor();
    await context.close();
  });
});
