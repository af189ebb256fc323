import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';

/** Rules of WCAG 2.2 AA broken on this page at serious or critical level, as short lines. */
export async function seriousViolations(page: Page): Promise<string[]> {
  const found = await new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])
    .analyze();
  return found.violations
    .filter(each => each.impact === 'serious' || each.impact === 'critical')
    .map(each => `${each.id}: ${each.nodes.map(node => node.target.join(' ')).join(' | ')}`);
}
