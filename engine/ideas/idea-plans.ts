import type { Act, ActDeed, Cue, DrillPlan, Spot } from '../drill/drill.ts';
import { standingPointOf } from '../drill/in-boards.ts';
import type { FreezeSkater } from '../drill/plan-from-freeze.ts';
import type { FreeQuantity } from '../many/free-quantity.ts';
import type { Outcome } from '../many/outcome.ts';
import type { Rink } from '../rink/rink.ts';
import type { Level } from '../skater/level.ts';
import type { ActId, SpotId } from '../units/ids.ts';
import type { IcePoint } from '../units/points.ts';
import { coachPlace } from './coach-place.ts';
import {
  FINISH_FROM_GOAL_M,
  GOES_ON,
  IDEA_GAP_RATIO,
  IDEA_MOVES,
  IDEA_PUCKS,
  IDEA_TEAM,
  IDEA_WAITING,
  PICTURE_M,
  PYLON_M,
  RUN_UP_M,
  START_APART,
} from './ideas-rows.ts';
import type { Problem } from './problem-of.ts';

/** `pair`: only the two it is about. `started`: a pass starts it, and she must read it. `picture`: everybody who was about it stays. */
export const IDEA_SHAPES = ['pair', 'started', 'picture'] as const;
export type IdeaShape = (typeof IDEA_SHAPES)[number];

/** A drill drawn from a problem, with what is to come out of it and what may move for that. */
export interface DrawnIdea {
  readonly shape: IdeaShape;
  readonly plan: DrillPlan;
  readonly outcome: Outcome;
  readonly free: FreeQuantity;
  /** Those of the picture who stayed skaters, by role; the others became pylons, the coach, or nothing. */
  readonly keptRoles: readonly string[];
  /** Skaters who are neither the carrier nor meant by the standard: spot and skater of the picture. */
  readonly bystanders: readonly { readonly spot: SpotId; readonly skater: string }[];
  readonly pylonCount: number;
}

/**
 * Draws one shape of drill for a problem: everybody who stays starts a run-up before the place in the picture, so that the picture comes
 * about in the rep; the carrier goes through it to the net and shoots; those the standard speaks of do what it asks, and where
 * the first of them starts is free. Metres, us attacking plusX. `newId` gives fresh ids. Any problem can be drawn. Our own rules.
 */
