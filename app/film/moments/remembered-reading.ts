import type { EventReading, EventTable, Game, Team } from '@icewright/book';
import { rinkOfSheet, sheetOfGame } from '../fit-of-freeze.ts';
import { whoseLines } from './whose-lines.ts';

const KEPT_AS = 'icewright.event-tables';

/** How a table with these heads was read the last time by this browser, or a guess from the heads. */
export function readingFor(table: EventTable, game: Game, team: Team): EventReading {
  const kept = all()[keyOf(table)];
  const { lengthM, widthM } = rinkOfSheet(sheetOfGame(game, team)).boards;
  const whose = whoseLines(table, kept, game, team);
  if (kept)
    return { ...kept, ...whose, ...(kept.origin === 'centre' ? {} : { origin: { lengthM, widthM } }) };
  const find = (...words: readonly string[]): number | undefined => {
    const at = table.heads.findIndex(head => words.some(word => head.toLowerCase().includes(word)));
    return at < 0 ? undefined : at;
  };
  const [period, skater, note, x, y] = [
    find('period'),
    find('player', 'skater', 'number', 'jersey'),
    find('note', 'comment'),
    table.heads.findIndex(head => /^x\b|\bx$|x_|xcoord|x coord/i.test(head)),
    table.heads.findIndex(head => /^y\b|\by$|y_|ycoord|y coord/i.test(head)),
  ];
  return {
    time: find('time', 'clock', 'second') ?? 0,
    clock: period === undefined ? 'whole' : 'periodDown',
    periodMinutes: 20,
    what: find('event', 'type', 'what', 'action') ?? Math.min(1, table.heads.length - 1),
    means: {},
    unit: 'feet',
    origin: 'centre',
    ...whose,
    ...(period === undefined ? {} : { period }),
    ...(skater === undefined ? {} : { skater }),
    ...(note === undefined ? {} : { note }),
    ...(x === undefined || x < 0 ? {} : { x }),
    ...(y === undefined || y < 0 ? {} : { y }),
  };
}

export function rememberReading(table: EventTable, reading: EventReading): void {
  localStorage.setItem(KEPT_AS, JSON.stringify({ ...all(), [keyOf(table)]: reading }));
}

const keyOf = (table: EventTable): string => table.heads.join('\u001f');

function all(): Record<string, EventReading | undefined> {
  try {
    return JSON.parse(localStorage.getItem(KEPT_AS) ?? '{}') as Record<string, EventReading>;
  } catch {
    return {};
  }
}
