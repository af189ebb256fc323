import { type EventTable, eventTableOf } from '@icewright/book';
import { describe, expect, it } from 'vitest';
import { whoseLines } from './whose-lines.ts';

const us = { name: 'Tern Harbour Lanterns' };
const game = { place: 'home', opponent: 'Quillback Bay' } as const;
const tableOf = (head: string, ...words: readonly string[]): EventTable => {
  const table = eventTableOf(`time,event,${head}\n${words.map(word => `1,goal,${word}`).join('\n')}\n`);
  if ('sentence' in table) throw new Error(table.sentence);
  return table;
};

describe('whose the lines of a table are', () => {
  it('guesses the column by its head and us by our name, its beginning, or where we played', () => {
    expect(whoseLines(tableOf('Team', 'LAN', 'QUI'), undefined, game, us)).toEqual({
      team: 2,
      ours: ['LAN'],
      others: 'come',
    });
    expect(whoseLines(tableOf('club', 'Quillback Bay', us.name), undefined, game, us).ours).toEqual([
      us.name,
    ]);
    expect(
      whoseLines(tableOf('team', 'Home', 'Away'), undefined, { ...game, place: 'away' }, us).ours,
    ).toEqual(['Away']);
    expect(whoseLines(tableOf('team', 'A', 'B'), undefined, game, us).ours).toEqual([]);
    expect(whoseLines(tableOf('player', '4', '9'), undefined, game, us)).toEqual({ others: 'come' });
  });

  it('keeps what was said the last time, that there is no such column too; but not which end was ours', () => {
    const kept = { team: 2, ours: ['X'], others: 'leftOut' } as const;
    expect(whoseLines(tableOf('team', 'X', 'LAN'), kept, game, us)).toEqual(kept);
    expect(whoseLines(tableOf('team', 'LAN', 'Z'), kept, game, us).ours).toEqual(['LAN']);
    expect(whoseLines(tableOf('team', 'LAN'), { others: 'come' }, game, us)).toEqual({ others: 'come' });
    // Kept from before it was asked.
    expect(whoseLines(tableOf('team', 'LAN'), {}, game, us).team).toBe(2);
    const home = { team: 2, ours: ['home'], others: 'come' } as const;
    expect(whoseLines(tableOf('team', 'home', 'away'), home, { ...game, place: 'away' }, us).ours).toEqual([
      'away',
    ]);
  });
});
