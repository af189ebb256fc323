import type { Moment } from '../documents/game.ts';
import { csvRowsOf } from './csv-rows.ts';

/** A list of events from elsewhere: its heads and lines. */
export interface EventTable {
  readonly heads: readonly string[];
  readonly lines: readonly (readonly string[])[];
}

/** How the columns of a table are to be read. Columns by their place, 0 first. */
export interface EventReading {
  readonly time: number;
  /** Seconds since the start, or a period's clock that counts up or down. */
  readonly clock: 'whole' | 'periodUp' | 'periodDown';
  readonly period?: number;
  readonly periodMinutes: number;
  /** The column whose words say what happened, and what each of them means here; other words are left out. */
  readonly what: number;
  readonly means: Readonly<
    Record<string, { readonly habit: Moment['habit']; readonly verdict: Moment['verdict'] }>
  >;
  readonly skater?: number;
  /** The column that says whose a line is, and which of its words are us. Left out: every line is taken as ours. */
  readonly team?: number;
  readonly ours?: readonly string[];
  /** What becomes of a line that is not ours: it comes in with nobody of ours and no verdict on us, or is left out. */
  readonly others?: 'come' | 'leftOut';
  readonly note?: number;
  readonly x?: number;
  readonly y?: number;
  readonly unit: 'metres' | 'feet';
  /** Where the table's (0, 0) lies: centre ice, or a corner of this sheet, metres. */
  readonly origin: 'centre' | { readonly lengthM: number; readonly widthM: number };
  /**
   * The periods whose places are to be turned round by half a turn about centre ice: a table that always says them as if one
   * team attacked the same way, though the teams change ends. Left out: places lie on the sheet as they stand.
   */
  readonly turned?: 'even' | 'odd';
}

/** A line and the film's time at which it happened: ties the table's clock to the film. */
export interface ClockTie {
  /** 0 is the first line after the heads. */
  readonly line: number;
  readonly filmTimeS: number;
}

export interface TableMoment {
  readonly id: string;
  readonly habit: Moment['habit'];
  readonly verdict: Moment['verdict'];
  readonly filmTimeS: number;
  readonly note: string;
  /** It speaks of the other team. */
  readonly ofOthers?: true;
  readonly skaterNumber?: number;
  readonly period?: number;
  readonly atM?: { readonly xM: number; readonly yM: number };
}

export type TableRead =
  | { readonly kind: 'ok'; readonly moments: readonly TableMoment[]; readonly leftOutCount: number }
  | { readonly kind: 'refused'; readonly sentence: string };

export function eventTableOf(text: string): EventTable | { readonly sentence: string } {
  const rows = csvRowsOf(text);
  if (!Array.isArray(rows)) return rows;
  const [heads, ...lines] = rows;
  if (heads === undefined || heads.length < 2)
    return { sentence: 'The file names no columns; its first line must.' };
  if (lines.length === 0) return { sentence: 'The file names its columns but holds no line.' };
  return { heads: heads.map(head => head.trim()), lines };
}

/** The words of a column in order of how often they stand there. */
export function wordsIn(
  table: EventTable,
  column: number,
): readonly (readonly [words: string, count: number])[] {
  const counts = new Map<string, number>();
  for (const line of table.lines) {
    const words = (line[column] ?? '').trim();
    if (words !== '') counts.set(words, (counts.get(words) ?? 0) + 1);
  }
  return [...counts].sort(([, a], [, b]) => b - a);
}

/**
 * The lines that mean something here, at their time in the film. A line's clock runs with the film from the last tie at
 * or before it: a clock that stands at whistles needs a tie after each. The id of a moment is made from its line, so
 * the same line is the same moment whenever it comes in. Refused at the first line whose time, place or period is none.
 */
export function readEventTable(table: EventTable, how: EventReading, ties: readonly ClockTie[]): TableRead {
  if (ties.length === 0) return refused('Say first at which frame one of the lines happened.');
  const clocks: number[] = [];
  for (const [index, line] of table.lines.entries()) {
    const found = clockOf(line, how);
    if (typeof found === 'string') return refused(`Line ${index + 2}: ${found}`);
    clocks.push(found);
  }
  const sorted = ties
    .map(({ line, filmTimeS }) => ({ clockS: clocks[line]!, offsetS: filmTimeS - clocks[line]! }))
    .sort((a, b) => a.clockS - b.clockS);
  const moments: TableMoment[] = [];
  let leftOutCount = 0;
  for (const [index, line] of table.lines.entries()) {
    const meaning = how.means[(line[how.what] ?? '').trim()];
    const clockS = clocks[index]!;
    const tie = sorted.findLast(one => one.clockS <= clockS) ?? sorted[0]!;
    const filmTimeS = clockS + tie.offsetS;
    const isOurs = isLineOurs(line, how);
    if (meaning === undefined || filmTimeS < 0 || (!isOurs && how.others === 'leftOut')) {
      leftOutCount += 1;
      continue;
    }
    const atM = placeOf(line, how);
    if (typeof atM === 'string') return refused(`Line ${index + 2}: ${atM}`);
    const period = periodOf(line, how);
    moments.push({
      id: idOfLine(line),
      filmTimeS,
      ...(isOurs ? ofOurs(line, how, meaning) : ofOthers(line, how, meaning)),
      ...(period === undefined ? {} : { period }),
      ...(atM === undefined ? {} : { atM }),
    });
  }
  return { kind: 'ok', moments, leftOutCount };
}

