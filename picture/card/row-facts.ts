import type { Pen } from '../pen/pen.ts';
import type { IceCardBlock } from './ice-card.ts';
import { FACTS_WIDTH, ROW_PAD } from './page-measures.ts';
import { wrapWords } from './wrap-words.ts';

const FACT_LINE = 9.4;
const BELOW_GAP = 5;
/** Letters hang below their line; the rule below the row stays clear of them. */
const ABOVE_RULE = 5;
const MOST_FACTS = 4;

/** Facts beside the words, each with its name on one line with it, so that every row of a card looks the same. */
export const drawFacts = (pen: Pen, block: IceCardBlock, left: number, top: number, height: number): void => {
  const bottom = top + height - ABOVE_RULE;
  const y = top + ROW_PAD;
  const two = factLines(pen, block, FACTS_WIDTH, 2);
  const fits = y + two.length * FACT_LINE <= bottom;
  drawFactLines(pen, fits ? two : factLines(pen, block, FACTS_WIDTH, 1), left, y);
};

/** Facts below the words, each on a line with its name. */
export const drawFactsBelow = (pen: Pen, block: IceCardBlock, left: number, width: number, y: number): void =>
  drawFactLines(pen, factLines(pen, block, width, 1), left, y + BELOW_GAP);

export const factsBelowHeight = (pen: Pen, block: IceCardBlock, width: number): number => {
  const lines = factLines(pen, block, width, 1).length;
  return lines === 0 ? 0 : BELOW_GAP + lines * FACT_LINE + ABOVE_RULE - 2;
};

interface FactLine {
  /** Empty where the words above go on. */
  readonly name: string;
  readonly words: string;
  readonly indent: number;
}

const factLines = (pen: Pen, block: IceCardBlock, width: number, mostLines: number): readonly FactLine[] =>
  block.facts.slice(0, MOST_FACTS).flatMap(fact => {
    const indent = pen.measure('cardFactName', `${fact.name} `) + 1.5;
    return wrapWords(pen, 'cardFact', fact.words, width - indent, mostLines).map((words, index) => ({
      name: index === 0 ? fact.name : '',
      words,
      indent,
    }));
  });

const drawFactLines = (pen: Pen, lines: readonly FactLine[], left: number, top: number): void =>
  lines.forEach(({ name, words, indent }, index) => {
    const y = top + (index + 1) * FACT_LINE;
    if (name !== '') pen.text('cardFactName', name, left, y);
    pen.text('cardFact', words, left + indent, y);
  });
