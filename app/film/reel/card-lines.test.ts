import { describe, expect, it } from 'vitest';
import { CARD_LINES, cardLinesOf } from './card-lines.ts';

const words = {
  what: 'Middle first',
  verdict: 'missed',
  who: '14 Nakatani',
  note: '',
  where: 'Quillback Bay, 0:06',
};

describe('the lines of a title card', () => {
  it('says what is wanted and known, verdict and name on one line', () => {
    expect(cardLinesOf(words, new Set(CARD_LINES))).toEqual([
      'Middle first',
      'missed, 14 Nakatani',
      'Quillback Bay, 0:06',
    ]);
  });
  it('leaves out the name of a player when it is not wanted, and the empty line with it', () => {
    expect(cardLinesOf(words, new Set(['what', 'where']))).toEqual(['Middle first', 'Quillback Bay, 0:06']);
    expect(cardLinesOf(words, new Set(['what', 'verdict']))).toEqual(['Middle first', 'missed']);
    expect(cardLinesOf(words, new Set())).toEqual([]);
  });
});
