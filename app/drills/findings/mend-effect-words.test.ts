import { type RateInterval, wilsonInterval } from '@icewright/engine';
import { expect, it } from 'vitest';
import { effectSaid } from './mend-effect-words.ts';

const share = (successCount: number, trialCount = 400): RateInterval =>
  wilsonInterval({ successCount, trialCount }) as RateInterval;
const plain = (words: string): string => words.replaceAll('\u2009', ' ');

it('says before and after it is done that a mend takes the problem out of the drill', () => {
  const effect = { before: share(600, 1000), after: share(400) };
  expect(plain(effectSaid(effect, 'Head up is held', false))).toBe(
    'It changes the drill: Head up is held in 100 % (95 % interval 99 to 100) of reps that come to it, now in 60 %.',
  );
  expect(plain(effectSaid(effect, 'Head up is held', true))).toMatch(
    /^That changed the drill: .*, was in 60 %\.$/,
  );
});

it('gives the share without a warning where it hardly moves', () => {
  const effect = { before: share(890, 1000), after: share(370) };
  expect(plain(effectSaid(effect, 'the pass arrives', false))).toBe(
    'The pass arrives in 93 % (95 % interval 89 to 95) of reps that come to it, now in 89 %.',
  );
});

it('says when no rep comes to it any more', () => {
  expect(plain(effectSaid({ before: share(600, 1000), after: null }, 'the pass arrives', false))).toBe(
    'It changes the drill: the pass arrives in no rep, now in 60 %.',
  );
});
