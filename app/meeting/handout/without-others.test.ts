import { emptyTeam, type Team } from '@icewright/book';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { withoutOthers } from './without-others.ts';

const skater = (number: number, name: string) => ({
  rank: number,
  number,
  name,
  position: 'F' as const,
  noContact: false,
  group: '',
});
const teamOf = (skaters: Record<string, ReturnType<typeof skater>>): Team => ({
  ...emptyTeam({
    name: 'Herons',
    level: 'u14',
    rink: { preset: '60x30m' },
    madeAt: '2026-11-02T10:00:00Z',
  }),
  skaters: skaters as Team['skaters'],
});
const team = teamOf({
  own: skater(21, 'Ansa Thornquist'),
  b: skater(14, 'Emi Nakatani'),
  c: skater(4, 'Ước Đặng'),
  d: skater(7, 'Li Thornquist'),
  e: skater(9, 'Mary-Ann Oduya'),
  f: skater(19, 'Kofi Oduya'),
});
const said = (words: string) => withoutOthers(words, team, 'own');

describe('words for one player', () => {
  it.each([
    ['Ansa reads it before Emi Nakatani does', 'Ansa reads it before number 14 does'],
    ['NAKATANI is late, emi too', 'number 14 is late, emi too'],
    ['Wait for 14 Nakatani, then go', 'Wait for number 14, then go'],
    ['#14 Nakatani’s stick', 'number 14’s stick'],
    ['Đặng and Ước are one', 'number 4 and number 4 are one'],
    ['Oduya jumps', 'number 9 or 19 jumps'],
    ['Mary-Ann Oduya jumps', 'number 9 jumps'],
    ['Ann jumps', 'number 9 jumps'],
    ['The line is alive: Li has it', 'The line is alive: number 7 has it'],
    ['Thornquist is both of them', 'Thornquist is both of them'],
    ['Emilia is nobody here', 'Emilia is nobody here'],
  ])('%s', (before, after) => {
    expect(said(before)).toBe(after);
  });

  it('takes names also where the letters are written apart from their marks', () => {
    expect(said('Đặng'.normalize('NFD'))).toBe('number 4');
  });

  it('whatever stands around it, no whole name of another is left', () => {
    const names = ['Emi Nakatani', 'Ước Đặng', 'Mary-Ann Oduya', 'Kofi Oduya', 'Nakatani', 'Oduya', 'Kofi'];
    const gap = fc.constantFrom(' ', ', ', '. ', ' (', ') ', ': ', '\n', ' – ', ' 14 ', '“');
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.constantFrom(...names), gap), { minLength: 1 }), story => {
        const after = said(story.flat().join(''));
        for (const name of names) expect(after).not.toContain(name);
      }),
    );
  });
});