export const drawIdea = (
  problem: Problem,
  shape: IdeaShape,
  rink: Rink,
  level: Level,
  newId: () => string,
): DrawnIdea => {
  const sign = problem.goesTo === 'minusX' ? -1 : 1;
  const kept = keptOf(problem, shape);
  const ids = new Map(kept.map(skater => [skater.id, newId() as SpotId]));
  const carrierId = ids.get(problem.carrier.id)!;
  const coachId = newId() as SpotId;
  const cue: Cue = shape === 'started' ? { on: 'receive', spot: carrierId } : { on: 'whistle' };
  const inside = (pointM: IcePoint): IcePoint => standingPointOf(rink.boards, pointM);
  const startOf = (skater: FreezeSkater): IcePoint =>
    skater.kind === 'goalie'
      ? skater.atM
      : inside({ xM: skater.atM.xM - sign * runUpOf(problem), yM: skater.atM.yM });
  const waitingCount = Math.min(
    MOST_WAITING,
    Math.floor(TEAM / kept.filter(skater => skater.kind === 'skater').length) - 1,
  );
  const finishXM = sign * (rink.layout.goalLineXM - FINISH_FROM_GOAL_M.value);
  const spots: Record<SpotId, Spot> = {};
  const add = (
    id: SpotId,
    spot: Omit<Spot, 'rank' | 'acts' | 'waitingCount'>,
    acts: readonly Deed[],
  ): void => {
    spots[id] = {
      rank: Object.keys(spots).length,
      waitingCount: spot.kind === 'skater' ? Math.max(0, waitingCount) : 0,
      ...spot,
      acts: Object.fromEntries(acts.map((act, rank) => [newId() as ActId, { rank, ...act } as Act])),
    };
  };
  if (shape === 'started') {
    const fromM = startOf(problem.carrier);
    add(
      coachId,
      {
        side: problem.carrier.side,
        kind: 'coach',
        role: 'Co',
        atM: coachPlace(
          fromM,
          sign,
          kept.filter(skater => skater.id !== problem.carrier.id).map(startOf),
          inside,
        ),
        facingRad: sign > 0 ? 0 : Math.PI,
      },
      [
        {
          kind: 'pass',
          toSpot: carrierId,
          way: 'direct',
          speedMps: level.model.typicalPassMps,
          cue: { on: 'whistle' },
        },
      ],
    );
  }
  const firstWorker = problem.workers[0]!;
  const workerId = ids.get(firstWorker.id)!;
  kept.forEach((skater, index) => {
    const isWorker = problem.workers.some(worker => worker.id === skater.id);
    const wantedM = isWorker ? workerStart(problem, skater, startOf(skater), sign, inside) : startOf(skater);
    // Where the first of the standard starts is moved along the sheet: that way lies beside the carrier, and nobody else stands
    // on it; but who hunts begins where she was in the picture, or she is there too late.
    const isFirst = skater.id === firstWorker.id;
    const laneYM =
      isFirst && runUpOf(problem) === 0 ? undefined : spots[isFirst ? carrierId : workerId]?.atM.yM;
    const startM =
      skater.kind === 'goalie' ? wantedM : inside(besideAll(wantedM, Object.values(spots), laneYM));
    const acts =
      skater.id === problem.carrier.id
        ? carrierActs(problem, skater, finishXM, cue, level)
        : isWorker
          ? workerActs(problem, skater, index, carrierId, finishXM, cue)
          : alongside(skater, sign, cue);
    add(
      ids.get(skater.id)!,
      {
        side: skater.side,
        kind: skater.kind,
        role: skater.role,
        atM: startM,
        facingRad: sign > 0 ? 0 : Math.PI,
      },
      skater.kind === 'goalie' ? [] : acts,
    );
  });
  const pylons = shape === 'picture' ? [] : pylonsOf(problem, kept);
  const workerAtM = spots[workerId]!.atM;
  const carrierAtM = spots[carrierId]!.atM;
  return {
    shape,
    plan: {
      spots,
      pucks: {
        [newId()]:
          shape === 'started'
            ? { atM: spots[coachId]!.atM, ownerSpot: coachId, count: HEAP }
            : { atM: carrierAtM, ownerSpot: carrierId, count: 1 },
      },
      gear: Object.fromEntries(pylons.map(atM => [newId(), { kind: 'pylon' as const, atM, facingRad: 0 }])),
    },
    outcome: outcomeOf(problem),
    free: {
      kind: 'spotAlong',
      way: 'lengthwise',
      spot: workerId,
      fromM: { xM: 0, yM: workerAtM.yM },
      direction: { x: 1, y: 0 },
      low: Math.max(-rink.boards.lengthM / 2 + 1, workerAtM.xM - MOVES_M),
      high: Math.min(rink.boards.lengthM / 2 - 1, workerAtM.xM + MOVES_M),
      now: workerAtM.xM,
    },
    keptRoles: kept.map(skater => skater.role),
    bystanders: kept.flatMap(skater =>
      skater.kind === 'goalie' || skater.id === problem.carrier.id || problem.workers.includes(skater)
        ? []
        : [{ spot: ids.get(skater.id)!, skater: skater.id }],
    ),
    pylonCount: pylons.length,
  };
};

type Deed = ActDeed & { readonly cue?: Cue };

/** A full team on as many lines as there are spots; longer lines than this are drawn no longer. */
const TEAM = IDEA_TEAM.value;
const MOST_WAITING = IDEA_WAITING.value;
const HEAP = IDEA_PUCKS.value;
const MOVES_M = IDEA_MOVES.value;
/** How far beyond the picture who goes with the play goes on, metres: a second. */
const GOES_ON_M = GOES_ON.value;
/** How far inside a gap that is asked for a defender tries to be. */
const GAP_RATIO = IDEA_GAP_RATIO.value;

const keptOf = (problem: Problem, shape: IdeaShape): readonly FreezeSkater[] => {
  const two = [problem.carrier, ...problem.workers.filter(worker => worker.id !== problem.carrier.id)];
  const goalies = problem.others.filter(other => other.kind === 'goalie' && isBeforeNet(problem, other));
  if (shape === 'pair') return two;
  if (shape === 'started') return [...two, ...goalies];
  const about = problem.others.filter(
    other => other.kind === 'skater' && distance(other.atM, problem.scene.puck!.atM) <= PICTURE_M.value,
  );
  return [...two, ...about, ...goalies];
};

/** The goalie of the net that is shot at. */
const isBeforeNet = (problem: Problem, goalie: FreezeSkater): boolean =>
  Math.sign(goalie.atM.xM) === (problem.goesTo === 'minusX' ? -1 : 1);

/** Those in the way who are not kept stand as pylons where they were. */
const pylonsOf = (problem: Problem, kept: readonly FreezeSkater[]): readonly IcePoint[] =>
  problem.others
    .filter(other => other.kind === 'skater' && !kept.includes(other))
    .filter(other => distance(other.atM, problem.scene.puck!.atM) <= PYLON_M.value)
    .slice(0, 2)
    .map(other => other.atM);

