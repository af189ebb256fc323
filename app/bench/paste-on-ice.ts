import type { Page } from 'playwright-core';
import type { RunningApp } from '../../test/browser.ts';

/** A part of a drill, as it is copied, put onto bare ice of a drill of its own; ends when its rep is computed. */
export const pasteOnIce = async (page: Page, app: RunningApp, part: string): Promise<void> => {
  await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.goto(`${app.url}/drills`);
  await page.getByRole('button', { name: 'Draw on bare ice' }).click();
  await page.getByText('Set somebody on the ice').waitFor();
  await page.evaluate(text => navigator.clipboard.writeText(text), part);
  await page.keyboard.press('Control+v');
  await page.getByText(/^In this rep/).waitFor();
  await page.keyboard.press('Escape');
};
