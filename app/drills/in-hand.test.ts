import { describe, expect, it } from 'vitest';
import { EMPTY, heldAfter, type InHand } from './in-hand.ts';

const held = (xM: number, words = ''): InHand => ({
  writes: [{ path: ['spots', 's1', 'atM'], value: { xM, yM: 2 } }],
  shown: { atM: { xM, yM: 2 }, ghostsM: [], snap: null, refusal: null, words },
});

describe('what a hand holds next', () => {
  it('is what was held before, the very same value, while the hand moves on and everything stays', () => {
    const before = held(1);
    expect(heldAfter(before, held(1))).toBe(before);
  });

  it('keeps the writes, so that nothing is run again, where only what is drawn beside the hand differs', () => {
    const before = held(1);
    const next = heldAfter(before, held(1, 'on the dot line'));
    expect(next.writes).toBe(before.writes);
    expect(next.shown?.words).toBe('on the dot line');
  });

  it('is the next one where a place differs, and where nothing was held', () => {
    const next = held(1.01);
    expect(heldAfter(held(1), next)).toBe(next);
    expect(heldAfter(EMPTY, next)).toBe(next);
    // Held without a change yet: the hand has taken hold.
    const still: InHand = { writes: [], shown: null };
    expect(heldAfter(EMPTY, still)).toBe(still);
  });

  it('tells a thing that goes from one that is written', () => {
    const goes: InHand = { writes: [{ path: ['pucks', 'p1'], value: undefined }], shown: null };
    const stays: InHand = { writes: [{ path: ['pucks', 'p1'], value: null }], shown: null };
    expect(heldAfter(goes, stays)).toBe(stays);
  });
});
