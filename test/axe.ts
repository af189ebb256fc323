import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';

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
