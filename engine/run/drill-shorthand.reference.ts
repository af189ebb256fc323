import type { ActDeed, Cue, DrillPlan, Spot } from '../drill/drill.ts';
import { type Playable, playableOf } from '../drill/playable.ts';
import type { RinkChoice } from '../rink/choice.ts';
import { rinkOf } from '../rink/rink-of.ts';
import { levelOf } from '../skater/level.ts';
import type { LevelId } from '../skater/model.ts';
import type { ActId, SpotId } from '../units/ids.ts';
import type { IcePoint } from '../units/points.ts';
import { runDrill } from './run-drill.ts';
import type { Run, RunEvent } from './run-result.ts';

/** Short hands for drills in tests and benches. Ids are the roles; acts are numbered. */
export const at = (xM: number, yM: number): IcePoint => ({ xM, yM });
export const named = (role: string): SpotId => role as SpotId;

export type TestAct = ActDeed & { readonly cue?: Cue };

export interface TestSpot {
  readonly role: string;
  readonly atM: IcePoint;
  readonly side?: Spot['side'];
  readonly kind?: Spot['kind'];
  readonly facingRad?: number;
  readonly puck?: boolean;
  readonly acts?: readonly TestAct[];
}

export const planOf = (spots: readonly TestSpot[], lyingM?: IcePoint): DrillPlan => ({
  spots: Object.fromEntries(
    spots.map((spot, rank) => [
      spot.role,
      {
        rank,
        side: spot.side ?? 'us',
        kind: spot.kind ?? 'skater',
        role: spot.role,
        atM: spot.atM,
        facingRad: spot.facingRad ?? 0,
        waitingCount: 0,
        acts: Object.fromEntries(
          (spot.acts ?? []).map((act, i) => [`${spot.role}.${i}` as ActId, { ...act, rank: i }]),
        ),
      },
    ]),
  ),
  pucks: Object.fromEntries([
    ...spots
      .filter(spot => spot.puck)
      .map(spot => [`puck ${spot.role}`, { atM: spot.atM, ownerSpot: named(spot.role), count: 1 }]),
    ...(lyingM ? [['lying', { atM: lyingM, count: 5 }]] : []),
  ]),
  gear: {},
});

export const playableFrom = (
  plan: DrillPlan,
  levelId: LevelId = 'collegeWomen',
  choice: RinkChoice = { preset: '200x85ft' },
): Playable => {
  const playable = playableOf(plan, rinkOf(choice), levelOf(levelId));
  if (playable.kind !== 'playable') throw new Error(JSON.stringify(playable.issues));
  return playable;
};

export const skate = (
  throughM: readonly IcePoint[],
  more: Partial<Extract<ActDeed, { kind: 'skate' | 'carry' }>> & { readonly cue?: Cue } = {},
): TestAct => ({ kind: 'skate', throughM, facing: 'forward', effortRatio: 1, stops: false, ...more });

/** Passer, passer on, carrier, gap, chaser: a part of everything. */
export const drillOf = (): DrillPlan =>
  planOf([
    {
      role: 'Co',
      kind: 'coach',
      atM: at(17, -11),
      puck: true,
      acts: [{ kind: 'pass', toSpot: named('X2'), way: 'direct', speedMps: 15, cue: { on: 'whistle' } }],
    },
    {
      role: 'X2',
      side: 'them',
      atM: at(13, 5),
      facingRad: -1.3,
      acts: [
        {
          kind: 'pass',
          toSpot: named('X1'),
          way: 'direct',
          speedMps: 13,
          cue: { on: 'receive', spot: named('X2') },
        },
        skate([at(0, 4), at(-12, 1), at(-24, 1)], { stops: true }),
      ],
    },
    {
      role: 'X1',
      side: 'them',
      atM: at(6, 9),
      facingRad: 0,
      acts: [
        skate([at(-6, 10), at(-18, 5)], { kind: 'carry', cue: { on: 'receive', spot: named('X1') } }),
        { kind: 'shoot', atEnd: 'minusX', speedMps: 25 },
      ],
    },
    {
      role: 'D1',
      atM: at(1, 5),
      acts: [{ kind: 'gap', whom: named('X1'), distanceM: 3, cue: { on: 'receive', spot: named('X2') } }],
    },
    {
      role: 'F3',
      atM: at(11, -2),
      facingRad: Math.PI,
      acts: [{ kind: 'chase', whom: named('X1'), effortRatio: 1, cue: { on: 'whistle' } }],
    },
  ]);

/** One rep of a drill as it is drawn. */
export const runOf = (plan: DrillPlan): Run => runDrill(playableFrom(plan));

/** The first event of a kind, of one spot where it is named; undefined when there is none. */
export const eventOf = (run: Run, kind: RunEvent['kind'], spot?: string): RunEvent | undefined =>
  run.events.find(
    event => event.kind === kind && (spot === undefined || ('spot' in event && event.spot === spot)),
  );
