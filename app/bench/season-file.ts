import { emptyGame, emptyPractice, emptyTeam, type Game, type Team } from '@icewright/book';

/** A team file with a full season, invented; the same numbers give the same file. */
export interface SeasonFile {
  readonly text: string;
  readonly momentCount: number;
  /** Moments that were judged done or missed, and those done, over all games, by habit title. */
  readonly counted: ReadonlyMap<string, { readonly chances: number; readonly done: number }>;
}

const HABITS = ['Back first', 'Stick on the puck', 'Middle first', 'Gap', 'Five together', 'House'] as const;

export function seasonFile(gameCount: number, momentsAGame: number): SeasonFile {
  const counted = new Map(HABITS.map(title => [title as string, { chances: 0, done: 0 }]));
  const games = Object.fromEntries(
    Array.from({ length: gameCount }, (_, game) => [
      `season-game-${game}`,
      gameOf(game, gameCount, momentsAGame, (habit, verdict) => {
        const count = counted.get(HABITS[habit]!)!;
        if (verdict !== 'cannotSee') count.chances += 1;
        if (verdict === 'done') count.done += 1;
      }),
    ]),
  );
  const practices = { 'season-practice-1': emptyPractice({ title: 'Middle', day: dayOf(20) }) };
  const documents = [
    { id: 'season-team', value: teamOf(games, practices) },
    ...Object.entries({ ...games, ...practices }).map(([id, value]) => ({ id, value })),
  ];
  return {
    text: JSON.stringify({ format: 'icewright-team', version: 1, documents }),
    momentCount: gameCount * momentsAGame,
    counted,
  };
}

function gameOf(
  game: number,
  gameCount: number,
  momentCount: number,
  note: (habit: number, verdict: Game['moments'][never]['verdict']) => void,
): Game {
  const moments = Array.from({ length: momentCount }, (_, index) => {
    const habit = index % HABITS.length;
    // A rate that differs by habit and rises over the season.
    const isDone = (index * 7 + game * 13) % 100 < 45 + 5 * habit + (10 * game) / gameCount;
    const verdict = index % 23 === 0 ? 'cannotSee' : isDone ? 'done' : 'missed';
    note(habit, verdict);
    const moment = {
      habit: `habit-${habit}`,
      verdict,
      skater: `skater-${index % 20}`,
      film: 'film',
      filmTimeS: index * 2.4,
      frameIndex: index * 72,
      costGoals: (index % 5) / 20,
      note: '',
      by: 'Ashdown',
      taggedAt: '2026-09-10T10:00:00Z',
    };
    return [`m-${index}`, moment] as const;
  });
  return {
    ...emptyGame({ opponent: `Opponent ${game % 12}`, day: dayOf(game) }),
    moments: Object.fromEntries(moments) as Game['moments'],
  };
}

function teamOf(
  games: Readonly<Record<string, { day: string }>>,
  practices: Readonly<Record<string, { day: string }>>,
): Team {
  const entries = (kind: 'game' | 'practice', of: Readonly<Record<string, { day: string }>>) =>
    Object.entries(of).map(([id, { day }]) => [id, { kind, title: id, day, removed: false }]);
  return {
    ...emptyTeam({
      name: 'Full Season',
      level: 'u18',
      rink: { preset: '60x30m' },
      madeAt: '2026-08-01T10:00:00Z',
    }),
    habits: Object.fromEntries(
      HABITS.map((title, rank) => [
        `habit-${rank}`,
        {
          rank,
          title,
          says: '',
          reason: '',
          standard: {
            kind: 'numbers',
            zone: 'house',
            atLeastCount: 2,
            when: { at: 'theyShoot' },
          },
          wantedRatio: 0.8,
          costGoals: 0.1,
          kept: true,
        },
      ]),
    ) as Team['habits'],
    contents: Object.fromEntries([
      ...entries('game', games),
      ...entries('practice', practices),
    ]) as Team['contents'],
  };
}

/** Days of a season that lies behind: one game a day from 1 September 2025. */
const dayOf = (offset: number): string => new Date(Date.UTC(2025, 8, 1 + offset)).toISOString().slice(0, 10);
