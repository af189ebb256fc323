import type { Drill, Practice, Team } from '@icewright/book';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { demoValues } from '../server/demo/demo-values.ts';
import { appOfFile } from './app-of-file.ts';
import { burnedCounter, shownFrame } from './film-page.ts';
import { withPage } from './with-page.ts';

const app = appOfFile();

const NOWHERE = { hash: 'none', byteCount: 1 };
const today = new Date().toISOString().slice(0, 10);
const values = demoValues({ hunt: NOWHERE, join: NOWHERE }, { today, at: `${today}T12:00:00Z` });
const ofKind = <Value>(kind: string): readonly (readonly [string, Value])[] =>
  values.filter(({ value }) => value.kind === kind).map(({ id, value }) => [id, value as Value]);
const drills = new Map(ofKind<Drill>('drill'));
const practices = ofKind<Practice>('practice');
const habits = Object.entries(ofKind<Team>('team')[0]![1].habits);

const lookRound = async (page: Page): Promise<void> => {
  await page.goto(app.url);
  await page.getByRole('button', { name: /^Look round/ }).click();
  await page.getByRole('link', { name: 'Team: Tern Harbour Lanterns' }).waitFor();
};
const toPlace = (page: Page, name: string) => page.getByLabel('Places').getByRole('link', { name }).click();

/** Minutes of a habit in practices before today: each block whose drill serves it, added up here by hand. */
const minutesOf = (habit: string): number =>
  practices
    .filter(([, practice]) => practice.day < today)
    .flatMap(([, practice]) => Object.values(practice.blocks))
    .filter(({ drill }) => drill !== undefined && drills.get(drill)!.habits.some(one => one === habit))
    .reduce((sum, { minutes }) => sum + minutes, 0);

/** Wilson 1927 with z = 1.96, written out. */
function wilson(done: number, of: number): readonly [number, number] {
  const z2 = 1.96 ** 2;
  const middle = (done + z2 / 2) / (of + z2);
  const half = (1.96 / (of + z2)) * Math.sqrt((done * (of - done)) / of + z2 / 4);
  return [Math.round(100 * (middle - half)), Math.round(100 * (middle + half))];
}

