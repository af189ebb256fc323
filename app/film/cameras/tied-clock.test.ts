import { readFileSync } from 'node:fs';
import type { FilmPart, Game } from '@icewright/book';
import type { Id } from '@icewright/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { frameAtTime } from '../frame-index.ts';
import { openFilm } from '../open-film.ts';
import { clockBetween, type EventFrame, eventFrameOf } from './tied-clock.ts';

const id = (name: string) => name as Id<'film'>;
const part = (tied?: FilmPart['tied']): FilmPart => ({
  rank: 0,
  hash: '',
  fileName: '',
  byteCount: 0,
  durationS: 0,
  frameCount: 0,
  label: '',
  ...(tied ? { tied } : {}),
});
const at = (filmTimeS: number, halfFrameS: number): EventFrame => ({ frameIndex: 0, filmTimeS, halfFrameS });
const indexOf = async (name: string) => {
  const bytes = readFileSync(new URL(`../../../fixtures/film/${name}`, import.meta.url));
  const film = await openFilm({ file: new Blob([bytes]) }, async () => true);
  if (film.kind === 'refused') throw new Error(film.says);
  film.close();
  return film.index;
};

describe('two films tied by an event', () => {
  it('agree with the recorder’s own clock within what is said', async () => {
    // The recorder of A and C filmed one play; its whistle is at 11.904 s of A and 10.104 s of C.
    const [a, c] = [await indexOf('A.mp4'), await indexOf('C.mp4')];
    const ours = eventFrameOf(c, frameAtTime(c, 10.104));
    const theirs = eventFrameOf(a, frameAtTime(a, 11.904));
    const films = { a: part(), c: part({ to: id('a'), ours, theirs }) } as unknown as Game['films'];
    const clock = clockBetween(films, id('a'), id('c'));
    if (clock.kind !== 'tied') throw new Error('not tied');
    expect(Math.abs(clock.shiftS - (10.104 - 11.904))).toBeLessThanOrEqual(clock.plusMinusS);
    expect(clock.plusMinusS).toBeLessThan(0.05);
  });

  it('lead there and back to the same time, and over a third film by the sum', () => {
    const time = fc.double({ min: 0, max: 9000, noNaN: true });
    const half = fc.double({ min: 0.004, max: 0.05, noNaN: true });
    fc.assert(
      fc.property(time, time, time, time, half, half, (a, b1, b2, c, h1, h2) => {
        const films = {
          a: part(),
          b: part({ to: id('a'), ours: at(b1, h1), theirs: at(a, h2) }),
          c: part({ to: id('b'), ours: at(c, h2), theirs: at(b2, h1) }),
        } as unknown as Game['films'];
        const there = clockBetween(films, id('a'), id('c'));
        const back = clockBetween(films, id('c'), id('a'));
        if (there.kind !== 'tied' || back.kind !== 'tied') throw new Error('not tied');
        expect(there.shiftS + back.shiftS).toBeCloseTo(0, 9);
        expect(there.shiftS).toBeCloseTo(b1 - a + (c - b2), 6);
        expect(there.plusMinusS).toBeCloseTo(2 * (h1 + h2), 9);
      }),
    );
  });

  it('are none when nothing ties them, or the film they were tied to is gone', () => {
    const films = {
      a: part(),
      b: part({ to: id('gone'), ours: at(1, 0.02), theirs: at(2, 0.02) }),
    } as unknown as Game['films'];
    expect(clockBetween(films, id('a'), id('b'))).toEqual({ kind: 'none', reason: 'notTied' });
    expect(clockBetween(films, id('a'), id('a'))).toEqual({ kind: 'none', reason: 'notTied' });
  });
});
