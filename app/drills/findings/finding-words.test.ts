import type { Drill } from '@icewright/book';
import type { Finding, SpotId } from '@icewright/engine';
import { describe, expect, it } from 'vitest';
import { againstSaid, findingWords, placeSaid } from './finding-words.ts';

const drill = { spots: { a: { role: 'X2' }, b: { role: 'F1' } } } as unknown as Drill;
const finding = (more: Partial<Finding>): Finding => ({
  kind: 'tooFastIntoBoards',
  weight: 'look',
  timeS: 4.1,
  atM: { xM: -12.3, yM: 4 },
  spots: ['a', 'b'] as unknown as SpotId[],
  value: 5.1,
  threshold: 6.2,
  speedMps: 7.9,
  unit: 'm',
  status: 'estimate',
  source: 'our estimate',
  ...more,
});

describe('the words of a finding in the list', () => {
  it('part what is the matter from why, with the last figure to be asked', () => {
    expect(findingWords(finding({}), drill, 'metres')).toEqual({
      what: 'X2 comes too near the boards:',
      before: ' 5.1 m left at 7.9 m/s, ',
      figure: '6.2 m',
      after: ' needed to stop.',
    });
    expect(findingWords(finding({}), drill, 'feet').figure).toBe('20 ft');
  });

  it('never take a digit of a name for a figure', () => {
    const short = findingWords(finding({ kind: 'passDiesShort', value: 18 }), drill, 'metres');
    expect([short.figure, short.after]).toEqual(['18.0 m', ' short of X2.']);
  });

  it('say the same sentence, whatever its parts', () => {
    for (const kind of [
      'noPuckToPlay',
      'noBankPass',
      'lineStandsTooLong',
      'throughNet',
      'cueNeverFires',
    ] as const) {
      const { what, before, figure, after } = findingWords(
        finding({ kind, unit: 'skaters' }),
        drill,
        'metres',
      );
      expect(what).not.toBe('');
      expect(what + before + figure + after).toMatch(/^[A-Z].*\.$/);
    }
  });

  it('place it from the red line and the middle, in metres or feet', () => {
    expect(placeSaid({ xM: -12.3, yM: 4 }, 'metres', drill)).toBe(
      '12.3\u2009m from the red line towards our end, 4.0\u2009m from the middle',
    );
    const turned = { spots: { a: { side: 'us', kind: 'skater', attacks: 'minusX' } } } as unknown as Drill;
    expect(placeSaid({ xM: -12.3, yM: 4 }, 'metres', turned)).toMatch(/towards their end/);
    expect(againstSaid(finding({}), 'metres')).toBe('5.1 m against 6.2 m');
  });
});