describe('the invented team', () => {
  it('opens with two games on film, with the moments and the freezes on it', () =>
    withPage(app, 'first start film', async page => {
      await lookRound(page);
      const rows = page.locator('.games tbody tr');
      await expect.poll(() => rows.count()).toBe(2);
      const hunt = page.getByRole('row', { name: /Quillback Bay, at home/ });
      await expect.poll(() => hunt.locator('td').nth(3).textContent()).toBe('6 moments');
      await hunt.getByRole('link').click();
      await shownFrame(page, 0);
      expect(await burnedCounter(page)).toBe(0);
      await expect.poll(() => page.locator('.moments tbody tr:not(.moment-two)').count()).toBe(6);
      // One was marked otherwise than its freeze measures: both are said, and one act settles which counts.
      const two = page.locator('.moments').getByTestId('two-answers');
      await two.getByRole('button', { name: /^Count what .+ said$/ }).click();
      await two.getByText('and that counts (settled').waitFor();
      await page.getByRole('button', { name: 'Undo', exact: true }).click();
      await two.getByText('and that counts (settled').waitFor({ state: 'detached' });
      const miss = page.locator('.moments tbody tr', {
        hasText: 'chases the puck from behind, four metres too high',
      });
      await miss.getByRole('button', { name: 'freeze' }).click();
      await page.getByTestId('held').waitFor();
      await shownFrame(page, 234);
      expect(await burnedCounter(page)).toBe(234);
      await expect.poll(() => page.getByTestId('verdict').getAttribute('data-answer')).toBe('no');
      const measured = page.locator('.readings .pm').first();
      await expect.poll(() => measured.textContent()).toMatch(/± \d+\.\d m/);
      await expect.poll(() => page.getByTestId('options').locator('tbody tr').count()).toBeGreaterThan(0);
    }));

  it('has six habits, each with what is known of it', () =>
    withPage(app, 'first start habits', async page => {
      await lookRound(page);
      await toPlace(page, 'Habits');
      const rows = page.locator('.habit-list > li');
      await expect.poll(() => rows.count()).toBe(habits.length);
      // One done of one marked, both by eye and by the standard on its freeze.
      const [low, high] = wilson(1, 1);
      await rows
        .filter({ hasText: 'Gap at our blue line' })
        .getByText(`1 of 1, 95 %: ${low} to ${high}`, { exact: false })
        .waitFor();
      // Three were marked; the ± of the one on a freeze, 3.9 m, reaches over the limit of 4 m, so it is not counted.
      const hunt = rows.filter({ hasText: 'The nearest hunts the lost puck' });
      await expect
        .poll(async () => (await hunt.textContent()) ?? '')
        .toContain(`1 of 2, 95 %: ${wilson(1, 2).join(' to ')}`);
    }));

  it('has twenty drills that are drawn and run', () =>
    withPage(app, 'first start drills', async page => {
      await lookRound(page);
      await toPlace(page, 'Drills');
      const cards = page.locator('.postcard');
      expect(drills.size).toBe(20);
      // A version stands with the drill it is a version of, not beside it.
      const bases = [...drills.values()].filter(drill => drill.variantOf === undefined);
      await expect.poll(() => cards.count()).toBe(bases.length);
      for (const drill of bases) {
        const drawn = cards.filter({ hasText: drill.title }).locator('.mk-discUs');
        const ours = Object.values(drill.spots).filter(
          ({ side, kind }) => side === 'us' && kind === 'skater',
        );
        expect(await drawn.count(), drill.title).toBeGreaterThanOrEqual(ours.length);
      }
      for (const [id] of drills) {
        await page.goto(`${app.url}/drills/${id}`);
        const rep = page.getByRole('slider', { name: 'Time of the rep' });
        await expect
          .poll(async () => Number(await rep.getAttribute('aria-valuemax')), { message: id })
          .toBeGreaterThan(1);
        expect(await page.getByText('Cannot run yet').count(), id).toBe(0);
      }
    }));

  it('has three practices with their minutes, and the next one is to come', () =>
    withPage(app, 'first start practices', async page => {
      await lookRound(page);
      await toPlace(page, 'Practices');
      const rows = page.locator('.practice-list > li');
      await expect.poll(() => rows.count()).toBe(practices.length);
      for (const [, practice] of practices) {
        const blocks = Object.values(practice.blocks);
        const last = blocks.reduce((a, b) => (a.rank > b.rank ? a : b));
        const used = blocks.reduce((sum, one) => sum + one.minutes + one.changeoverMinutes, 0);
        const said = new RegExp(
          `${blocks.length} blocks, (${used}|${used - last.changeoverMinutes}) of ${practice.iceMinutes} min`,
        );
        await expect.poll(() => rows.filter({ hasText: practice.title }).textContent()).toMatch(said);
      }
      await rows.getByText('tomorrow').waitFor();
    }));

  it('has a ledger whose minutes are those of its practices', () =>
    withPage(app, 'first start ledger', async page => {
      await lookRound(page);
      await toPlace(page, 'Ledger');
      await page.getByRole('button', { name: 'As a table' }).click();
      for (const [id, habit] of habits) {
        const minutes = page.getByRole('row', { name: habit.title }).locator('td').first();
        await expect.poll(() => minutes.textContent(), { message: habit.title }).toBe(`${minutesOf(id)}`);
      }
      expect(habits.some(([id]) => minutesOf(id) > 0)).toBe(true);
    }));
});

it('an own team stands beside the demo, empty, and each is as it was when one comes back', () =>
  withPage(app, 'own team', async page => {
    await lookRound(page);
    await page.getByRole('button', { name: 'Settings' }).click();
    await page.getByRole('button', { name: 'Start my own team' }).click();
    await page.getByRole('textbox', { name: /team.s name/ }).fill('Lower Inlet Herons');
    await page.getByLabel('Sheet of ice you play on').selectOption('60x30m');
    await page.getByRole('button', { name: 'Start', exact: true }).click();
    await page.getByRole('link', { name: 'Team: Lower Inlet Herons' }).waitFor();
    for (const [place, says] of [
      ['Film', 'Open a film'],
      ['Habits', 'Write a habit'],
      ['Drills', 'Draw on bare ice'],
      ['Practices', 'Plan a practice'],
    ] as const) {
      await toPlace(page, place);
      await page.locator('.empty').getByRole('button', { name: says }).waitFor();
    }
    await toPlace(page, 'Ledger');
    await page.locator('.empty').getByRole('link', { name: 'To the film' }).waitFor();
    await page.getByRole('button', { name: 'Settings' }).click();
    await page.getByRole('button', { name: 'Go to Tern Harbour Lanterns' }).click();
    await page.getByRole('link', { name: 'Team: Tern Harbour Lanterns' }).waitFor();
    await toPlace(page, 'Habits');
    await expect.poll(() => page.locator('.habit-list > li').count()).toBe(habits.length);
    await page.reload();
    await page.getByRole('link', { name: 'Team: Tern Harbour Lanterns' }).waitFor();
  }));
