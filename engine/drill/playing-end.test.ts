import { describe, expect, it } from 'vitest';
import { LINE_IDS } from '../rink/lines.ts';
import { type End, otherEnd, type Side } from '../units/ends.ts';
import { isOurEnd, LINE_WORDS, lineWords } from './line-words.ts';
import { attackedEndOf, lineAtOtherEnd, weAttack } from './playing-end.ts';

const player = (side: Side, attacks?: End, kind: 'skater' | 'goalie' | 'coach' = 'skater') =>
  attacks === undefined ? { side, kind } : { side, kind, attacks };
const turned = (one: ReturnType<typeof player>) => player(one.side, otherEnd(attackedEndOf(one)), one.kind);

describe('the end that is played towards', () => {
  it('is plusX for us and minusX for them, unless a spot says another', () => {
    expect(attackedEndOf(player('us'))).toBe('plusX');
    expect(attackedEndOf(player('them'))).toBe('minusX');
    expect(attackedEndOf(player('us', 'minusX'))).toBe('minusX');
  });

  it('of a whole drill is minusX only where all skaters play the other way; mixed, empty, and goalies alone are as ever', () => {
    expect(weAttack([])).toBe('plusX');
    expect(weAttack([player('us'), player('them')])).toBe('plusX');
    expect(
      weAttack([player('us', 'minusX'), player('them', 'plusX'), player('them', undefined, 'goalie')]),
    ).toBe('minusX');
    expect(weAttack([player('us', 'minusX'), player('us')])).toBe('plusX');
    expect(weAttack([player('us', 'minusX', 'goalie')])).toBe('plusX');
  });

  it('gives the lines their names: ours is before the net that we defend', () => {
    const usual = { spots: { a: player('us') } } as never;
    const other = { spots: { a: turned(player('us')) } } as never;
    for (const line of LINE_IDS) {
      expect(lineWords(line, usual)).toBe(LINE_WORDS[line]);
      expect(lineWords(lineAtOtherEnd(line), other)).toBe(LINE_WORDS[line]);
    }
    expect([isOurEnd('minusX', usual), isOurEnd('minusX', other)]).toEqual([true, false]);
  });
});
