import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Gear, SmallGame } from '../drill/drill.ts';
import { iceAreaOf } from '../rink/boards.ts';
import { rinkOf } from '../rink/rink-of.ts';
import { at, planOf, playableFrom, skate } from '../run/drill-shorthand.reference.ts';
import { findingSentence } from '../run/finding-sentence.ts';
import { runDrill } from '../run/run-drill.ts';
import { isNone } from '../units/none.ts';
import { everybodyGoesWith } from './everybody-goes-with.ts';
import { findSmallGame } from './find-small-game.ts';
import { flowOf } from './flow-of.ts';
import { gameIceSqM } from './game-area.ts';
import { type GameFlow, gameFlowOf, skatersOfGames } from './game-flow-of.ts';

const rink = rinkOf({ preset: '60x26m' });

const game = (more: Partial<SmallGame> = {}): SmallGame => ({
  rank: 0,
  fromM: at(-10, -10),
  toM: at(10, 10),
  usCount: 3,
  themCount: 3,
  nets: [],
  resets: 'coach',
  shiftS: 40,
  ...more,
});

const planWith = (one: SmallGame, gear: Readonly<Record<string, Gear>> = {}) => ({
  ...planOf([]),
  gear,
  games: { game: one },
});

const played = (...of: Parameters<typeof gameFlowOf>): GameFlow => {
  const flow = gameFlowOf(...of);
  if (isNone(flow)) throw new Error(flow.reason);
  return flow;
};

describe('the ice of a small game', () => {
  it('is the product of its sides inside, and the whole sheet where it covers all', () => {
    expect(gameIceSqM(game(), rink)).toBeCloseTo(400, 6);
    const all = game({ fromM: at(30, -13), toM: at(-30, 13) });
    expect(gameIceSqM(all, rink)).toBeCloseTo(iceAreaOf(rink.boards), 0);
  });

  it('lacks what one rounded corner cuts off: (1 − π/4) r²', () => {
    const { lengthM, widthM, cornerRadiusM } = rink.boards;
    const corner = game({ fromM: at(0, 0), toM: at(lengthM / 2, widthM / 2) });
    const wanted = (lengthM * widthM) / 4 - (1 - Math.PI / 4) * cornerRadiusM ** 2;
    expect(Math.abs(gameIceSqM(corner, rink) / wanted - 1)).toBeLessThan(1e-3);
  });
});

describe('a small game over its minutes', () => {
  it('by hand: 20 skaters, 3 on 2 for 40 s with 8 s to change, ten minutes', () => {
    // The last go that ends in 600 s starts at 11 · 48 = 528: 12 goes of five, 60 of 20 skaters, 3 each. 12 and 8 skaters
    // make four goes' worth of each side, so each comes every 4 · 48 s and rests 152 s.
    const flow = played(game({ themCount: 2 }), 20, 10);
    expect(flow).toMatchObject({
      usCount: 12,
      themCount: 8,
      goCount: 12,
      meanGoes: 3,
      fewestGoes: 3,
      mostGoes: 3,
    });
    expect(flow.restS).toBeCloseTo(152, 6);
    expect(flow.restRatio).toBeCloseTo((600 - 120) / 120, 9);
  });

  it('everybody comes round: of one side nobody has two goes more than another, whatever the numbers', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 5 }),
        fc.integer({ min: 1, max: 30 }),
        fc.integer({ min: 5, max: 90 }),
        (side, skaters, shiftS) => {
          const flow = played(game({ usCount: side, themCount: 0, shiftS }), skaters, 12);
          expect(flow.mostGoes - flow.fewestGoes).toBeLessThanOrEqual(1);
          expect(flow.meanGoes * skaters).toBeCloseTo(flow.goCount * Math.min(side, skaters), 6);
        },
      ),
    );
  });

  it('says who is missing, and nothing when there is no game', () => {
    expect(played(game(), 5, 10).shortCount).toBe(1);
    expect(gameFlowOf(game({ usCount: 0, themCount: 0 }), 5, 10)).toMatchObject({ reason: 'nobodyPlays' });
    expect(gameFlowOf(game({ shiftS: 600 }), 6, 5)).toMatchObject({ reason: 'goLongerThanBlock' });
  });

  it('has those who are not in a drawn line, shared by how many play at once', () => {
    const spots = planOf([{ role: 'F1', atM: at(0, 0) }]).spots;
    const games = { one: game(), two: game({ rank: 1, usCount: 2, themCount: 1 }) };
    expect(skatersOfGames({ spots, pucks: {}, gear: {}, games }, 19)).toEqual({ one: 12, two: 6 });
  });
});

