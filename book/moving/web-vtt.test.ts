import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cuesOfVtt, vttOf } from './web-vtt.ts';

describe('WebVTT', () => {
  // W3C, WebVTT, section 1.1: the shape of a simple file, with an identifier, a setting and a comment as in 1.3 and 1.8.
  it('reads what the standard shows', () => {
    const text = `WEBVTT - some words

NOTE a comment
over two lines

1
00:11.000 --> 00:13.000 align:start
<v Roger>We are in <i>New</i> ice &amp; here

01:00:13.500 --> 01:00:16.250
one line
and another
`;
    expect(cuesOfVtt(text)).toEqual([
      { name: '1', fromS: 11, toS: 13, words: 'We are in New ice & here' },
      { fromS: 3613.5, toS: 3616.25, words: 'one line\nand another' },
    ]);
  });

  it('gives back what it wrote, to the thousandth', () => {
    const cue = fc
      .record({
        fromMs: fc.integer({ min: 0, max: 20_000_000 }),
        longMs: fc.integer({ min: 1, max: 60_000 }),
        words: fc.string({ unit: 'grapheme', maxLength: 40 }).map(words => words.replace(/\s+/g, ' ').trim()),
      })
      .filter(({ words }) => !words.includes('-->') && !/&(lt|gt|amp|nbsp);/.test(words));
    fc.assert(
      fc.property(fc.array(cue, { maxLength: 8 }), made => {
        const cues = made.map(({ fromMs, longMs, words }) => ({
          fromS: fromMs / 1000,
          toS: (fromMs + longMs) / 1000,
          words,
        }));
        const read = cuesOfVtt(vttOf(cues));
        if ('sentence' in read) throw new Error(read.sentence);
        expect(read.map(one => one.words)).toEqual(cues.map(one => one.words));
        for (const [i, one] of read.entries()) {
          expect(one.fromS).toBeCloseTo(cues[i]!.fromS, 6);
          expect(one.toS).toBeCloseTo(cues[i]!.toS, 6);
        }
      }),
    );
  });

  it('refuses what is none, and says the line', () => {
    expect(cuesOfVtt('1\n00:01.000 --> 00:02.000\nwords')).toEqual({
      sentence: 'This is not a WebVTT file: its first line is not WEBVTT.',
    });
    expect(cuesOfVtt('WEBVTT\n\n00:02.000 --> 00:01.000\nwords')).toMatchObject({
      sentence: expect.stringContaining('Line 3'),
    });
  });
});
