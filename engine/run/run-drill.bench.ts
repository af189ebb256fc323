import { Chain, Circle, Vec2, World } from 'planck';
import type { BenchRow } from '../../cli/bench-row.ts';
import type { Act, DrillPlan, Spot } from '../drill/drill.ts';
import { playableOf } from '../drill/playable.ts';
import { boardsPointAtArc } from '../rink/along-boards.ts';
import { perimeterOf } from '../rink/boards.ts';
import { rinkOf } from '../rink/rink-of.ts';
import { levelOf } from '../skater/level.ts';
import type { SpotId } from '../units/ids.ts';
import type { IcePoint } from '../units/points.ts';
import { at, named, planOf, skate, type TestSpot } from './drill-shorthand.reference.ts';
import { runMemory } from './recorder.ts';
import { runDrill } from './run-drill.ts';
import type { Run } from './run-result.ts';

const SECONDS = 20;
const STEPS = SECONDS * 120;
const ROUNDS = 41;

const loop = (y: number, turn: number): readonly IcePoint[] =>
  [0, 1].flatMap(lap => [
    at(18 * turn, y + 0.3 * lap),
    at(20 * turn, y + 4),
    at(0, y + 5 - 0.2 * lap),
    at(-18 * turn, y + 3),
    at(-19 * turn, y),
    at(0, y),
  ]);

/** Twelve skaters busy for twenty seconds: loops, a pass, three gaps, two chases that do not catch. */
export const busyDrill = (): DrillPlan => {
  const skaters: TestSpot[] = [-11, -7, -3, 1, 4, 7].map((y, i) => ({
    role: `F${i}`,
    atM: at(-2 + i, y),
    puck: i === 0,
    acts: [
      ...(i === 0
        ? [
            {
              kind: 'pass',
              toSpot: named('F3'),
              way: 'bank',
              speedMps: 16,
              cue: { on: 'after', seconds: 1 },
            } as const,
          ]
        : []),
      skate(loop(y - 1, i % 2 ? 1 : -1)),
    ],
  }));
  const coach: TestSpot = { role: 'F6', atM: at(24, -8), acts: [{ kind: 'hold', seconds: SECONDS }] };
  const gaps: TestSpot[] = [0, 1, 2].map(i => ({
    role: `D${i}`,
    side: 'them',
    atM: at(10, -6 + 6 * i),
    acts: [{ kind: 'gap', whom: named(`F${i}`), distanceM: 3 }],
  }));
  const chases: TestSpot[] = [0, 1].map(i => ({
    role: `C${i}`,
    side: 'them',
    atM: at(24, 8 - 3 * i),
    acts: [
      { kind: 'chase', whom: named(`F${4 + i}`), effortRatio: 0.25, cue: { on: 'after', seconds: 0.1 } },
    ],
  }));
  return planOf([...skaters, coach, ...gaps, ...chases]);
};

/** Twice the busy drill, the second time a half turn of it: 24 spots; each passes on to a stop, a turn, a change of facing: 60 acts. */
const twentyFourSpots = (): DrillPlan => {
  const { spots, pucks, gear } = busyDrill();
  const list = Object.values(spots);
  const turned = list.map(spot => halfTurnOf(spot));
  const more = ['stop', 'turn', 'pivot', 'hold'] as const;
  const all = [...list, ...turned].map((spot, i) => ({
    ...spot,
    rank: i,
    role: `${spot.role}${i < 12 ? '' : 'b'}`,
  }));
  let acts = all.reduce((sum, { acts: own }) => sum + Object.keys(own).length, 0);
  return {
    gear,
    pucks,
    spots: Object.fromEntries(
      all.map((spot, i) => {
        const own = { ...spot.acts };
        const named = Object.fromEntries(
          Object.entries(own).map(([id, act]) => [
            `${id}${i < 12 ? '' : 'b'}`,
            i < 12 ? act : pointedAtB(act),
          ]),
        );
        for (let k = 0; k < 2 && acts < 60 && i % 12 !== 6; k++) {
          const kind = more[(i + k) % 4]!;
          acts++;
          const rank = 10 + k;
          named[`${spot.role}+${k}`] =
            kind === 'turn'
              ? { kind, rank, angleRad: 2, effortRatio: 0.6 }
              : kind === 'hold'
                ? { kind, rank, seconds: 1 }
                : { kind, rank };
        }
        return [spot.role, { ...spot, acts: named }];
      }),
    ),
  };
};

