import type { Game } from '@icewright/book';
import { describe, expect, it } from 'vitest';
import { filmWords } from './film-words.ts';
import { isTaken, labelFor } from './part-label.ts';

const film = (durationS: number, label: string, more: object = {}) => ({
  rank: 0,
  hash: label,
  fileName: `${label}.mp4`,
  byteCount: 1,
  durationS,
  frameCount: durationS * 30,
  label,
  ...more,
});
const live = { ...film(0, 'marked live'), hash: 'live:2026-11-02T10:00:00Z', fileName: '' };
const games = (films: Record<string, object>) => films as unknown as Game['films'];
/** Its event at 11.9 s is the other's at 10.1 s. */
const tied = (to: string, oursS: number, theirsS: number) => ({
  tied: {
    to,
    ours: { frameIndex: 0, filmTimeS: oursS, halfFrameS: 0 },
    theirs: { frameIndex: 0, filmTimeS: theirsS, halfFrameS: 0 },
  },
});

describe('what there is of a game on film', () => {
  it.each([
    [{}, 'no film yet'],
    [{ l: live }, 'marked live, no film yet'],
    [{ a: film(20, 'whole game'), l: live }, '1 part, 20 s'],
    [{ a: film(1200, 'whole game'), b: film(1500, 'part 2') }, '2 parts, 45 min'],
    // C began 1.8 s later and ended before A did.
    [{ a: film(20, 'a'), c: film(15, 'c', tied('a', 10.1, 11.9)) }, '20 s, 2 cameras'],
    // The second began 10 s before the first.
    [{ a: film(20, 'a'), c: film(20, 'c', tied('a', 15, 5)) }, '30 s, 2 cameras'],
    [
      { a: film(1200, 'a'), b: film(1200, 'b', tied('a', 0, 0)), c: film(1500, 'c') },
      '2 parts, 45 min, 2 cameras',
    ],
  ])('%o', (films, words) => expect(filmWords({ films: games(films) })).toBe(words));

  it('no two films of a game get one name, and what was marked live is no film', () => {
    const first = { a: film(1, 'whole game') };
    expect(labelFor(games({ l: live }), 'part')).toBe('whole game');
    expect(labelFor(games(first), 'part')).toBe('part 2');
    expect(labelFor(games({ b: film(1, 'part 2') }), 'part')).toBe('part 3');
    expect(labelFor(games({ ...first, b: film(1, 'part 3') }), 'part')).toBe('part 2');
    expect(labelFor(games(first), 'camera')).toBe('camera 2');
    expect(isTaken(games({ ...first, b: film(1, 'part 2') }), 'a', ' Part 2')).toBe(true);
    expect(isTaken(games({ ...first, b: film(1, 'part 2') }), 'b', 'part 2')).toBe(false);
  });
});
