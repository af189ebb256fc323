import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';

/**
 * Rules of WCAG 2.2 AA broken on this page at serious or critical level, as short lines. What holds is not written up, and
 * the page is looked at alone, as none of ours has frames: a look is three times as quick so.
 */
export async function seriousViolations(page: Page): Promise<string[]> {
  const found = await new AxeBuilder({ page })
    .options({ resultTypes: ['violations'] })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])
    .setLegacyMode(true)
    .analyze();
  return found.violations
    .filter(each => each.impact === 'serious' || each.impact === 'critical')
    .map(each => `${each.id}: ${each.nodes.map(node => node.target.join(' ')).join(' | ')}`);
}

/** The screens that are looked at: a page is opened once for each pointer, and then made narrower. */
export const LOOKS = [
  { widths: [1440, 1024], size: { width: 1440, height: 900 }, touch: false },
  { widths: [390], size: { width: 390, height: 844 }, touch: true },
] as const;

/** The page as it stands, at each of these widths: nothing breaks those rules, and nothing reaches over the edge. */
export async function readableAt(page: Page, widths: readonly number[]): Promise<void> {
  for (const width of widths) {
    const size = page.viewportSize();
    if (size !== null && size.width !== width) await page.setViewportSize({ ...size, width });
    expect(await seriousViolations(page), `${width} px`).toEqual([]);
    const over = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(over, `${width} px`).toBeLessThanOrEqual(0);
  }
}
