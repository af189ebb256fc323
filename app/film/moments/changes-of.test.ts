import { describe, expect, it } from 'vitest';
import { sampleTeam } from '../../../book/ydoc/sample-documents.ts';
import { CHANGES, type ChangeField, changesOf, choicesOf, NOT_SAID } from './changes-of.ts';

describe('one change to many moments', () => {
  it('nothing is written until something is said, whatever is changed', () => {
    for (const field of Object.keys(CHANGES) as ChangeField[]) {
      expect(changesOf(field, [])).toBeUndefined();
      expect(changesOf(field, [''])).toBeUndefined();
    }
    expect(changesOf('score', ['2'])).toBeUndefined();
  });

  it.each([
    ['unit', ['u1'], 'u1'],
    ['unit', [NOT_SAID], undefined],
    ['period', ['4'], 4],
    ['costGoals', ['0.25'], 0.25],
    ['costGoals', ['0'], 0],
    ['score', ['0', '3'], { us: 0, them: 3 }],
    ['by', ['-'], '-'],
  ] as const)('%s %j is written as %j', (field, typed, value) =>
    expect(changesOf(field, typed)).toEqual({ value }),
  );

  it('what every moment must have cannot be taken back', () => {
    const keys = (field: ChangeField) => choicesOf(field, sampleTeam())?.map(([key]) => key) ?? [];
    expect([...keys('habit'), ...keys('verdict')]).not.toContain(NOT_SAID);
    expect(keys('unit')).toContain(NOT_SAID);
  });
});
