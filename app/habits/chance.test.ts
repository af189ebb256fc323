import { readFileSync } from 'node:fs';
import { emptyGame, type Freeze, type Game } from '@icewright/book';
import { rinkOf, type Standard } from '@icewright/engine';
import { describe, expect, it } from 'vitest';
import { chancesOf, differCountOf } from './chance.ts';
import { measuredCountOf, tallyOf } from './tally-of.ts';
import { twoAnswersSaid } from './two-answers.ts';

// A drawn play on a 200 × 85 ft sheet, every place known: fixtures/film-truth/README.md.
const truth = (
  JSON.parse(readFileSync(new URL('../../fixtures/film-truth/A.json', import.meta.url), 'utf8')) as {
    frames: {
      landmarks: Record<string, [number, number]>;
      skaters: { id: string; ice: [number, number]; foot: [number, number]; see: string }[];
    }[];
  }
).frames[6]!;
const seen = truth.skaters.filter(one => one.see === 'clear');
const px = ([xPx, yPx]: readonly [number, number]) => ({ xPx, yPx });

const freeze = {
  film: 'film',
  frameIndex: 0,
  filmTimeS: 0,
  picture: { widthPx: 1280, heightPx: 720 },
  title: '',
  attacks: 'plusX',
  clickSdPx: 1,
  madeAt: '2026-11-07T20:00:00Z',
  pins: Object.fromEntries(
    Object.entries(truth.landmarks)
      .filter(([id]) => /^(neutralSpot|endSpot|blueLine|centreLine\.)/.test(id))
      .map(([id, at]) => [id, { landmark: id, at: px(at), leftOut: false }]),
  ),
  skaters: Object.fromEntries(
    seen.map(one => [one.id, { side: 'us', kind: 'skater', role: one.id, feet: px(one.foot) }]),
  ),
} as unknown as Freeze;

const gameOn = (sheet: Game['rink']): Game =>
  ({
    ...emptyGame({ opponent: 'Upper Sedge', day: '2026-11-07', place: 'away' }),
    ...(sheet ? { rink: sheet } : {}),
    freezes: { f: freeze },
    moments: { m: { habit: 'h', verdict: 'done', film: 'film', freeze: 'f', filmTimeS: 0 } },
  }) as unknown as Game;
const standard: Standard = {
  kind: 'numbers',
  zone: 'picture',
  atLeastCount: 1,
  when: { at: 'weLoseThePuck' },
};

const farthestOffM = (game: Game): number => {
  const [chance] = chancesOf('h', { standard }, [['g', game]], rinkOf({ preset: '60x30m' }));
  const skaters = chance?.measured?.scene.skaters ?? [];
  expect(skaters.length).toBe(seen.length);
  return Math.max(
    ...skaters.map(({ id, atM }) => {
      const [xM, yM] = seen.find(one => one.id === id)!.ice;
      return Math.hypot(atM.xM - xM, atM.yM - yM);
    }),
  );
};

describe('a chance is measured on the sheet of its game', () => {
  it('on 200 × 85 ft where the game says so, though the team skates on 60 × 30 m', () => {
    expect(farthestOffM(gameOn({ preset: '200x85ft' }))).toBeLessThan(0.1);
  });

  it('on the team’s where it says nothing: then the same picture is metres off', () => {
    expect(farthestOffM(gameOn(undefined))).toBeGreaterThan(0.5);
  });
});

describe('what the others did', () => {
  const chancesWith = (moment: object) => {
    const game = gameOn({ preset: '200x85ft' });
    const one = { ...game, moments: { m: { ...game.moments['m' as never], ...moment } } } as unknown as Game;
    return chancesOf('h', { standard }, [['g', one]], rinkOf({ preset: '200x85ft' }));
  };

  it('is no chance of ours, and not one that could not be seen, until somebody judges it', () => {
    expect(chancesWith({ ofOthers: true, verdict: 'cannotSee' })).toEqual([]);
    expect(chancesWith({ ofOthers: true, verdict: 'missed' })).toHaveLength(1);
    // One of ours that could not be seen is one.
    expect(chancesWith({ verdict: 'cannotSee' }).map(({ verdict }) => verdict)).toEqual(['cannotSee']);
  });
});

