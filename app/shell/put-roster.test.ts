import { rosterFromCsv, type TakenRoster, type Team } from '@icewright/book';
import { describe, expect, it } from 'vitest';
import { skatersToPut } from './put-roster.ts';

const okal = { rank: 3, number: 14, name: 'Okal', position: 'F', noContact: true, group: 'White' };
const team = { skaters: { a: okal } } as unknown as Pick<Team, 'skaters'>;
const put = (csv: string) => skatersToPut(rosterFromCsv(csv) as TakenRoster, team);

describe('a roster put into a team', () => {
  it('brings a known number up to date and lifts no “no contact” that the file does not speak of', () => {
    const { puts, added } = put('number,name,position\n14,Mirembe Okal,D\n31,Vaaro,G');
    expect(added).toBe(1);
    expect(puts[0]).toEqual(['a', { ...okal, name: 'Mirembe Okal', position: 'D' }]);
    expect(puts[1]?.[1]).toMatchObject({ number: 31, rank: 4, noContact: false, group: '' });
  });

  it('takes group and contact where the file says them', () => {
    const { puts } = put('number,name,position,group,no contact\n14,Okal,F,,no');
    expect(puts).toEqual([['a', { ...okal, group: '', noContact: false }]]);
  });
});
