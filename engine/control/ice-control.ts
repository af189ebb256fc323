import type { PuckModel } from '../puck/puck-model.ts';
import { Sliding } from '../puck/sliding.ts';
import type { Contestant } from '../skater/contestant.ts';
import { LOGISTIC_PER_SD } from '../skater/control-at.ts';
import { RACE_ROWS } from '../skater/race-rows.ts';
import type { IcePoint } from '../units/points.ts';
import { arrivalField } from './arrival-field.ts';
import type { IceGrid } from './ice-grid.ts';

/** Where the puck is, how it would be sent, and who races for it. */
export interface Contest {
  readonly puckM: IcePoint;
  readonly passSpeedMps: number;
  readonly model: PuckModel;
  readonly contestants: readonly Contestant[];
  readonly horizonS?: number;
}

export interface IceControl {
  readonly grid: IceGrid;
  /** Chance that we get a puck sent to the cell, 0–1; NaN outside the boards and where that pass does not reach. */
  readonly us: Float64Array;
  readonly them: Float64Array;
  /** Arrival of each contestant at each cell, s. */
  readonly arrivalsS: readonly Float64Array[];
}

/**
 * Ice control: for every cell the chance that we, and that they, get first to a puck sent there (Spearman 2018, with the
 * arrival times of the reach disc and the slide of the puck). The law of `controlAt` in steps: within a step the free
 * puck's share goes to the sides as their hazards do, so the sides always add up; within 0.002 of `controlAt` (tested).
 * A puck is sent to each cell at `passSpeedMps`; cells it cannot reach before it stops are NaN.
 */
export const iceControl = (grid: IceGrid, contest: Contest): IceControl => {
  const { contestants, puckM, passSpeedMps, model } = contest;
  const horizonS = contest.horizonS ?? RACE_ROWS.horizonS.value;
  const arrivalsS = contestants.map(one => arrivalField(grid, one.state, one.power));
  const cellCount = grid.inside.length;
  const us = new Float64Array(cellCount).fill(Number.NaN);
  const them = new Float64Array(cellCount).fill(Number.NaN);
  const slide = new Sliding(model.frictionRatio * model.gravityMps2, model.dragPerM);
  const race = new CellRace(contestants);
  for (let cell = 0; cell < cellCount; cell++) {
    if (grid.inside[cell] === 0) continue;
    const column = cell % grid.columnCount;
    const dx = grid.firstM.xM + column * grid.cellM - puckM.xM;
    const dy = grid.firstM.yM + ((cell - column) / grid.columnCount) * grid.cellM - puckM.yM;
    if (!slide.over(passSpeedMps, Math.sqrt(dx * dx + dy * dy))) continue;
    race.run(arrivalsS, cell, slide.timeS, horizonS);
    us[cell] = race.us;
    them[cell] = race.them;
  }
  return { grid, us, them, arrivalsS };
};

/** Who comes later than the first (or than the puck) by this many spreads and mean control times finds the puck gone. */
const TOO_LATE_TIMES = 4.5;
/** Steps begin this many spreads before the first arrival: the hazard before is about a hundredth, and is taken in the first. */
const EARLY_SPREADS = 2;
const FREE_ENOUGH = 1.5e-3;
/** Each step takes about this much of ∫hazard. */
const STEP_HAZARD = 0.8;
/** The hazard can grow this much from one step to the next; the step allows for it. */
const MOST_GROWTH = 4;
const LONGEST_STEP_S = 0.3;
const SHORTEST_STEP_S = 0.04;

/** The race at one cell after the other, without allocating. */
class CellRace {
  us = 0;
  them = 0;
  private readonly scale: Float64Array;
  private readonly rate: Float64Array;
  private readonly ours: Uint8Array;
  private readonly spread: number;
  private readonly tooLateS: number;
  private readonly arrival: Float64Array;
  private readonly factor: Float64Array;
  private readonly weight: Float64Array;
  private readonly presence: Float64Array;
  private readonly isOurs: Uint8Array;

