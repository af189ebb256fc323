import { type Drill, emptyDrill } from '@icewright/book';
import type { ActId, Id, SpotId } from '@icewright/engine';
import { describe, expect, it } from 'vitest';
import { ANY, answers, holdsWords, needsOfDrill, shelvesOf } from './library-query.ts';

const drillOf = (title: string, toXM: number, more: Partial<Drill> = {}): Drill => ({
  ...emptyDrill({
    title,
    level: 'collegeWomen',
    rink: { preset: '200x85ft' },
    madeAt: '2026-11-28T12:00:00Z',
  }),
  spots: {
    ['f1' as SpotId]: {
      rank: 0,
      side: 'us',
      kind: 'skater',
      role: 'F1',
      atM: { xM: 12, yM: 0 },
      facingRad: 0,
      waitingCount: 0,
      acts: {
        ['a' as ActId]: {
          rank: 0,
          kind: 'skate',
          throughM: [{ xM: toXM, yM: 3 }],
          facing: 'forward',
          effortRatio: 1,
          stops: true,
        },
      },
    },
  },
  ...more,
});

describe('looking for a drill', () => {
  it('takes what fits on the ice there is, with the skaters and minutes there are', () => {
    const inZone = drillOf('Close', 20);
    const whole = drillOf('Far', -20);
    expect([needsOfDrill(inZone).ice, needsOfDrill(whole).ice]).toEqual(['zone', 'whole']);
    expect(answers(inZone, { ...ANY, ice: 'half' }, [])).toBe(true);
    expect(answers(whole, { ...ANY, ice: 'half' }, [])).toBe(false);
    expect(answers(whole, { ...ANY, skaters: 1 }, [])).toBe(true);
    expect(answers(whole, { ...ANY, skaters: 0 }, [])).toBe(false);
    expect(answers(whole, { ...ANY, minutes: 7 }, [])).toBe(false);
    expect(answers(whole, { ...ANY, level: 'u10' }, [])).toBe(false);
  });

  it('finds by beginnings of words, in any order, without accents', () => {
    expect(holdsWords('Žižková: middle first', 'fir ziz')).toBe(true);
    expect(holdsWords('middle first', 'iddle')).toBe(false);
    expect(holdsWords('anything', '  ')).toBe(true);
  });

  it('finds numbers by sides however they are written, and no others', () => {
    for (const typed of ['3 on 2', '3v2', '3-on-2', 'three on two', '3 vs 2', 'late 3 on 2']) {
      expect(holdsWords('Three on two, late back-checker', typed)).toBe(true);
      expect(holdsWords('Two on three, late; 3 laps; 2 on 2', typed)).toBe(false);
    }
    expect(holdsWords('13 on 2', '3 on 2')).toBe(false);
  });

  it('knows what is drawn by the name the trade gives it', () => {
    const [spot] = Object.values(drillOf('Plain', 20).spots);
    const other = { ...spot!, rank: 1, side: 'them' as const, role: 'X1', acts: {} };
    const passes = (way: 'bank' | 'rim') =>
      ({
        ...drillOf('Plain', 20),
        spots: {
          f1: {
            ...spot!,
            acts: { a: { rank: 0, kind: 'pass', toSpot: 'f2', way, speedMps: 12 } },
          },
          f2: { ...spot!, rank: 2, role: 'F2', acts: {} },
          x1: other,
        },
      }) as unknown as Drill;
    const finds = (drill: Drill, words: string) => answers(drill, { ...ANY, words }, []);
    expect(['bank', 'off the boards', 'pass', '2 on 1'].map(words => finds(passes('bank'), words))).toEqual([
      true,
      true,
      true,
      true,
    ]);
    expect(['rim', '1 on 2', 'saucer'].map(words => finds(passes('bank'), words))).toEqual([
      false,
      false,
      false,
    ]);
    expect(finds(passes('rim'), 'rim')).toBe(true);
  });

  it('puts versions under their drill, and a version of nothing shown for itself', () => {
    const as = (of: string) => ({ variantOf: { drill: of as Id<'document'>, as: 'harder' as const } });
    const shelves = shelvesOf(
      [
        ['b', drillOf('B', 20)],
        ['b-hard', drillOf('B, harder', 20, as('b'))],
        ['c-hard', drillOf('C, harder', 20, as('gone'))],
        ['a', drillOf('A', 20)],
      ],
      ANY,
      () => '',
    );
    expect(shelves.map(shelf => [shelf.id, shelf.versions.map(version => version.id)])).toEqual([
      ['a', []],
      ['b', ['b-hard']],
      ['c-hard', []],
    ]);
  });

  it('two drills that say to be versions of each other are both found', () => {
    const of = (id: string) => ({ variantOf: { drill: id as Id<'document'>, as: 'simpler' as const } });
    const shelves = shelvesOf(
      [
        ['a', drillOf('A', 20, of('b'))],
        ['b', drillOf('B', 20, of('a'))],
      ],
      ANY,
      () => '',
    );
    expect(shelves.map(shelf => shelf.id)).toEqual(['a', 'b']);
  });
});
