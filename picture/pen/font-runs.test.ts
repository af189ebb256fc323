import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canSet, fontRunsOf } from './font-runs.ts';

describe('font runs', () => {
  it('lose no letter and change no order, whatever the words', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), words => {
        expect(
          fontRunsOf(words)
            .map(run => run.words)
            .join(''),
        ).toBe(words.normalize('NFC'));
      }),
    );
  });

  it('says when no font has the letters', () => {
    expect(canSet('Иванова')).toBe(false);
    expect(canSet('Žižková ± 0.3 m')).toBe(true);
  });
});