const halfTurnOf = (spot: Spot): Spot => ({
  ...spot,
  atM: at(-spot.atM.xM, -spot.atM.yM),
  facingRad: spot.facingRad + Math.PI,
  acts: Object.fromEntries(
    Object.entries(spot.acts).map(([id, act]) => [
      id,
      'throughM' in act ? { ...act, throughM: act.throughM.map(({ xM, yM }) => at(-xM, -yM)) } : act,
    ]),
  ),
});

/** The act of the second twelve: whom it names is of them too. */
const pointedAtB = (act: Act): Act => {
  if (act.kind === 'pass') return { ...act, toSpot: named(`${act.toSpot}b`) };
  return act.kind === 'gap' || act.kind === 'chase' ? { ...act, whom: named(`${act.whom}b`) } : act;
};

const eightSpots = (): DrillPlan => {
  const plan = busyDrill();
  const kept = Object.entries(plan.spots).filter(([id]) =>
    ['F0', 'F1', 'F2', 'F3', 'F4', 'D0', 'D1', 'C0'].includes(id),
  );
  return { ...plan, spots: Object.fromEntries(kept) };
};

export default async (): Promise<BenchRow[]> => {
  const twelve = busyDrill();
  const eight = eightSpots();
  const many = twentyFourSpots();
  check(run(twelve), 12);
  check(run(eight), 8);
  check(run(many), 24);
  const actCount = Object.values(many.spots).reduce((sum, { acts }) => sum + Object.keys(acts).length, 0);
  if (actCount !== 60) throw new Error(`the drill of 24 spots has ${actCount} acts`);
  const world = rigidWorld();
  const times = {
    cold: [] as number[],
    drag: [] as number[],
    eight: [] as number[],
    many: [] as number[],
    rigid: [] as number[],
  };
  for (let i = -WARM_UP; i < ROUNDS; i++) {
    // A copy shares nothing with what ran before, so nothing that is kept with its parts can be used again.
    const fresh = structuredClone(twelve);
    const twelveMoved = moved(twelve, i);
    const eightMoved = moved(eight, i);
    const manyFresh = structuredClone(many);
    const round = {
      cold: timed(() => run(fresh)),
      rigid: timed(world),
      drag: timed(() => run(twelveMoved)),
      eight: timed(() => run(eightMoved)),
      many: timed(() => run(manyFresh)),
    };
    if (i < 0) continue;
    for (const key of ['cold', 'drag', 'eight', 'many', 'rigid'] as const) times[key].push(round[key]);
  }
  const ratio = (ms: readonly number[]): number[] => times.rigid.map((rigidMs, i) => rigidMs / ms[i]!);
  return [
    budget('a run: 12 skaters, 20 s at 120 Hz, nothing kept from before', times.cold, 4),
    budget('the same after one spot was moved, each in turn', times.drag, 4),
    budget('a run: 8 spots of it, one moved, as on every pointer move', times.eight, 4),
    budget('a run: 24 spots, 60 acts, 20 s, nothing kept: the same for each skater', times.many, 8),
    against('nothing kept', ratio(times.cold), times.rigid),
    against('one spot moved', ratio(times.drag), times.rigid),
  ];
};

const WARM_UP = 8;

/** The drill with one spot a little to the side; every other part is the same object, as after a drag. */
const moved = (plan: DrillPlan, round: number): DrillPlan => {
  const ids = Object.keys(plan.spots) as SpotId[];
  const id = ids[Math.abs(round) % ids.length]!;
  const spot = plan.spots[id]!;
  const atM = at(spot.atM.xM + 0.01 * round, spot.atM.yM);
  return { ...plan, spots: { ...plan.spots, [id]: { ...spot, atM } } };
};

