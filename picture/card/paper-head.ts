import type { Pen } from '../pen/pen.ts';
import type { IceCard } from './ice-card.ts';
import { mm, PAGE, type Page } from './page-measures.ts';
import { drawPaperRule, PAPER_RULE_HEIGHT } from './paper-parts.ts';
import { wrapWords } from './wrap-words.ts';

/** Team, title, up to three facts beside it, and the graduated rule, at the top of any sheet of paper. Returns where the rule ends. */
export const drawPaperHead = (
  pen: Pen,
  of: Pick<IceCard, 'team' | 'title' | 'facts'>,
  page: Page = PAGE,
): number => {
  const base = page.top + mm(9.2);
  pen.text('cardTeam', of.team, page.left, page.top + 2);
  let x = page.right;
  for (const fact of [...of.facts.slice(0, 3)].reverse()) {
    x -= Math.max(pen.measure('cardSmall', fact.small), pen.measure('cardStrong', fact.strong));
    pen.text('cardSmall', fact.small, x, base - 13.5);
    pen.text('cardStrong', fact.strong, x, base);
    x -= mm(8);
  }
  const [title = ''] = wrapWords(pen, 'cardTitle', of.title, x - page.left, 1);
  pen.text('cardTitle', title, page.left, base);
  const rule = base + mm(2.6);
  drawPaperRule(pen, page, rule);
  return rule + PAPER_RULE_HEIGHT;
};
