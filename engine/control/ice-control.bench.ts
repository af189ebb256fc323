import type { BenchRow } from '../../cli/bench-row.ts';
import { puckModelOf } from '../puck/puck-model.ts';
import { slideTimeAtDistance, slowingOf } from '../puck/slide.ts';
import { randomOf } from '../random/random.ts';
import { boardsOf } from '../rink/boards.ts';
import { controlAt } from '../skater/control-at.ts';
import { timeTo } from '../skater/reach.ts';
import { iceControl } from './ice-control.ts';
import { cellMiddle, iceGridOf } from './ice-grid.ts';
import { someContestants } from './some-contest.reference.ts';

const ROUNDS = 60;
const BUDGET_MS = 8;

/** Half-metre cells, ten skaters and two goalies on the move: arrival times and the control of every cell. */
const bench = async (): Promise<BenchRow[]> => {
  const grid = iceGridOf(boardsOf(60.96, 25.908, 8.5344), 0.5);
  const model = puckModelOf();
  const random = randomOf(12);
  const contests = Array.from({ length: 6 }, () => ({
    puckM: { xM: -6, yM: 3 },
    passSpeedMps: 13,
    model,
    contestants: someContestants(random),
  }));
  let worst = 0;
  for (const contest of contests) {
    const control = iceControl(grid, contest);
    for (let cell = 0; cell < control.us.length; cell += 97) {
      if (Number.isNaN(control.us[cell]!)) continue;
      const at = cellMiddle(grid, cell);
      const entries = contest.contestants.map(one => {
        const time = timeTo(one.state, one.power, at);
        return { ...one, arrivalS: typeof time === 'number' ? time : Number.POSITIVE_INFINITY };
      });
      const apart = Math.hypot(at.xM - contest.puckM.xM, at.yM - contest.puckM.yM);
      const exact = controlAt(entries, slideTimeAtDistance(slowingOf(model), 13, apart), 10);
      worst = Math.max(worst, Math.abs(exact.us - control.us[cell]!));
    }
  }
  if (!(worst < 2e-3)) throw new Error(`ice control is off by ${worst}, so its time says nothing`);

  let kept = 0;
  const timesMs: number[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    const contest = contests[round % contests.length]!;
    const start = performance.now();
    kept += iceControl(grid, contest).us[3000]!;
    timesMs.push(performance.now() - start);
  }
  const sorted = timesMs.slice(ROUNDS / 6).sort((one, other) => one - other);
  const median = sorted[sorted.length >> 1]!;
  return [
    {
      name: 'ice control, 0.5 m cells, 12 skaters',
      bar: `≤ ${BUDGET_MS} ms`,
      median,
      spread: `${sorted[0]!.toFixed(1)} to ${sorted.at(-1)!.toFixed(1)}`,
      unit: 'ms',
      meets: median <= BUDGET_MS,
      note: `${grid.columnCount} × ${grid.rowCount} cells; within ${worst.toExponential(1)} of the exact integral (${Number.isNaN(kept) ? 'outside' : 'inside'} cell kept)`,
    },
  ];
};

export default bench;
