import { expect, it } from 'vitest';
import { watchStillness } from './when-still.ts';

it.each(['keydown', 'pointerdown', 'pointermove', 'wheel'])('%s on the page ends being still', kind => {
  let nowMs = 1000;
  const page = new EventTarget();
  const still = watchStillness(page, () => nowMs);
  nowMs = 4000;
  expect(still.forMs()).toBe(3000);
  page.dispatchEvent(new Event(kind));
  expect(still.forMs()).toBe(0);
  nowMs = 4500;
  expect(still.forMs()).toBe(500);
  still.stop();
  page.dispatchEvent(new Event(kind));
  expect(still.forMs()).toBe(500);
});

it('what is done with the film ends it too, and what only happens does not', () => {
  let nowMs = 0;
  const page = new EventTarget();
  const still = watchStillness(page, () => nowMs);
  nowMs = 700;
  page.dispatchEvent(new Event('scroll'));
  expect(still.forMs()).toBe(700);
  still.acted();
  expect(still.forMs()).toBe(0);
});