/** Whether a line speaks of us: all do where no column says whose they are. */
export const isLineOurs = (line: readonly string[], { team, ours = [] }: EventReading): boolean =>
  team === undefined || ours.includes(cellOf(line, team));

type Meaning = EventReading['means'][string];
type Saying = Pick<TableMoment, 'habit' | 'verdict' | 'note' | 'skaterNumber' | 'ofOthers'>;

const ofOurs = (line: readonly string[], how: EventReading, meaning: Meaning): Saying => {
  const number = /\d{1,2}/.exec(cellOf(line, how.skater))?.[0];
  return {
    ...meaning,
    note: cellOf(line, how.note).slice(0, 400),
    ...(number === undefined ? {} : { skaterNumber: Number(number) }),
  };
};

/** What another team did is nothing that one of ours did or missed; the note says who it was. */
const ofOthers = (line: readonly string[], how: EventReading, { habit }: Meaning): Saying => {
  const who = [how.team, how.skater].map(column => cellOf(line, column)).filter(Boolean);
  const note = [who.join(' '), cellOf(line, how.note)].filter(Boolean).join(': ');
  return { habit, verdict: 'cannotSee', note: note.slice(0, 400), ofOthers: true };
};

const cellOf = (line: readonly string[], column: number | undefined): string =>
  column === undefined ? '' : (line[column] ?? '').trim();

/** Seconds on the table's own clock, or the rest of a sentence. */
function clockOf(line: readonly string[], how: EventReading): number | string {
  const cell = (line[how.time] ?? '').trim();
  const parts = /^(?:(?:(\d{1,2}):)?(\d{1,3}):)?(\d{1,6}(?:[.,]\d+)?)$/.exec(cell);
  if (!parts) return `a time is wanted, as 754.2, 12:34 or 1:02:03, not "${cell.slice(0, 40)}".`;
  const seconds =
    Number(parts[1] ?? 0) * 3600 + Number(parts[2] ?? 0) * 60 + Number(parts[3]!.replace(',', '.'));
  if (how.clock === 'whole') return seconds;
  const period = periodOf(line, how);
  if (period === undefined) return 'its period is wanted beside the clock, from 1 to 9.';
  const periodS = how.periodMinutes * 60;
  if (how.clock === 'periodDown' && seconds > periodS)
    return `the clock shows more than the ${how.periodMinutes} minutes of a period.`;
  return (period - 1) * periodS + (how.clock === 'periodUp' ? seconds : periodS - seconds);
}

function placeOf(
  line: readonly string[],
  how: EventReading,
): { readonly xM: number; readonly yM: number } | undefined | string {
  if (how.x === undefined || how.y === undefined) return undefined;
  const cells = [line[how.x] ?? '', line[how.y] ?? ''].map(cell => cell.trim());
  if (cells.every(cell => cell === '')) return undefined;
  const [x = Number.NaN, y = Number.NaN] = cells.map(cell => Number(cell.replace(',', '.')));
  if (!Number.isFinite(x) || !Number.isFinite(y)) return `a place is wanted, not "${cells.join(', ')}".`;
  const scale = how.unit === 'feet' ? 0.3048 : 1;
  const middle = how.origin === 'centre' ? { lengthM: 0, widthM: 0 } : how.origin;
  const turn = turnOf(line, how);
  if (typeof turn === 'string') return turn;
  const at = { xM: turn * (x * scale - middle.lengthM / 2), yM: turn * (y * scale - middle.widthM / 2) };
  return Math.abs(at.xM) > 50 || Math.abs(at.yM) > 30
    ? `${cells.join(', ')} lies off the ice: is it in ${how.unit}?`
    : at;
}

/** −1 where the places of the line's period are turned round, or the rest of a sentence. */
function turnOf(line: readonly string[], how: EventReading): 1 | -1 | string {
  if (how.turned === undefined) return 1;
  const period = periodOf(line, how);
  if (period === undefined) return 'its period is wanted, from 1 to 9, to know to which end it was played.';
  return (period % 2 === 0) === (how.turned === 'even') ? -1 : 1;
}

const periodOf = (line: readonly string[], how: EventReading): number | undefined => {
  const period = Number.parseInt(line[how.period ?? -1] ?? '', 10);
  return period >= 1 && period <= 9 ? period : undefined;
};

/** Made from what the line says (FNV-1a, two passes): the same line gives the same id on any machine. */
export const idOfLine = (line: readonly string[]): string => {
  const text = line.map(cell => cell.trim()).join('\u001f');
  return `line-${fnv(text, 0x811c9dc5)}${fnv(text, 0x9dc5811c)}`;
};

const fnv = (text: string, start: number): string => {
  let hash = start;
  for (let i = 0; i < text.length; i += 1) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return (hash >>> 0).toString(36);
};

const refused = (sentence: string): TableRead => ({ kind: 'refused', sentence });
