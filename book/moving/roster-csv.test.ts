import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rosterFromCsv } from './roster-csv.ts';

const sentenceOf = (text: string) => {
  const roster = rosterFromCsv(text);
  return roster.kind === 'refused' ? roster.sentence : 'taken';
};

describe('a roster from CSV', () => {
  it('reads any order of columns, quotes, semicolons, a byte order mark and Windows line ends', () => {
    const text =
      '\uFEFFName;Number;Position;Group;No contact\r\n"Ilse ""Tern"" Vaaro; C";#7;f;white;yes\r\n\r\nMirembe Okal;31;G;;\r\n';
    expect(rosterFromCsv(text)).toEqual({
      kind: 'ok',
      skaters: [
        { rank: 1, number: 7, name: 'Ilse "Tern" Vaaro; C', position: 'F', noContact: true, group: 'white' },
        { rank: 2, number: 31, name: 'Mirembe Okal', position: 'G', noContact: false, group: '' },
      ],
      leftOut: [],
      saysGroup: true,
      saysNoContact: true,
    });
  });

  it('takes the columns it knows, and says which it leaves out as the file writes them', () => {
    expect(
      rosterFromCsv('Number,Birth date,Name,Position,E-mail,,E-mail\n1,2009-04-01,A,F,a@example.org,,'),
    ).toEqual({
      kind: 'ok',
      skaters: [{ rank: 1, number: 1, name: 'A', position: 'F', noContact: false, group: '' }],
      leftOut: ['Birth date', 'E-mail', 'E-mail'],
      saysGroup: false,
      saysNoContact: false,
    });
  });

  it.each([
    ['', 'The file is empty; its first line must name the columns number, name, position.'],
    ['name,position\nA,F', 'The column "number" is missing; found "name", "position".'],
    ['number,name,position,name\n1,A,F,B', 'The column "name" is there twice.'],
    ['number,name,position\n', 'The file names its columns but holds no skater.'],
    ['number,name,position\n100,A,F', 'Line 2, column "number": a number from 0 to 99 is wanted, not "100".'],
    ['number,name,position\n1,A,F\n2,B,Q', 'Line 3, column "position": F, D or G is wanted, not "Q".'],
    ['no,jersey,name,position\n1,1,A,F', 'The column "number" is there twice.'],
    ['\0\0\0\x18ftypmp42\nnumber,name', 'This is not a CSV file.'],
    ['PK\x03\x04\x14\0xl/workbook.xml', 'This is not a CSV file.'],
    ['number,name,position\n1,,F', 'Line 2, column "name": it is empty.'],
    ['number,name,position\n1,A,F,extra', 'Line 2, 4 cells: there are only 3 columns.'],
    ['number,name,position\n1,"A,F', 'Line 2: a quotation mark is opened and never closed.'],
  ])('says in one sentence what is wrong with %j', (text, sentence) => {
    expect(sentenceOf(text)).toBe(sentence);
  });

  it.each(['number', 'No', 'no.', 'NR', 'nr.', '#', 'Jersey', 'Jersey_Number', ' Jersey no. '])(
    'takes the number from a column headed %j',
    head => {
      const roster = rosterFromCsv(`${head},PLAYER,Pos.\n7,Mirembe Okal,Left wing\n31,Ilse Vaaro,Goalie`);
      expect(roster).toMatchObject({
        kind: 'ok',
        skaters: [
          { number: 7, name: 'Mirembe Okal', position: 'F' },
          { number: 31, name: 'Ilse Vaaro', position: 'G' },
        ],
      });
    },
  );

  it('never throws, whatever the text', () => {
    const letters = fc.constantFrom(
      ',',
      ';',
      '"',
      '\n',
      '\r',
      '\t',
      'number',
      'name',
      'position',
      'F',
      '7',
      ' ',
      '\0',
      'ž',
    );
    fc.assert(
      fc.property(fc.array(letters, { maxLength: 60 }), parts => {
        expect(['ok', 'refused']).toContain(rosterFromCsv(parts.join('')).kind);
      }),
      { numRuns: 500, seed: 20261125 },
    );
  });
});