describe('who speaks of a chance', () => {
  const few = Object.fromEntries(Object.entries(freeze.skaters).slice(0, 3));
  const chanceOf = (
    skaters: Freeze['skaters'],
    verdict: string,
    allPlaced?: NonNullable<Freeze['allPlaced']>,
  ) => {
    const game = gameOn({ preset: '200x85ft' });
    const one = {
      ...game,
      freezes: { f: { ...freeze, skaters, ...(allPlaced ? { allPlaced } : {}) } },
      moments: { m: { ...game.moments['m' as never], verdict } },
    } as unknown as Game;
    const five = { ...standard, atLeastCount: 5 } as Standard;
    return chancesOf('h', { standard: five }, [['g', one]], rinkOf({ preset: '200x85ft' }));
  };

  it('the person where only some are placed, and it is not counted as measured', () => {
    for (const verdict of ['done', 'missed', 'cannotSee']) {
      const chances = chanceOf(few as Freeze['skaters'], verdict);
      expect(chances.map(one => [one.verdict, one.measured?.judgement.answer])).toEqual([
        [verdict, 'cannotTell'],
      ]);
      expect(measuredCountOf(chances)).toBe(0);
    }
  });

  it('the freeze where it was said that nobody else of us is there', () => {
    for (const allPlaced of ['inPicture', 'onIce'] as const) {
      const chances = chanceOf(few as Freeze['skaters'], 'done', allPlaced);
      expect(chances[0]!.verdict).toBe('missed');
      expect(measuredCountOf(chances)).toBe(1);
    }
  });

  it('the freeze where enough are placed, whatever the person saw', () => {
    expect(seen.length).toBeGreaterThanOrEqual(5);
    const chances = chanceOf(freeze.skaters, 'missed');
    expect(chances[0]!.verdict).toBe('done');
    expect(measuredCountOf(chances)).toBe(1);
  });

  const chancesBy = (moment: object, of: { standard: Standard; byEye?: boolean } = { standard }) => {
    const game = gameOn({ preset: '200x85ft' });
    const one = {
      ...game,
      moments: { m: { ...game.moments['m' as never], by: '', ...moment } },
    } as unknown as Game;
    return chancesOf('h', of, [['g', one]], rinkOf({ preset: '200x85ft' }));
  };

  it('the person where the freeze lacks what it would be measured by', () => {
    const toPuck: Standard = {
      kind: 'within',
      who: 'anyOfUs',
      whom: 'puck',
      withinM: 3,
      when: standard.when,
    };
    const chances = chancesBy({ verdict: 'missed' }, { standard: toPuck });
    expect(chances[0]).toMatchObject({ verdict: 'missed', isByMeasure: false });
    expect(chances[0]!.measured?.judgement.why).toBe('noPuck');
    expect(tallyOf(chances).chanceCount).toBe(1);
    expect(differCountOf(chances)).toBe(0);
  });

  it('the measure where both do and differ, and it is said', () => {
    const chances = chancesBy({ verdict: 'missed', by: 'AB' });
    expect(chances[0]!.verdict).toBe('done');
    expect(differCountOf(chances)).toBe(1);
    expect(twoAnswersSaid(chances[0]!.two!)).toBe('AB said missed; measured: done, and that counts.');
  });

  it('the person again where somebody settled it so', () => {
    const settled = { counts: 'word', by: 'CD', settledAt: '2026-11-08T09:00:00Z' };
    const chances = chancesBy({ verdict: 'missed', settled });
    expect(chances[0]!.verdict).toBe('missed');
    expect([differCountOf(chances), measuredCountOf(chances)]).toEqual([0, 0]);
    expect(twoAnswersSaid(chances[0]!.two!)).toBe(
      'Marked missed, and that counts (settled by CD); measured: done.',
    );
    const forMeasure = chancesBy({ verdict: 'missed', settled: { ...settled, counts: 'measure' } });
    expect([forMeasure[0]!.verdict, differCountOf(forMeasure)]).toEqual(['done', 0]);
  });

  it('the person while nobody has written a standard', () => {
    const chances = chancesBy({ verdict: 'missed' }, { standard, byEye: true });
    expect(chances[0]).toMatchObject({ verdict: 'missed', isByMeasure: false });
    expect(chances[0]!.measured).toBeUndefined();
  });
});
