import { describe, expect, it } from 'vitest';
import { changeOf } from './drawn-row.ts';
import type { LedgerLine } from './ledger-lines.ts';

describe('a change as it is drawn', () => {
  it('keeps its own figures, however far beyond the axis they lie: the drawing says that they do', () => {
    const line = {
      change: {
        change: { differenceRatio: -1, lowerRatio: -1, upperRatio: 0.13 },
        word: 'cannot tell',
      },
    } as unknown as LedgerLine;
    expect(changeOf(line)).toEqual({ points: -100, low: -100, high: 13, verdict: 'cannotTell' });
  });

  it('is none where one side has no chances', () => {
    expect(changeOf({ change: null } as LedgerLine)).toBeNull();
  });
});