describe('what is wrong with a small game', () => {
  const net = (atM = at(-9, 0), facingRad = 0): Readonly<Record<string, Gear>> => ({
    net: { kind: 'smallNet', atM, facingRad },
  });
  const kinds = (one: SmallGame, gear = {}, skaters = 20) =>
    findSmallGame(planWith(one, gear), rink, skaters).map(finding => finding.kind);

  it('nothing with room, nets inside and enough skaters', () => {
    expect(kinds(game({ nets: ['net'] }), net())).toEqual([]);
  });

  it('a region over the boards, by as much', () => {
    const [found] = findSmallGame(planWith(game({ toM: at(10, 15) })), rink, 20);
    expect(found).toMatchObject({ kind: 'gameOffTheIce', value: 2 });
  });

  it('too little ice: 5 on 5 on 20 × 15 m is 30 m² each', () => {
    const small = game({ fromM: at(-10, -7.5), toM: at(10, 7.5), usCount: 5, themCount: 5 });
    const [found] = findSmallGame(planWith(small), rink, 20);
    expect(found).toMatchObject({ kind: 'gameTooCrowded', threshold: 40 });
    expect(found!.value).toBeCloseTo(30, 6);
    expect(findingSentence(found!, planWith(small))).toContain('30 m² of ice for each skater');
    expect(findingSentence(found!, planWith(small), 'feet')).toContain('323 sq ft');
  });

  it('a net outside the region, and one with its back at the boards', () => {
    expect(kinds(game({ nets: ['net'] }), net(at(-12, 0)))).toEqual(['netOutsideGame']);
    expect(kinds(game({ nets: ['net'], toM: at(10, 13) }), net(at(0, 12), -Math.PI / 2))).toEqual([
      'netNearBoards',
    ]);
  });

  it('fewer here than play at once', () => {
    expect(kinds(game(), {}, 5)).toEqual(['tooFewSkaters']);
  });
});

describe('a small game beside a rep', () => {
  /** F1 skates from the middle to minus 20; the game lies at the other end, for those beyond her line of four. */
  const beside = (ends: 'one' | 'both' | 'byTurns') => ({
    ...planOf([
      { role: 'F1', atM: at(-2, 3), facingRad: Math.PI, acts: [skate([at(-20, 3)], { stops: true })] },
    ]),
    games: { game: game({ fromM: at(6, -12), toM: at(26, 12) }) },
    flow: { next: { on: 'every', seconds: 20 }, ends, pauseS: 0, goesTo: {} } as const,
  });
  const flowWith = (ends: 'one' | 'both' | 'byTurns', skaters: number) => {
    const plan = beside(ends);
    const run = runDrill(playableFrom(plan));
    const roster = { skaters, goalies: 0 };
    const flow = flowOf(plan, run, { roster, minutes: 10, beyondLines: 'join' });
    if (isNone(flow)) throw new Error(flow.reason);
    return flow;
  };

  it('has its skaters, who stand in no line and move while they play', () => {
    const flow = flowWith('one', 13);
    // One is drawn in the line; twelve are for the game.
    expect(flow.inGamesCount).toBe(12);
    expect(flow.lines.map(line => line.skaterCount)).toEqual([1]);
    expect(flow.skaters).toHaveLength(1);
    // By hand: a go each 48 s, the last that ends in 600 s starts at 528: 12 goes of six for 40 s are 4.8 at once.
    const alone = flowWith('one', 1);
    expect(flow.movingCount - alone.movingCount).toBeCloseTo((12 * 6 * 40) / 600, 9);
  });

  it('is full with everybody from its own skaters on, after the drawn line, until the minutes are too few', () => {
    const plan = beside('one');
    const run = runDrill(playableFrom(plan));
    const setting = { roster: { skaters: 13, goalies: 0 }, minutes: 10, beyondLines: 'join' } as const;
    const range = everybodyGoesWith(plan, run, setting);
    // One in the line and three a side; 12 goes of three are 36 of each side at most, and the sheet never has so many.
    expect(range).toEqual({ least: 7, most: null });
    const short = everybodyGoesWith(plan, run, { ...setting, minutes: 2 });
    // By hand: goes that end in 120 s start at 0 and 48: two of six, so twelve and the one of the line.
    expect(short).toEqual({ least: 7, most: 13 });
  });

  it('objects when reps at both ends go through it, and offers one end', () => {
    const through = (ends: 'one' | 'both' | 'byTurns') =>
      flowWith(ends, 13).findings.filter(one => one.kind === 'repThroughGame');
    expect(through('one')).toEqual([]);
    for (const ends of ['both', 'byTurns'] as const) {
      const [found] = through(ends);
      // Turned, she ends at 20, three metres from the middle: nine from the side of the game, six from its far edge.
      expect(found).toMatchObject({ weight: 'look', spots: ['F1'] });
      expect(found!.value).toBeGreaterThan(5);
      expect(found!.value).toBeLessThanOrEqual(9);
      expect(findingSentence(found!, beside(ends))).toMatch(
        /^F1 skates \d\.\d m deep into the small game, with reps at both ends/,
      );
    }
  });
});
