import { type Drill, drill } from '@icewright/book';

/** A point as [x, y] in metres, so that a drill reads as a short table. */
type At = readonly [xM: number, yM: number];

export interface DemoAct {
  readonly cue?: Drill['spots'][never]['acts'][never]['cue'] | Record<string, unknown>;
  readonly [field: string]: unknown;
}

export interface DemoSpot {
  readonly side: 'us' | 'them';
  readonly kind?: 'skater' | 'goalie' | 'coach';
  readonly at: At;
  readonly facingRad?: number;
  readonly waiting?: number;
  readonly acts?: readonly DemoAct[];
}

/** What a demo drill file says; the rest of the document is the same for all. */
export interface DemoDrill {
  readonly title: string;
  readonly says: string;
  readonly keyPoints: readonly string[];
  readonly habits: readonly string[];
  readonly minutes: number;
  readonly from?: { readonly game: string; readonly freeze: string; readonly said: string };
  /** By role, in the order of the staves. */
  readonly spots: Readonly<Record<string, DemoSpot>>;
  readonly pucks: readonly { readonly at: At; readonly owner?: string; readonly count?: number }[];
  readonly pylons?: readonly At[];
}

/** The document of a demo drill. Spot ids are the roles, in small letters. */
export function drillOf(said: DemoDrill, madeAt: string): Drill {
  return drill.parse({
    kind: 'drill',
    schema: 2,
    title: said.title,
    says: said.says,
    keyPoints: said.keyPoints.join('\n'),
    habits: said.habits,
    level: 'collegeWomen',
    rink: { preset: '200x85ft' },
    ...(said.from ? { from: { kind: 'freeze', ...said.from } } : {}),
    minutes: said.minutes,
    spots: Object.fromEntries(
      Object.entries(said.spots).map(([role, spot], rank) => [spotIdOf(role), spotOf(role, spot, rank)]),
    ),
    pucks: Object.fromEntries(
      said.pucks.map((puck, index) => [
        `puck-${index + 1}`,
        {
          atM: pointOf(puck.at),
          count: puck.count ?? 1,
          ...(puck.owner ? { ownerSpot: spotIdOf(puck.owner) } : {}),
        },
      ]),
    ),
    gear: Object.fromEntries(
      (said.pylons ?? []).map((at, index) => [
        `pylon-${index + 1}`,
        { kind: 'pylon', atM: pointOf(at), facingRad: 0 },
      ]),
    ),
    games: {},
    madeAt,
  });
}

/** Skating or carrying along a line through these points. */
export const along = (
  kind: 'skate' | 'carry',
  through: readonly At[],
  more: Record<string, unknown> = {},
): DemoAct => ({
  kind,
  throughM: through.map(pointOf),
  facing: 'forward',
  effortRatio: 1,
  stops: false,
  ...more,
});

export const pass = (toRole: string, speedMps: number, more: Record<string, unknown> = {}): DemoAct => ({
  kind: 'pass',
  toSpot: spotIdOf(toRole),
  way: 'direct',
  speedMps,
  ...more,
});

export const shoot = (atEnd: 'minusX' | 'plusX', speedMps = 22): DemoAct => ({
  kind: 'shoot',
  atEnd,
  speedMps,
});
export const gap = (role: string, distanceM: number, more: Record<string, unknown> = {}): DemoAct => ({
  kind: 'gap',
  whom: spotIdOf(role),
  distanceM,
  ...more,
});
export const chase = (role: string, more: Record<string, unknown> = {}): DemoAct => ({
  kind: 'chase',
  whom: spotIdOf(role),
  effortRatio: 1,
  ...more,
});

export const whistle = { on: 'whistle' } as const;
export const received = (role: string) => ({ on: 'receive', spot: spotIdOf(role) }) as const;
export const after = (seconds: number) => ({ on: 'after', seconds }) as const;

function spotIdOf(role: string): string {
  return `spot-${role.toLowerCase()}`;
}

function pointOf([xM, yM]: At): { xM: number; yM: number } {
  return { xM, yM };
}

function spotOf(role: string, spot: DemoSpot, rank: number): unknown {
  return {
    rank,
    side: spot.side,
    kind: spot.kind ?? 'skater',
    role: role.replace(/^G.$/, 'G'),
    atM: pointOf(spot.at),
    facingRad: spot.facingRad ?? 0,
    waitingCount: spot.waiting ?? 0,
    acts: Object.fromEntries(
      (spot.acts ?? []).map((act, index) => [`act-${index + 1}`, { rank: index, ...act }]),
    ),
  };
}
