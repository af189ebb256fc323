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