const carrierActs = (
  problem: Problem,
  carrier: FreezeSkater,
  finishXM: number,
  cue: Cue,
  level: Level,
): readonly Deed[] => [
  {
    kind: 'carry',
    throughM: [carrier.atM, { xM: finishXM, yM: carrier.atM.yM * 0.4 }],
    facing: 'forward',
    effortRatio: 1,
    stops: false,
    cue,
  },
  { kind: 'shoot', atEnd: problem.goesTo, speedMps: level.model.wristShotMps },
];

/** Two who would start on each other stand beside each other, the later one nearer to the middle of the ice. */
const besideAll = (atM: IcePoint, others: readonly Spot[], laneYM: number | undefined): IcePoint => {
  const step = atM.yM > 0 ? -START_APART_M : START_APART_M;
  let yM = atM.yM;
  const isTaken = (): boolean =>
    (laneYM !== undefined && Math.abs(yM - laneYM) < START_APART_M) ||
    others.some(other => distance(other.atM, { xM: atM.xM, yM }) < START_APART_M);
  while (isTaken()) yM += step;
  return { xM: atM.xM, yM };
};

/** Room for a skater and the stick, metres. */
const START_APART_M = START_APART.value;

/** A puck that changes hands does so at the whistle, where the picture is: all else needs the speed of the game. */
const runUpOf = ({ standard }: Problem): number =>
  standard.when.at === 'weLoseThePuck' || standard.when.at === 'weWinThePuck' ? 0 : RUN_UP_M.value;

/** Where who holds a gap or goes for the puck starts: on the net's side of the carrier, or from the place in the picture. */
const workerStart = (
  problem: Problem,
  worker: FreezeSkater,
  runUpM: IcePoint,
  sign: number,
  inside: (pointM: IcePoint) => IcePoint,
): IcePoint => {
  const { standard } = problem;
  const isAhead = standard.kind === 'within' && problem.goesTo === 'minusX' && standard.who !== 'anyOfUs';
  if (!isAhead) return runUpM;
  return inside({ xM: worker.atM.xM - sign * (runUpOf(problem) / 2), yM: worker.atM.yM });
};

const workerActs = (
  problem: Problem,
  worker: FreezeSkater,
  index: number,
  carrierId: SpotId,
  finishXM: number,
  cue: Cue,
): readonly Deed[] => {
  const { standard, carrier } = problem;
  if (worker.id === carrier.id) return [];
  if (standard.kind === 'within' && carrier.side === 'them') {
    return standard.who === 'anyOfUs' || standard.when.at === 'weLoseThePuck'
      ? [{ kind: 'steal', whom: carrierId, effortRatio: 1, cue }]
      : [{ kind: 'gap', whom: carrierId, distanceM: Math.max(1, standard.withinM * GAP_RATIO), cue }];
  }
  // Goal-side of the puck's way, each on a lane of its own; who joins goes wide of it.
  const laneM = carrier.atM.yM >= 0 ? -1 : 1;
  const overM = problem.goesTo === 'minusX' ? (index % 2 === 0 ? 0.1 : 0.6) : 0.8;
  const toM = { xM: finishXM, yM: laneM * (1.5 + overM * 5) + (index > 2 ? 2.5 * laneM : 0) };
  const viaM = worker.ghostM ?? worker.atM;
  return [{ kind: 'skate', throughM: [viaM, toM], facing: 'forward', effortRatio: 1, stops: true, cue }];
};

/** Who is kept without a task of the standard goes with the play. */
const alongside = (skater: FreezeSkater, sign: number, cue: Cue): readonly Deed[] => [
  {
    kind: 'skate',
    throughM: [skater.atM, { xM: skater.atM.xM + sign * GOES_ON_M, yM: skater.atM.yM }],
    facing: 'forward',
    effortRatio: 1,
    stops: true,
    cue,
  },
];

/** What the rep is judged by: the standard itself; a hunt for a puck that is theirs from the whistle, by winning it back. */
const outcomeOf = (problem: Problem): Outcome => {
  const { standard } = problem;
  return standard.when.at === 'weLoseThePuck' || standard.when.at === 'weWinThePuck'
    ? { kind: 'puckRegained', side: 'us', beforeLine: problem.line }
    : { kind: 'standardHeld', standard };
};

const distance = (a: IcePoint, b: IcePoint): number => Math.hypot(a.xM - b.xM, a.yM - b.yM);