const against = (what: string, ratios: readonly number[], rigidMs: readonly number[]): BenchRow => ({
  name: `a run against a rigid-body engine (planck), 13 discs, same steps: ${what}`,
  bar: '≥ 5 ×',
  median: median(ratios),
  spread: spreadOf(ratios),
  unit: '×',
  meets: median(ratios) >= 5,
  note: `planck ${median(rigidMs).toFixed(1)} ms, its faster half ${fasterHalf(rigidMs).toFixed(1)} ms`,
});

const memory = runMemory();
const rink = rinkOf({ preset: '200x85ft' });
const level = levelOf('collegeWomen');

/** As the app does at every change. */
const run = (plan: DrillPlan): Run => {
  const playable = playableOf(plan, rink, level);
  if (playable.kind !== 'playable') throw new Error(JSON.stringify(playable.issues));
  return runDrill(playable, { limitS: SECONDS, memory });
};

const check = (done: Run, spots: number): void => {
  const last = done.tracks.at(-1)!;
  const ok =
    done.sampleCount === STEPS + 1 &&
    done.tracks.length === spots &&
    done.events.some(event => event.kind === 'pass') &&
    done.tracks.every(track => Number.isFinite(track.xM[STEPS]! + track.yM[STEPS]!)) &&
    last.distanceM > 5;
  if (!ok) throw new Error(`the busy drill ran ${done.sampleCount} samples with ${done.tracks.length} spots`);
};

/** Thirteen discs inside the same boards, thrown at skating speeds; each call steps 20 s. */
const rigidWorld = (): (() => void) => {
  const { boards } = rink;
  const world = new World({ gravity: new Vec2(0, 0) });
  const corners = Array.from({ length: 96 }, (_, i) => {
    const { pointM } = boardsPointAtArc(boards, (perimeterOf(boards) * i) / 96);
    return new Vec2(pointM.xM, pointM.yM);
  });
  world.createBody().createFixture({ shape: new Chain(corners, true), restitution: 0.45, friction: 0.25 });
  const discs = Array.from({ length: 13 }, (_, i) => {
    const disc = world.createBody({ type: 'dynamic', position: new Vec2(-24 + 4 * i, (i % 5) * 4 - 8) });
    disc.createFixture({ shape: new Circle(i < 12 ? 0.4 : 0.0381), density: 1, restitution: 0.45 });
    return disc;
  });
  return () => {
    discs.forEach((disc, i) => {
      disc.setTransform(new Vec2(-24 + 4 * i, (i % 5) * 4 - 8), 0);
      disc.setLinearVelocity(new Vec2(6 * Math.cos(i), 6 * Math.sin(i)));
    });
    for (let step = 0; step < STEPS; step++) world.step(1 / 120, 8, 3);
    if (!discs.every(disc => Number.isFinite(disc.getPosition().x))) throw new Error('a disc was lost');
  };
};

/** Processor time, milliseconds: what others do on the machine does not count. */
const timed = (work: () => unknown): number => {
  const from = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(from);
  return (user + system) / 1000;
};

const budget = (name: string, ms: readonly number[], mostMs: number): BenchRow => ({
  name,
  bar: `≤ ${mostMs} ms`,
  median: median(ms),
  spread: spreadOf(ms),
  unit: 'ms',
  meets: median(ms) <= mostMs,
  note: `processor time; the faster half ${fasterHalf(ms).toFixed(2)} ms`,
});

const sorted = (values: readonly number[]): number[] => [...values].sort((a, b) => a - b);
const median = (values: readonly number[]): number => sorted(values)[values.length >> 1]!;
/** Median of the faster half: what the machine does when others leave it alone. */
const fasterHalf = (values: readonly number[]): number => sorted(values)[values.length >> 2]!;
const spreadOf = (values: readonly number[]): string => {
  const all = sorted(values);
  const low = all[Math.floor(all.length * 0.1)]!;
  const high = all[Math.floor(all.length * 0.9)]!;
  return `${low.toFixed(2)} to ${high.toFixed(2)}`;
};
