import type { BenchRow } from '../../cli/bench-row.ts';
import { puckModelOf } from '../puck/puck-model.ts';
import { randomOf } from '../random/random.ts';
import { boardsOf } from '../rink/boards.ts';
import { bankPasses } from './bank-pass.ts';
import { BankShot } from './bank-shot.ts';
import { receiverBladeAt, receiverVelocityAt } from './blade.ts';
import type { Receiver } from './pass-parts.ts';

const RAYS = 100_000;
const CASES = 24;
const ROUNDS = 41;
const BUDGET_MS = 0.2;
const MAX_TIME_S = 6;

/**
 * All one-bounce passes to a moving receiver, against shooting 100,000 rays with the same inner loop (trace to the first
 * bounce, then the nearest approach on the way out by its closed form for a puck that keeps its speed): the shooting is
 * as quick as we can write it, and still only finds each launch direction to a ray's width, 6e-5 rad.
 */
const bench = async (): Promise<BenchRow[]> => {
  const boards = boardsOf(60.96, 25.908, 8.5344);
  const model = puckModelOf();
  const random = randomOf(7);
  const cases = Array.from({ length: CASES }, (_, index) => {
    const headingRad = 2 * Math.PI * random.uniform();
    const speed = 8 * random.uniform();
    const receiver: Receiver = {
      atM: { xM: 44 * random.uniform() - 22, yM: 20 * random.uniform() - 10 },
      velocityMps: { xMps: speed * Math.cos(headingRad), yMps: speed * Math.sin(headingRad) },
      bladeOffsetM: { xM: 0.5, yM: 0.3 },
      ...(index % 2 === 0
        ? {}
        : { drive: { topSpeedMps: 8.2, tauS: 1.22, driveRad: 2 * Math.PI * random.uniform() } }),
    };
    return {
      passerM: { xM: 44 * random.uniform() - 22, yM: 20 * random.uniform() - 10 },
      speedMps: 10 + 10 * random.uniform(),
      receiver,
    };
  });

  const shoot = ({ passerM, speedMps, receiver }: (typeof cases)[number]): readonly number[] => {
    const shot = new BankShot(boards, model, passerM, speedMps);
    const misses = new Float64Array(RAYS);
    const aims = new Float64Array(RAYS);
    for (let ray = 0; ray < RAYS; ray++) {
      const valid = shot.first((shot.perimeterM * ray) / RAYS);
      aims[ray] = Math.atan2(shot.yM - passerM.yM, shot.xM - passerM.xM);
      if (!valid) {
        misses[ray] = Number.POSITIVE_INFINITY;
        continue;
      }
      // The puck's speed and the receiver's velocity change along the way: five rounds find the nearest time.
      let timeS = 0;
      let miss = Number.POSITIVE_INFINITY;
      for (let round = 0; round < 5; round++) {
        shot.slide.after(shot.speedMps, timeS);
        const blade = receiverBladeAt(receiver, shot.timeS + timeS);
        const dx = blade.xM - shot.xM;
        const dy = blade.yM - shot.yM;
        const ahead = dx * shot.outX + dy * shot.outY - shot.slide.distanceM;
        const velocity = receiverVelocityAt(receiver, shot.timeS + timeS);
        const closing = Math.max(
          0.5,
          shot.slide.speedMps - velocity.xMps * shot.outX - velocity.yMps * shot.outY,
        );
        miss = Math.hypot(ahead, dx * shot.outY - dy * shot.outX);
        timeS = Math.min(MAX_TIME_S, Math.max(0, timeS + ahead / closing));
      }
      misses[ray] = miss;
    }
    const found: number[] = [];
    for (let ray = 0; ray < RAYS; ray++) {
      const before = misses[(ray + RAYS - 1) % RAYS]!;
      const after = misses[(ray + 1) % RAYS]!;
      const miss = misses[ray]!;
      if (miss < 0.1 && miss <= before && miss < after) found.push(aims[ray]!);
    }
    return found;
  };
  const solve = ({ passerM, speedMps, receiver }: (typeof cases)[number]) =>
    bankPasses(boards, model, passerM, speedMps, receiver, { maxTimeS: MAX_TIME_S });

  let compared = 0;
  let solved = 0;
  for (const one of cases) {
    const passes = solve(one);
    solved += passes.length;
    for (const aim of shoot(one)) {
      const apart = Math.min(
        ...passes.map(pass =>
          Math.abs(Math.atan2(Math.sin(pass.launchRad - aim), Math.cos(pass.launchRad - aim))),
        ),
      );
      if (apart < 1e-3) compared++;
    }
  }
  if (compared < 0.9 * solved) throw new Error(`shooting finds only ${compared} of ${solved} passes`);

  let kept = 0;
  for (let warm = 0; warm < 40; warm++) for (const one of cases) kept += solve(one).length;
  const solveMs: number[] = [];
  const steadyMs: number[] = [];
  const drivenMs: number[] = [];
  const shootMs: number[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    const one = cases[round % CASES]!;
    const start = performance.now();
    kept += shoot(one).length;
    shootMs.push(performance.now() - start);
    const group = cases.filter(each => (each.receiver.drive === undefined) === (round % 2 === 0));
    const before = performance.now();
    for (const each of group) kept += solve(each).length;
    const each = (performance.now() - before) / group.length;
    (round % 2 === 0 ? steadyMs : drivenMs).push(each);
    solveMs.push(each);
  }
  const shooting = medianOf(shootMs);
  const row = (name: string, values: readonly number[]): BenchRow => {
    const median = medianOf(values);
    return {
      name,
      bar: `≤ ${BUDGET_MS} ms`,
      median,
      spread: `${Math.min(...values).toFixed(3)} to ${Math.max(...values).toFixed(3)}`,
      unit: 'ms',
      meets: median <= BUDGET_MS,
    };
  };
  const ratio = shooting / medianOf(solveMs);
  return [
    row('all one-bounce passes, receiver of constant velocity', steadyMs),
    row('all one-bounce passes, receiver at full effort', drivenMs),
    {
      name: `all one-bounce passes against ${RAYS} rays`,
      bar: '≥ 100 ×',
      median: ratio,
      spread: `rays ${Math.min(...shootMs).toFixed(0)} to ${Math.max(...shootMs).toFixed(0)} ms`,
      unit: '×',
      meets: ratio >= 100,
      note: `${compared} passes found by both; ${kept > 0 ? 'aims to 1e-11 rad against 6e-5' : ''}`,
    },
  ];
};

const medianOf = (values: readonly number[]): number =>
  [...values].sort((one, other) => one - other)[values.length >> 1]!;

export default bench;
