import type { LetteringName } from '../lettering.ts';
import type { Pen } from '../pen/pen.ts';

export interface RuleSetting {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  /** Length of one segment; the last is cut where the rule ends. */
  readonly each: number;
  readonly height?: number;
  readonly figures?: readonly { readonly at: number; readonly words: string; readonly strong?: boolean }[];
}

const HEIGHT_PX = 5;
const FIGURE_BELOW_PX = 16;

/** The graduated rule that everything lies on: full and open segments by turns, figures below. Px. */
export const drawRule = (pen: Pen, rule: RuleSetting): void => {
  const height = rule.height ?? HEIGHT_PX;
  for (let index = 0; index * rule.each < rule.width - 1e-6; index++) {
    const from = index * rule.each;
    const width = Math.min(rule.each, rule.width - from);
    pen.path(index % 2 === 0 ? 'ruleFull' : 'ruleOpen', sink =>
      sink.rect(rule.x + from, rule.y, width, height),
    );
  }
  for (const figure of rule.figures ?? []) {
    const lettering: LetteringName = figure.strong ? 'axisBold' : 'axis';
    pen.text(lettering, figure.words, rule.x + figure.at, rule.y + FIGURE_BELOW_PX, { anchor: 'middle' });
  }
};
