import { emptyDrill, emptyGame, emptyPractice, emptyTeam, type Game } from '@icewright/book';
import { rinkOf } from '@icewright/engine';
import { describe, expect, it } from 'vitest';
import { judgedGameCount, ledgerLinesOf, type SeasonSeen } from './ledger-lines.ts';

const choice = { preset: '60x30m' } as const;
const rink = rinkOf(choice);
const madeAt = '2026-09-01T10:00:00Z';

const team = {
  ...emptyTeam({ name: 'Invented', level: 'u18', rink: choice, madeAt }),
  habits: {
    gap: {
      rank: 1,
      title: 'Gap',
      says: '',
      reason: '',
      standard: {
        kind: 'within',
        who: 'nearestDefender',
        whom: 'carrier',
        withinM: 3,
        when: { at: 'theyShoot' },
      },
      wantedRatio: 0.7,
      costGoals: 0.1,
      kept: true,
    },
  },
} as unknown as Parameters<typeof ledgerLinesOf>[0];

const gameOn = (day: string, done: number, missed: number): [string, Game] => [
  `game-${day}`,
  {
    ...emptyGame({ opponent: 'Moss Point', day }),
    moments: Object.fromEntries(
      Array.from({ length: done + missed }, (_, index) => [
        `m${index}`,
        {
          habit: 'gap',
          verdict: index < done ? 'done' : 'missed',
          film: 'f',
          filmTimeS: index,
          frameIndex: index,
          costGoals: 0,
          note: '',
          by: '',
          taggedAt: madeAt,
        },
      ]),
    ) as unknown as Game['moments'],
  },
];

const practiceOn = (day: string, minutes: number): SeasonSeen['practices'][number] => [
  `practice-${day}`,
  {
    ...emptyPractice({ title: 'Practice', day }),
    blocks: {
      b: {
        rank: 1,
        drill: 'd',
        title: '',
        minutes,
        changeoverMinutes: 0,
        says: '',
        keyPoints: '',
        leads: '',
        pucks: '',
        ice: '',
        groups: '',
      },
    },
  } as unknown as SeasonSeen['practices'][number][1],
];

const drills = new Map([
  ['d', { ...emptyDrill({ title: 'Ladder', level: 'u18', rink: choice, madeAt }), habits: ['gap'] }],
]) as unknown as SeasonSeen['drills'];

describe('lines of the ledger', () => {
  it('parts the games at the first practice of the habit, and tells a large change', () => {
    const season: SeasonSeen = {
      games: [gameOn('2026-09-05', 40, 60), gameOn('2026-09-12', 40, 60), gameOn('2026-10-10', 80, 20)],
      practices: [practiceOn('2026-09-20', 12), practiceOn('2026-09-27', 10)],
      drills,
    };
    const [line] = ledgerLinesOf(team, season, rink, '2026-11-01');
    expect(line?.minutes).toBe(22);
    expect([line?.before.doneCount, line?.before.chanceCount]).toEqual([80, 200]);
    expect([line?.after.doneCount, line?.after.chanceCount]).toEqual([80, 100]);
    expect(line?.change?.word).toBe('moved up');
  });

  it('cannot tell from two chances, and says nothing of a habit never practised', () => {
    const games = [gameOn('2026-09-05', 1, 0), gameOn('2026-10-10', 0, 1)];
    const [practised] = ledgerLinesOf(
      team,
      { games, practices: [practiceOn('2026-09-20', 12)], drills },
      rink,
      '2026-11-01',
    );
    expect(practised?.change?.word).toBe('cannot tell');
    const [never] = ledgerLinesOf(team, { games, practices: [], drills }, rink, '2026-11-01');
    expect(never?.change).toBeNull();
    expect(never?.before.chanceCount).toBe(2);
  });

  it('counts a game as in only when a chance in it was judged', () => {
    const unseen = gameOn('2026-09-12', 1, 0);
    const moments = Object.fromEntries(
      Object.entries(unseen[1].moments).map(([id, moment]) => [id, { ...moment, verdict: 'cannotSee' }]),
    ) as unknown as Game['moments'];
    const games: SeasonSeen['games'] = [
      gameOn('2026-09-05', 1, 1),
      [unseen[0], { ...unseen[1], moments }],
      gameOn('2026-10-10', 0, 0),
    ];
    const of = (some: SeasonSeen['games']) =>
      judgedGameCount(ledgerLinesOf(team, { games: some, practices: [], drills }, rink, '2026-11-01'));
    expect(of(games)).toBe(1);
    expect(of([...games, gameOn('2026-10-17', 0, 2)])).toBe(2);
  });
});
