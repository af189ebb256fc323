import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Follow, Game, Moment } from '../documents/game.ts';
import type { Team } from '../documents/team.ts';
import { sampleGame, sampleTeam } from '../ydoc/sample-documents.ts';
import { eventTableOf } from './event-table.ts';
import { isMomentsTable, readMomentsTable } from './moments-csv-in.ts';
import { momentsCsv } from './moments-out.ts';
import type { FilmFrames, MomentsTaken } from './moments-taken.ts';
import { momentsVtt, readMomentsVtt } from './moments-vtt.ts';
import { cuesOfVtt } from './web-vtt.ts';

// 29.97 pictures a second: no time of a frame is a round number of milliseconds.
const timeOf = (frameIndex: number): number => (frameIndex * 1001) / 30_000;
const frames: FilmFrames = {
  frameCount: 200_000,
  endS: timeOf(200_000),
  timeOf,
  frameAt: timeS => Math.floor(((timeS + 0.000_6) * 30_000) / 1001),
};
const taggedAt = '2026-11-02T10:00:00Z';
const part = { rank: 0, hash: 'a', byteCount: 1, durationS: 60, frameCount: 1800, label: '' };
const films = {
  f1: { ...part, fileName: 'Game, first half.mp4' },
  f2: { ...part, rank: 1, fileName: '' },
} as unknown as Game['films'];
const skater = { position: 'F', noContact: false, group: '' };
const habit = { says: '', reason: '', wantedRatio: 0.7, costGoals: 0.05, kept: true };
const team = {
  ...sampleTeam(),
  habits: {
    h1: { ...habit, rank: 0, title: 'The nearest hunts: done' },
    h2: { ...habit, rank: 1, title: '=Sticks, "down"' },
  },
  skaters: {
    s1: { ...skater, rank: 0, number: 17, name: 'Thornquist' },
    s2: { ...skater, rank: 1, number: 4, name: "-'Oku, Ansa" },
  },
  units: { u1: { rank: 0, title: 'Blue', skaters: {} }, u2: { rank: 1, title: '5v4', skaters: {} } },
} as unknown as Team;

const noteOf = fc.oneof(
  fc.string({ unit: 'grapheme', maxLength: 30 }),
  fc.constantFrom(
    '=1+1',
    "'-x",
    'said "wide",\nthen back',
    '5v4',
    'with Blue',
    'Then: lost 1 s',
    'a: missed. b',
    '-->',
  ),
);
const aMoment = fc.record(
  {
    habit: fc.constantFrom('h1', 'h2'),
    verdict: fc.constantFrom('done', 'missed', 'cannotSee'),
    film: fc.constantFrom('f1', 'f2'),
    frameIndex: fc.integer({ min: 0, max: 190_000 }),
    costGoals: fc.integer({ min: 0, max: 500 }).map(one => one / 100),
    note: noteOf,
    by: fc.constantFrom('', 'Ansa', '+x'),
    taggedAt: fc.constant(taggedAt),
    stretchMs: fc.tuple(fc.integer({ min: 0, max: 9000 }), fc.integer({ min: 1, max: 9000 })),
    atCm: fc.tuple(fc.integer({ min: -3000, max: 3000 }), fc.integer({ min: -1500, max: 1500 })),
    strength: fc.constantFrom('5v5', '4v5'),
    score: fc.record({ us: fc.nat(9), them: fc.nat(9) }),
    period: fc.integer({ min: 1, max: 4 }),
    unit: fc.constantFrom('u1', 'u2'),
    skater: fc.constantFrom('s1', 's2'),
    ofOthers: fc.constant(true),
  },
  { requiredKeys: ['habit', 'verdict', 'film', 'frameIndex', 'costGoals', 'note', 'by', 'taggedAt'] },
);
const someCame = fc.array(
  fc.tuple(
    fc.constantFrom<Follow['step']>('lost', 'regained', 'chanceForThem', 'whistle'),
    fc.integer({ min: -60, max: 400 }),
  ),
  { maxLength: 3 },
);

