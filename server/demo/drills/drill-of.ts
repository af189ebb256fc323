import { type Drill, type DrillWant, drill } from '@icewright/book';

/** A point as [x, y] in metres, so that a drill reads as a short table. */
export type At = readonly [xM: number, yM: number];

export interface DemoAct {
  readonly cue?: Drill['spots'][never]['acts'][never]['cue'] | Record<string, unknown>;
  readonly [field: string]: unknown;
}

export interface DemoSpot {
  readonly side: 'us' | 'them';
  readonly kind?: 'skater' | 'goalie' | 'coach';
  readonly at: At;
  readonly facingRad?: number;
  /** Skaters behind the first one, in a line away from where that one faces. */
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
  readonly gear?: Readonly<Record<string, DemoGear>>;
  readonly games?: readonly DemoGame[];
  /** Without one: the whole sheet of the demo team. */
  readonly ice?: 'halfIce' | 'crossIce';
  readonly flow?: DemoFlow;
  /** What is asked of its reps before all else; without it, whether its first habit is held. */
  readonly wanted?: DrillWant;
  readonly variantOf?: NonNullable<Drill['variantOf']> | { readonly drill: string; readonly as: string };
}

export interface DemoGear {
  readonly kind: 'pylon' | 'smallNet' | 'divider';
  readonly at: At;
  readonly facingRad?: number;
}

export interface DemoGame {
  readonly from: At;
  readonly to: At;
  readonly us: number;
  readonly them: number;
  /** Names of its nets among the gear. */
  readonly nets: readonly string[];
  readonly resets: 'coach' | 'whoScored' | 'whoWasScoredOn';
  readonly shiftS: number;
}

/** What is left out: one end, no pause, each back to the own line. */
export interface DemoFlow {
  readonly next?: NonNullable<Drill['flow']>['next'];
  readonly ends?: 'one' | 'both' | 'byTurns';
  readonly pauseS?: number;
  /** By role, whose line is joined next. */
  readonly goesTo?: Readonly<Record<string, string>>;
}

/** The document of a demo drill. Spot ids are the roles, in small letters. */
export function drillOf(said: DemoDrill, madeAt: string): Drill {
  return drill.parse({
    kind: 'drill',
    schema: 4,
    title: said.title,
    says: said.says,
    keyPoints: said.keyPoints.join('\n'),
    habits: said.habits,
    level: 'collegeWomen',
    rink: { preset: said.ice ?? '200x85ft' },
    ...(said.from ? { from: { kind: 'freeze', ...said.from } } : {}),
    ...(said.variantOf ? { variantOf: said.variantOf } : {}),
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
      Object.entries(said.gear ?? {}).map(([name, { kind, at, facingRad }]) => [
        name,
        { kind, atM: pointOf(at), facingRad: facingRad ?? 0 },
      ]),
    ),
    games: Object.fromEntries(
      (said.games ?? []).map((game, rank) => [`game-${rank + 1}`, gameOf(game, rank)]),
    ),
    ...(said.flow ? { flow: flowOf(said.flow) } : {}),
    ...(said.wanted ? { wanted: said.wanted } : {}),
    madeAt,
  });
}

export function spotIdOf(role: string): string {
  return `spot-${role.toLowerCase()}`;
}

export function pointOf([xM, yM]: At): { xM: number; yM: number } {
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

function gameOf({ from, to, us, them, ...rest }: DemoGame, rank: number): unknown {
  return { rank, fromM: pointOf(from), toM: pointOf(to), usCount: us, themCount: them, ...rest };
}

function flowOf({ next, ends, pauseS, goesTo }: DemoFlow): unknown {
  return {
    next: next ?? { on: 'end' },
    ends: ends ?? 'one',
    pauseS: pauseS ?? 0,
    goesTo: Object.fromEntries(
      Object.entries(goesTo ?? {}).map(([from, to]) => [spotIdOf(from), spotIdOf(to)]),
    ),
  };
}
