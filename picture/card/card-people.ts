import type { Measure } from '../pen/paper-measure.ts';
import type { Pen } from '../pen/pen.ts';
import type { IceCard } from './ice-card.ts';
import { mm, type Page } from './page-measures.ts';
import { wrapWords } from './wrap-words.ts';

/** Everybody who is on the ice, in groups: who is not on the card is not called. */

type People = Pick<IceCard, 'groups' | 'note'>;

export const GROUP_LINE = 10.6;
const COLUMN_APART = mm(6);
const NAME_WIDTH = mm(15);
const NOTE_LINES = 2;
/** The table of letter widths may be this much short of the font (`print.test.ts`), which a line across the page shows. */
const WIDTHS_SHORT = 1.03;

/** Height of the people and the note below them; 0 without any. */
export const peopleHeight = (measure: Measure, people: People, page: Page): number => {
  const count = peopleLines(measure, people, page) + noteLines(measure, people, page).length;
  return count > 0 ? mm(1.6) + count * GROUP_LINE + mm(0.8) : 0;
};

export const drawPeople = (pen: Pen, people: People, page: Page, top: number): void => {
  const { columns, width, nameWidth } = peopleColumns(pen, people, page);
  columns.forEach((groups, column) => {
    const x = page.left + column * (width + COLUMN_APART);
    let y = top + 8.4;
    for (const group of groups) {
      pen.text('cardGroup', group.name, x, y);
      group.lines.forEach((line, index) => {
        pen.text('cardPoint', line, x + nameWidth, y + index * GROUP_LINE);
      });
      y += Math.max(1, group.lines.length) * GROUP_LINE;
    }
  });
  const noteTop = top + 8.4 + peopleLines(pen, people, page) * GROUP_LINE + mm(0.5);
  noteLines(pen, people, page).forEach((line, index) => {
    pen.text('cardPoint', line, page.left, noteTop + index * GROUP_LINE);
  });
};

/** Lines of the longer column. */
export const peopleLines = (measure: Measure, people: People, page: Page): number =>
  Math.max(...peopleColumns(measure, people, page).columns.map(linesIn));

/** Two columns; one group alone has the whole width, and without a name nothing stands before it. */
const peopleColumns = (measure: Measure, { groups }: People, page: Page) => {
  const whole = page.right - page.left;
  const isAlone = groups.length === 1;
  const width = isAlone ? whole : (whole - COLUMN_APART) / 2;
  const nameWidth = groups.every(({ name }) => name === '') ? 0 : NAME_WIDTH;
  const set = groups.map(group => ({
    name: wrapWords(measure, 'cardGroup', group.name, NAME_WIDTH - mm(1), 1)[0] ?? '',
    lines: wrapWords(measure, 'cardPoint', group.people, (width - nameWidth) / WIDTHS_SHORT),
  }));
  const half = Math.ceil(set.length / 2);
  return { columns: [set.slice(0, half), set.slice(half)], width, nameWidth };
};

const linesIn = (groups: readonly { readonly lines: readonly string[] }[]): number =>
  groups.reduce((sum, group) => sum + Math.max(1, group.lines.length), 0);

const noteLines = (measure: Measure, { note }: People, page: Page): readonly string[] =>
  note === '' ? [] : wrapWords(measure, 'cardPoint', note, page.right - page.left, NOTE_LINES);
