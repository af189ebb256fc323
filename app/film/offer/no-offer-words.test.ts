import { NO_OFFER_REASONS } from '@icewright/engine';
import { expect, it } from 'vitest';
import { noOfferWords } from './no-offer-words.ts';

it.each(NO_OFFER_REASONS)('says one thing to do when none are offered: %s', reason => {
  const said = noOfferWords(reason, { spots: 1, circles: 0, lines: 2 }, { preset: '200x85ft' });
  expect(
    said.match(/Try a frame|Name the marks by hand|Name one or two marks by hand|sheet of this game\?/g)
      ?.length,
  ).toBe(1);
});

it('does not ask for what was found', () => {
  const saidWith = (spots: number, circles: number) =>
    noOfferWords('tooLoose', { spots, circles, lines: 8 }, { preset: '200x85ft' });
  expect(saidWith(5, 2)).toContain('half a second earlier or later');
  expect(saidWith(5, 2)).not.toContain('circle or more spots');
  expect(saidWith(2, 0)).toContain('circle or more spots');
});