/** A game of such moments. */
const aGame = fc.array(fc.tuple(aMoment, someCame), { minLength: 1, maxLength: 5 }).map(made => {
  const game: Game = {
    ...sampleGame(),
    films,
    moments: {} as Game['moments'],
    follows: {} as Game['follows'],
  };
  for (const [i, [{ stretchMs, atCm, ...one }, came]] of made.entries()) {
    const filmTimeS = timeOf(one.frameIndex);
    (game.moments as Record<string, unknown>)[`m ${i}`] = {
      ...one,
      filmTimeS,
      ...(stretchMs
        ? { fromS: Math.max(0, filmTimeS - stretchMs[0] / 1000), toS: filmTimeS + stretchMs[1] / 1000 }
        : {}),
      ...(atCm ? { atM: { xM: atCm[0] / 100, yM: atCm[1] / 100 } } : {}),
    };
    for (const [j, [step, later]] of came.entries()) {
      const frameIndex = Math.max(0, one.frameIndex + later);
      (game.follows as Record<string, unknown>)[`w ${i} ${j}`] = {
        moment: `m ${i}`,
        step,
        frameIndex,
        filmTimeS: timeOf(frameIndex),
      };
    }
  }
  return game;
});

const bare = (game: Game): Game => ({
  ...game,
  moments: {} as Game['moments'],
  follows: {} as Game['follows'],
});
const withTaken = (game: Game, { moments, follows }: MomentsTaken): Game =>
  ({ ...game, moments: { ...game.moments, ...moments }, follows: { ...game.follows, ...follows } }) as Game;
const idsOf = (game: Game) => Object.keys(game.moments);
/** Said again without ids of what came, which a file does not hold, in order. */
const cameOf = (follows: Readonly<Record<string, Follow>>) =>
  Object.values(follows)
    .map(one => `${one.moment} ${one.step} ${one.frameIndex} ${one.filmTimeS}`)
    .sort()
    .filter((one, i, all) => one !== all[i - 1]);

const readTable = (
  text: string,
  game: Game,
  framesOf = (): FilmFrames | undefined => frames,
): MomentsTaken => {
  const table = eventTableOf(text);
  if ('sentence' in table) throw new Error(table.sentence);
  expect(isMomentsTable(table)).toBe(true);
  const taken = readMomentsTable(table, { game, team, film: 'f1' as Moment['film'], framesOf, taggedAt });
  if ('sentence' in taken) throw new Error(taken.sentence);
  return taken;
};
const readCues = (text: string, game: Game): MomentsTaken | undefined => {
  const cues = cuesOfVtt(text);
  if ('sentence' in cues) throw new Error(cues.sentence);
  return readMomentsVtt(cues, {
    game,
    team,
    film: 'f1' as Moment['film'],
    frames,
    by: 'words.vtt',
    taggedAt,
  });
};
/** To half a millisecond, and what binary figures add to it. */
const near = (one: number | undefined) => (one === undefined ? undefined : expect.closeTo(one, 2.9));

describe('moments out and in again', () => {
  it('the table gives the same moments and what came of them, and nothing a second time', () => {
    fc.assert(
      fc.property(aGame, game => {
        const text = momentsCsv({ game, team, ids: idsOf(game) });
        expect(text).not.toMatch(/\d\.\d{4}/);
        const taken = readTable(text, bare(game));
        for (const [id, one] of Object.entries(game.moments)) {
          const { fromS, toS, ...exact } = one;
          expect(taken.moments[id]).toEqual({ ...exact, fromS: near(fromS), toS: near(toS) });
        }
        expect(cameOf(taken.follows)).toEqual(cameOf(game.follows));
        expect(taken).toMatchObject({ alreadyCount: 0, outsideCount: 0, unknown: [] });
        const again = readTable(text, withTaken(bare(game), taken));
        expect(again).toMatchObject({ moments: {}, follows: {}, alreadyCount: idsOf(game).length });
        // What has been rounded once stays as it is.
        const second = withTaken(bare(game), taken);
        expect(momentsCsv({ game: second, team, ids: idsOf(game) })).toBe(
          momentsCsv({
            game: withTaken(
              bare(game),
              readTable(momentsCsv({ game: second, team, ids: idsOf(game) }), bare(game)),
            ),
            team,
            ids: idsOf(game),
          }),
        );
      }),
    );
  });

  it('a table whose film is not open keeps its frames, and its times to the millisecond', () => {
    fc.assert(
      fc.property(aGame, game => {
        const taken = readTable(momentsCsv({ game, team, ids: idsOf(game) }), bare(game), () => undefined);
        for (const [id, one] of Object.entries(game.moments)) {
          expect(taken.moments[id]!.frameIndex).toBe(one.frameIndex);
          expect(Math.abs(taken.moments[id]!.filmTimeS - one.filmTimeS)).toBeLessThanOrEqual(0.000_501);
        }
        expect(
          Object.values(taken.follows)
            .map(one => one.frameIndex)
            .sort(),
        ).toEqual(
          cameOf(game.follows)
            .map(one => Number(one.split(' ').at(-2)))
            .sort(),
        );
      }),
    );
  });

  it('the cues give the same moments, whatever their words, and nothing a second time', () => {
    fc.assert(
      fc.property(aGame, game => {
        const text = momentsVtt({ game, team, ids: idsOf(game) });
        const taken = readCues(text, bare(game))!;
        for (const [id, one] of Object.entries(game.moments)) {
          const { fromS, toS, atM: _, film: __, costGoals: ___, ...said } = one;
          expect(taken.moments[id]).toMatchObject({
            ...said,
            by: 'words.vtt',
            note: one.note.replace(/\s+/g, ' ').trim(),
            ...(fromS === undefined ? {} : { fromS: near(fromS), toS: near(toS) }),
          });
          expect('fromS' in taken.moments[id]!).toBe(fromS !== undefined);
        }
        expect(cameOf(taken.follows)).toEqual(cameOf(game.follows));
        expect(readCues(text, game)).toMatchObject({ moments: {}, alreadyCount: idsOf(game).length });
      }),
    );
  });
});

