import { emptyDrill, emptyGame, emptyTeam } from '../blank/empty.ts';
import type { Drill, DrillAct, DrillSpot } from '../documents/drill.ts';
import type { Game, Moment } from '../documents/game.ts';
import type { Team } from '../documents/team.ts';

/** Small invented documents for tests. */

export const sampleAct = (rank: number): DrillAct => ({
  kind: 'skate',
  rank,
  throughM: [{ xM: 1, yM: 2 }],
  facing: 'forward',
  effortRatio: 0.9,
  stops: false,
});

export const sampleSpot = (rank: number, acts: Record<string, DrillAct> = {}): DrillSpot => ({
  rank,
  side: 'us',
  kind: 'skater',
  role: 'F1',
  atM: { xM: 0, yM: 0 },
  facingRad: 0,
  waitingCount: 0,
  acts,
});

export const sampleDrill = (): Drill => ({
  ...emptyDrill({
    title: 'Back to the middle',
    level: 'u18',
    rink: { preset: '60x30m' },
    madeAt: '2026-11-02T10:00:00Z',
  }),
  keyPoints: 'Start at once\nStick down',
  spots: { s1: sampleSpot(1, { a1: sampleAct(1) }), s2: sampleSpot(2) } as Drill['spots'],
});

export const sampleMoment = (note = ''): Moment => ({
  habit: 'h1' as Moment['habit'],
  verdict: 'missed',
  film: 'f1' as Moment['film'],
  filmTimeS: 12.5,
  frameIndex: 375,
  costGoals: 0.4,
  note,
  by: 'Ansa',
  taggedAt: '2026-11-02T10:00:00Z',
});

export const sampleGame = (): Game => ({
  ...emptyGame({ opponent: 'Moss Point', day: '2026-11-01' }),
  moments: { m1: sampleMoment('Late by a stride'), m2: sampleMoment() } as Game['moments'],
});

export const sampleTeam = (): Team =>
  emptyTeam({
    name: 'Moss Point Herons',
    level: 'u18',
    rink: { preset: '60x30m' },
    madeAt: '2026-11-02T10:00:00Z',
  });
