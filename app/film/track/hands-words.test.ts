import type { Game, Placed, Track } from '@icewright/book';
import { describe, expect, it } from 'vitest';
import { handsWords } from './hands-words.ts';

const FEET = { xPx: 400, yPx: 300 };
const trackWith = (...hands: { frameIndex: number; feet: typeof FEET }[]): Track =>
  ({
    film: 'film-a',
    hands: Object.fromEntries(hands.map((one, i) => [`hand-${i}`, one])),
  }) as unknown as Track;
const freezesWith = (placed: Partial<Placed>): Game['freezes'] =>
  ({
    one: { film: 'film-a', frameIndex: 8, skaters: { placed: { feet: FEET, ...placed } } },
  }) as unknown as Game['freezes'];

describe('where the feet of a followed skater came from', () => {
  it('says that a place was taken from an offer', () => {
    const freezes = freezesWith({ feetSdPx: 2 });
    expect(handsWords(trackWith({ frameIndex: 8, feet: FEET }), freezes)).toBe('1 taken from an offer');
    const corrected = trackWith({ frameIndex: 8, feet: FEET }, { frameIndex: 40, feet: FEET });
    expect(handsWords(corrected, freezes)).toBe('1 taken from an offer, 1 set by hand');
  });

  it('says that a hand set them where nobody was offered, or where he was moved since', () => {
    const track = trackWith({ frameIndex: 8, feet: FEET });
    expect(handsWords(track, freezesWith({}))).toBe('1 set by hand');
    expect(handsWords(track, freezesWith({ feetSdPx: 2, feet: { xPx: 401, yPx: 300 } }))).toBe(
      '1 set by hand',
    );
    expect(handsWords(trackWith(), freezesWith({}))).toBe('0 set by hand');
  });
});