describe('a table or cues that somebody else has touched', () => {
  const line = (cells: string) =>
    readTable(`time_s;frame;habit;seen;film;skater\n${cells}\n`, bare({ ...sampleGame(), films }));

  it('a line that was written in by hand comes in once, with its frame found', () => {
    const taken = line('12,5;;The nearest hunts: done;missed;Game, first half.mp4;17');
    const [[id, one] = ['', undefined]] = Object.entries(taken.moments);
    expect(one).toMatchObject({ frameIndex: 374, filmTimeS: 12.5, skater: 's1', taggedAt });
    const again = readTable(
      'time_s;frame;habit;seen;film;skater\n12,5;;The nearest hunts: done;missed;Game, first half.mp4;17\n',
      withTaken(bare({ ...sampleGame(), films }), taken),
    );
    expect([id, again.alreadyCount]).toEqual([id, 1]);
  });

  it('somebody who is not on the team is said, and another’s number is not taken for ours', () =>
    expect(line('12.5;375;The nearest hunts: done;done;Game, first half.mp4;17 Nobody')).toMatchObject({
      unknown: ['17 Nobody'],
      moments: {
        [Object.keys(
          line('12.5;375;The nearest hunts: done;done;Game, first half.mp4;17 Nobody').moments,
        )[0]!]: expect.not.objectContaining({ skater: 's1' }),
      },
    }));

  it.each([
    ['12.5;375;A strange habit;done;Game, first half.mp4;', /^Line 2, habit: .*“A strange habit”/],
    ['12.5;375;The nearest hunts: done;nearly;Game, first half.mp4;', /^Line 2, seen: /],
    [
      '12.5;375;The nearest hunts: done;done;other.mp4;',
      /^Line 2, film: this game has no film called “other.mp4”/,
    ],
    [
      'soon;375;The nearest hunts: done;done;Game, first half.mp4;',
      /^Line 2, time_s: a number is wanted, not “soon”/,
    ],
    ['12.5;37.5;The nearest hunts: done;done;Game, first half.mp4;', /^Line 2, frame: a whole number/],
  ])('%s is refused', (cells, sentence) => expect(() => line(cells)).toThrow(sentence));

  it('cues that say habit and verdict in one line are taken; one that does not leaves all to be asked', () => {
    const vtt = (words: string) => `WEBVTT\n\n00:10.000 --> 00:12.000\n${words}\n`;
    const taken = readCues(
      vtt('The nearest hunts: done: missed. 17 Thornquist. wide'),
      bare({ ...sampleGame(), films }),
    );
    expect(Object.values(taken!.moments)).toEqual([
      expect.objectContaining({
        habit: 'h1',
        verdict: 'missed',
        note: '17 Thornquist. wide',
        costGoals: 0.05,
        fromS: 10,
        toS: 12,
      }),
    ]);
    expect(readCues(vtt('wide of the net'), bare({ ...sampleGame(), films }))).toBeUndefined();
  });
});
