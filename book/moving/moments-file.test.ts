import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Game, Moment } from '../documents/game.ts';
import { sampleGame, sampleMoment, sampleTeam } from '../ydoc/sample-documents.ts';
import { csvRowsOf } from './csv-rows.ts';
import { readMomentsJson } from './moments-in.ts';
import { momentsCsv, momentsJson } from './moments-out.ts';
import { momentsVtt } from './moments-vtt.ts';
import { cuesOfVtt } from './web-vtt.ts';

const film = {
  rank: 0,
  hash: 'a',
  fileName: 'a.mp4',
  byteCount: 1,
  durationS: 60,
  frameCount: 1800,
  label: '',
};
const habits = { h1: {} };
const game = (moments: Record<string, Moment>, hash = 'a'): Game => ({
  ...sampleGame(),
  films: { f1: { ...film, hash } } as Game['films'],
  moments: moments as Game['moments'],
  follows: {
    w1: { moment: 'm1', step: 'regained', filmTimeS: 14, frameIndex: 420 },
  } as unknown as Game['follows'],
});
const team = sampleTeam();
const full = game({
  m1: sampleMoment('=1+1'),
  m2: { ...sampleMoment('said "wide", then\nback'), fromS: 10, toS: 14 },
});
const out = momentsJson({ game: full, team, ids: ['m1', 'm2'] });

describe('moments as files', () => {
  it('JSON comes in where the film is, under whatever name, and a second time adds nothing', () => {
    const other: Game = {
      ...game({}),
      films: { part: film } as unknown as Game['films'],
      follows: {} as Game['follows'],
    };
    const read = readMomentsJson(out, other, habits);
    expect(read).toMatchObject({ kind: 'ok', taken: { alreadyCount: 0 } });
    const taken = read.kind === 'ok' ? read.taken : undefined;
    expect(Object.values(taken!.moments).map(one => one.film)).toEqual(['part', 'part']);
    expect(Object.keys(taken!.follows)).toEqual(['w1']);
    const again = readMomentsJson(
      out,
      { ...other, moments: taken!.moments as Game['moments'], follows: taken!.follows as Game['follows'] },
      habits,
    );
    expect(again).toEqual({
      kind: 'ok',
      taken: { moments: {}, follows: {}, opinions: {}, alreadyCount: 2, outsideCount: 0, unknown: [] },
    });
  });

  it('JSON is refused with the place and the reason, and nothing comes in', () => {
    expect(readMomentsJson('{', full, habits)).toMatchObject({
      sentence: 'This file is not JSON, or it is cut off.',
    });
    expect(readMomentsJson(out.replace('"missed"', '"nearly"'), full, habits)).toMatchObject({
      sentence: expect.stringMatching(
        /^The moment at .* s of the film: verdict: .*“nearly” stands there \(moments\.m\d\.verdict\)\.$/,
      ),
    });
    expect(readMomentsJson(out, { ...game({}, 'other'), follows: {} }, habits)).toMatchObject({
      sentence:
        'These moments are of the film “a.mp4”, which this game does not have. Open that film in this game first, then take the moments.',
    });
    expect(readMomentsJson(out.replace('"version": 1', '"version": 2'), full, habits)).toMatchObject({
      sentence: expect.stringContaining('newer'),
    });
  });

  it('anything else is refused too, and never throws', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json()), text => {
        expect(readMomentsJson(text, full, habits).kind).toBe('refused');
      }),
    );
  });

  it('CSV holds a line a moment, keeps quotes and line ends, and starts no formula', () => {
    const rows = csvRowsOf(momentsCsv({ game: full, team, ids: ['m1', 'm2'] }));
    if (!Array.isArray(rows)) throw new Error(rows.sentence);
    const [heads, first, second] = rows;
    const cell = (row: readonly string[] | undefined, head: string) => row?.[heads!.indexOf(head)];
    expect(rows).toHaveLength(3);
    expect(cell(first, 'note')).toBe("'=1+1");
    expect(cell(first, 'what_came')).toBe('won back +1.5 s (frame 420)');
    expect(cell(second, 'note')).toBe('said "wide", then\nback');
    expect(cell(second, 'from_s')).toBe('10');
  });

  it('WebVTT shows each over its stretch', () => {
    const cues = cuesOfVtt(momentsVtt({ game: full, team, ids: ['m1', 'm2'] }));
    if ('sentence' in cues) throw new Error(cues.sentence);
    expect(cues.map(({ fromS, toS }) => [fromS, toS])).toEqual([
      [10, 14],
      [12.5, 13.5],
    ]);
  });
});
