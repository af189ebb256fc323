import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { CanDecode } from './decodable.ts';
import { openFilm } from './open-film.ts';

const broken = new URL('../../fixtures/broken/', import.meta.url);
const read = (name: string) => new Blob([readFileSync(new URL(name, broken))]);
const expected = JSON.parse(readFileSync(new URL('expected.json', broken), 'utf8')) as Record<
  string,
  { bytes: number; expect: string; why: string }
>;

/** What Chromium decodes, so that the doors can be tried without a browser. */
const likeChromium: CanDecode = async config => /^(avc|vp0?[89]|av01)/.test(config.codec);

const SAYS: Record<string, RegExp> = {
  'empty.mp4': /empty/,
  'text.mp4': /text, not a film/,
  'photo.mp4': /photo, not a film/,
  'truncated.mp4': /cut off: the index/,
  'audio_only.mp4': /only sound/,
  'mpeg4_part2.mp4': /MPEG-4 part 2/,
  'ffv1.mkv': /FFV1/,
};

describe('the door for film files', () => {
  it('has an expectation for every broken file there is', () => {
    const films = readdirSync(broken).filter(name => name !== 'expected.json');
    expect(films.sort()).toEqual(Object.keys(expected).sort());
  });

  it.each(Object.entries(expected))('%s', async (name, { bytes, expect: wanted }) => {
    const file = read(name);
    expect(file.size).toBe(bytes);
    const answer = await openFilm({ file }, likeChromium);
    if (wanted.startsWith('refuse')) {
      expect(answer.kind).toBe('refused');
      if (answer.kind !== 'refused') return;
      expect(answer.says).toMatch(SAYS[name]!);
      expect(answer.says.split(/[.!?] /)).toHaveLength(1);
      expect(answer.todo.length).toBeGreaterThan(10);
    } else {
      expect(answer.kind).toBe('film');
      if (answer.kind !== 'film') return;
      expect(answer.index.frameCount).toBe(name === 'damaged_middle.mp4' ? 120 : 600);
      answer.close();
    }
  });

  it('says so when the browser decodes nothing', async () => {
    const answer = await openFilm({ file: read('damaged_middle.mp4') }, async () => false);
    expect(answer).toMatchObject({ kind: 'refused', reason: 'unknownCodec' });
  });
});
