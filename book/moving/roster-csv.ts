import type { Skater } from '../documents/team.ts';
import { csvRowsOf } from './csv-rows.ts';

export type Roster =
  | TakenRoster
  /** One sentence that names the column and the line. */
  | { readonly kind: 'refused'; readonly sentence: string };

export interface TakenRoster {
  readonly kind: 'ok';
  /** In the order of the file, ranks 1, 2, 3 …; each needs an id when it goes into a team. */
  readonly skaters: readonly Skater[];
  /** Heads of columns that no skater has room for, as the file writes them: to be said before the roster is taken. */
  readonly leftOut: readonly string[];
  /** What the file does not speak of is not changed in those who are there already. */
  readonly saysGroup: boolean;
  readonly saysNoContact: boolean;
}

const needed = ['number', 'name', 'position'] as const;
const possible = [...needed, 'group', 'no contact'] as const;
type Column = (typeof possible)[number];

/** How columns are headed in lists from elsewhere; common practice, no source. */
const HEADED: Readonly<Record<Column, readonly string[]>> = {
  number: ['no', 'nr', 'num', '#', 'jersey', 'jersey number', 'jersey no'],
  name: ['player', 'player name', 'skater', 'full name'],
  position: ['pos'],
  group: ['line', 'colour', 'color'],
  'no contact': ['nocontact', 'non contact'],
};

/** How positions are written in lists from elsewhere; common practice, no source. */
const POSITIONS: Readonly<Record<Skater['position'], readonly string[]>> = {
  F: [
    'f',
    'forward',
    'fw',
    'c',
    'centre',
    'center',
    'w',
    'wing',
    'winger',
    'lw',
    'rw',
    'left wing',
    'right wing',
  ],
  D: ['d', 'defender', 'defence', 'defense', 'defenceman', 'defenseman', 'ld', 'rd'],
  G: ['g', 'goalie', 'goaltender', 'goalkeeper', 'gk'],
};

const skaterLimit = 200;

/**
 * A roster from CSV. First line: column names, in any order and case, also by their other common heads: number, name,
 * position (F, D or G, or in words), and if wanted group and "no contact" (yes or no). Any other column is left out
 * and named, so that nothing a coach typed is dropped silently.
 */
export function rosterFromCsv(text: string): Roster {
  if (isBinary(text)) return refused('This is not a CSV file.');
  const rows = csvRowsOf(text);
  if (!Array.isArray(rows)) return { kind: 'refused', sentence: rows.sentence };
  const [head, ...lines] = rows;
  if (head === undefined)
    return refused('The file is empty; its first line must name the columns number, name, position.');
  const names = head.map(columnOf);
  for (const column of needed) {
    if (!names.includes(column))
      return refused(`The column "${column}" is missing; found ${names.map(quoted).join(', ')}.`);
  }
  for (const [index, name] of names.entries()) {
    if (possible.includes(name as Column) && names.indexOf(name) !== index)
      return refused(`The column ${quoted(name)} is there twice.`);
  }
  if (lines.length === 0) return refused('The file names its columns but holds no skater.');
  if (lines.length > skaterLimit)
    return refused(`A roster holds up to ${skaterLimit} skaters; this file has ${lines.length}.`);
  const skaters: Skater[] = [];
  for (const [index, line] of lines.entries()) {
    const made = skaterFrom(names, line, index + 1);
    if (typeof made === 'string') return refused(`Line ${index + 2}, ${made}`);
    skaters.push(made);
  }
  const leftOut = head.filter((_, index) => !possible.includes(names[index] as Column));
  return {
    kind: 'ok',
    skaters,
    leftOut: leftOut.map(said).filter(one => one !== ''),
    saysGroup: names.includes('group'),
    saysNoContact: names.includes('no contact'),
  };
}

/** A skater, or the rest of a sentence that begins with the line. */
function skaterFrom(columns: readonly string[], line: readonly string[], rank: number): Skater | string {
  if (line.length > columns.length) return `${line.length} cells: there are only ${columns.length} columns.`;
  const cellOf = (column: Column): string => (line[columns.indexOf(column)] ?? '').trim();
  const number = cellOf('number').replace(/^#/, '');
  if (!/^\d{1,2}$/.test(number))
    return `column "number": a number from 0 to 99 is wanted, not ${quoted(number)}.`;
  if (cellOf('name') === '') return 'column "name": it is empty.';
  const position = positionOf(cellOf('position'));
  if (position === undefined) {
    return `column "position": F, D or G is wanted, not ${quoted(cellOf('position'))}.`;
  }
  const noContact = cellOf('no contact').toLowerCase();
  if (!['', 'yes', 'no'].includes(noContact)) {
    return `column "no contact": yes or no is wanted, not ${quoted(noContact)}.`;
  }
  for (const column of ['name', 'group'] as const) {
    if (cellOf(column).length > 200) return `column "${column}": over 200 characters.`;
  }
  return {
    rank,
    number: Number(number),
    name: cellOf('name'),
    position,
    noContact: noContact === 'yes',
    group: cellOf('group'),
  };
}

/** The column that a head means, or the head as it stands. */
function columnOf(cell: string): string {
  const head = cell
    .trim()
    .toLowerCase()
    .replace(/[-_\s]+/g, ' ')
    .replace(/\.$/, '');
  return possible.find(column => column === head || HEADED[column].includes(head)) ?? head;
}

function positionOf(cell: string): Skater['position'] | undefined {
  const said = cell.toLowerCase().replace(/\.$/, '');
  return (['F', 'D', 'G'] as const).find(position => POSITIONS[position].includes(said));
}

/** Text holds no zero byte, no other control letters but tab and line ends, and no byte that is no letter. */
function isBinary(text: string): boolean {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for
  return /[\0-\x08\x0E-\x1F]/.test(text.slice(0, 4000));
}

const quoted = (text: string): string => `"${text.length > 40 ? `${text.slice(0, 40)}…` : text}"`;
const said = (cell: string): string => cell.trim().slice(0, 40);
const refused = (sentence: string): Roster => ({ kind: 'refused', sentence });