  constructor(contestants: readonly Contestant[]) {
    const count = contestants.length;
    this.scale = Float64Array.from(contestants, one => LOGISTIC_PER_SD / one.spreadS);
    this.rate = Float64Array.from(contestants, one => (one.controlRatePerS * one.spreadS) / LOGISTIC_PER_SD);
    this.ours = Uint8Array.from(contestants, one => (one.side === 'us' ? 1 : 0));
    this.spread = contestants.reduce((most, one) => Math.max(most, one.spreadS), 0);
    const slowest = contestants.reduce((least, one) => Math.min(least, one.controlRatePerS), Infinity);
    this.tooLateS = TOO_LATE_TIMES * (this.spread + 1 / slowest);
    this.arrival = new Float64Array(count);
    this.factor = new Float64Array(count);
    this.weight = new Float64Array(count);
    this.presence = new Float64Array(count);
    this.isOurs = new Uint8Array(count);
  }

  run(arrivalsS: readonly Float64Array[], cell: number, puckS: number, horizonS: number): void {
    const { arrival, factor, weight, presence, isOurs } = this;
    let firstS = Number.POSITIVE_INFINITY;
    for (const field of arrivalsS) if (field[cell]! < firstS) firstS = field[cell]!;
    const lateS = Math.max(firstS, puckS) + this.tooLateS;
    let count = 0;
    for (let j = 0; j < arrivalsS.length; j++) {
      const at = arrivalsS[j]![cell]!;
      if (!(at < lateS)) continue;
      arrival[count] = at;
      factor[count] = this.scale[j]!;
      weight[count] = this.rate[j]!;
      isOurs[count] = this.ours[j]!;
      presence[count] = softplus(factor[count]! * (puckS - at));
      count++;
    }
    const endS = puckS + horizonS;
    let timeS = Math.max(puckS, firstS - EARLY_SPREADS * this.spread);
    let stepS = puckS < timeS ? LONGEST_STEP_S / 2 : SHORTEST_STEP_S;
    let free = 1;
    let us = 0;
    let shareBefore = -1;
    let takenBefore = 0;
    let rateBefore = 0;
    while (timeS < endS) {
      timeS += stepS;
      if (timeS > endS) timeS = endS;
      let oursTaken = 0;
      let taken = 0;
      for (let j = 0; j < count; j++) {
        const now = softplus(factor[j]! * (timeS - arrival[j]!));
        const gained = weight[j]! * (now - presence[j]!);
        presence[j] = now;
        taken += gained;
        if (isOurs[j] === 1) oursTaken += gained;
      }
      if (!(taken > 0)) continue;
      const left = free * Math.exp(-taken);
      const share = oursTaken / taken;
      // The share drifts while the free puck thins out: to second order as if it ran straight on from the step before.
      const drift = shareBefore < 0 ? 0 : (share - shareBefore) / (taken + takenBefore);
      us += (free - left) * (share - (drift * taken * taken) / 6);
      shareBefore = share;
      takenBefore = taken;
      free = left;
      if (free < FREE_ENOUGH) {
        us += (free * oursTaken) / taken;
        free = 0;
        break;
      }
      const rate = taken / stepS;
      const growth = rateBefore > 0 ? Math.min(MOST_GROWTH, Math.max(1, rate / rateBefore)) : MOST_GROWTH / 2;
      rateBefore = rate;
      const wanted = STEP_HAZARD / (rate * growth);
      stepS = Math.min(LONGEST_STEP_S, Math.max(SHORTEST_STEP_S, wanted));
    }
    this.us = us;
    this.them = 1 - free - us;
  }
}

const TABLE_END = 18;
const TABLE_PER_UNIT = 64;
/** ln(1 + e^x) at every 1/64: a straight line between two of them is within 8e-6. */
const SOFTPLUS = Float64Array.from({ length: 2 * TABLE_END * TABLE_PER_UNIT + 2 }, (_, index) =>
  Math.log1p(Math.exp(index / TABLE_PER_UNIT - TABLE_END)),
);

const softplus = (x: number): number => {
  if (x <= -TABLE_END) return 0;
  if (x >= TABLE_END) return x;
  const at = (x + TABLE_END) * TABLE_PER_UNIT;
  const index = at | 0;
  const low = SOFTPLUS[index]!;
  return low + (at - index) * (SOFTPLUS[index + 1]! - low);
};
