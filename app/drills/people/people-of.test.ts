import type { Drill, Skater, Team } from '@icewright/book';
import { levelOf, type SpotId, sprintTimeTo } from '@icewright/engine';
import { describe, expect, it } from 'vitest';
import { atTurn, peopleOf, REPS_A_TURN, timedSkatersOf } from './people-of.ts';

const gates = (topSpeedMps: number, tauS: number): Skater['timed'] =>
  [5, 10, 20, 30].map(distanceM => ({
    distanceM,
    timeS: sprintTimeTo({ topSpeedMps, tauS }, distanceM) as number,
  }));

const skater = (rank: number, position: 'F' | 'D' | 'G', timed?: Skater['timed']): Skater => ({
  rank,
  number: rank,
  name: `Skater ${rank}`,
  position,
  noContact: false,
  group: '',
  ...(timed === undefined ? {} : { timed }),
});

const team = {
  skaters: {
    a: skater(0, 'F', gates(8.4, 1.2)),
    b: skater(1, 'F', gates(7.6, 1.3)),
    c: skater(2, 'D', gates(7.9, 1.1)),
    d: skater(3, 'D'),
    e: skater(
      4,
      'F',
      [5, 10, 20].map(distanceM => ({ distanceM, timeS: 1 })),
    ),
  },
} as unknown as Team;
const spot = (role: string, side: 'us' | 'them', kind = 'skater') => ({ role, side, kind });
const drill = (people?: Drill['people']) =>
  ({
    level: 'u18',
    spots: {
      f1: spot('F1', 'us'),
      d1: spot('D1', 'us'),
      x1: spot('X1', 'them'),
      g: spot('G', 'us', 'goalie'),
    },
    ...(people && { people }),
  }) as unknown as Drill;
const timed = timedSkatersOf(team, 'u18');
const speeds = (people: ReturnType<typeof peopleOf>, at: string) =>
  people.bySpot[at as SpotId]?.map(({ topSpeedMps }) => Number(topSpeedMps.toFixed(2)));

describe('who skates a drill', () => {
  it('are those whose times fit a sprint, with all else of the level', () => {
    expect(timed.map(({ skater }) => skater.name)).toEqual(['Skater 0', 'Skater 1', 'Skater 2']);
    const [first] = timed;
    expect(first!.model.topSpeedMps).toBeCloseTo(8.4, 3);
    expect(first!.model.tauS).toBeCloseTo(1.2, 3);
    expect(first!.model.reachM).toBe(levelOf('u18').model.reachM);
  });

  it('is nobody of the team unless it is said', () => {
    expect(peopleOf(drill(), timed)).toEqual({ bySpot: {}, inOneRep: {}, count: 0 });
    expect(peopleOf(drill({ as: 'timedTeam' }), [])).toMatchObject({ count: 0 });
  });

  it('as a mix are all of the position, of ours alone; their mean in one rep, each in turn in many', () => {
    const people = peopleOf(drill({ as: 'timedTeam' }), timed);
    expect(speeds(people, 'f1')).toEqual([8.4, 7.6]);
    expect(speeds(people, 'd1')).toEqual([7.9]);
    expect(Object.keys(people.bySpot)).toEqual(['f1', 'd1']);
    expect(people.inOneRep['f1' as SpotId]?.topSpeedMps).toBeCloseTo(8, 3);
    expect(people.count).toBe(3);
    const ofTurn = (turn: number) => atTurn(people.bySpot, turn * REPS_A_TURN)['f1' as SpotId]!.topSpeedMps;
    expect([0, 1, 2].map(turn => Number(ofTurn(turn).toFixed(1)))).toEqual([8.4, 7.6, 8.4]);
  });

  it('by name is the one named; who has no times skates as the level', () => {
    const bySpot = { f1: 'b', d1: 'd' } as unknown as Record<SpotId, never>;
    const people = peopleOf(drill({ as: 'named', bySpot }), timed);
    expect(speeds(people, 'f1')).toEqual([7.6]);
    expect(people.bySpot['d1' as SpotId]).toBeUndefined();
    expect(people.count).toBe(1);
  });
});
