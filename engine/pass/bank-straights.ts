import { type BankLooks, SMALLEST_CELL_M } from './bank-looks.ts';
import type { BankShot } from './bank-shot.ts';

/** The puck's straight after the last bounce of a shot at one place of the boards: nothing of it depends on the receiver. */
export interface Straight {
  readonly arcM: number;
  /** False when the puck does not come to that bounce in time; what follows has then no meaning. */
  readonly valid: boolean;
  /** Place of the last bounce, direction out of it, speed there, and when (seconds from the release). */
  readonly xM: number;
  readonly yM: number;
  readonly outX: number;
  readonly outY: number;
  readonly speedMps: number;
  readonly timeS: number;
  /** How long the puck slides on from there, if nothing is in its way. */
  readonly stopS: number;
}

/** A part of the boards between two straights, and its halves once they were asked for. */
export interface Cell {
  readonly from: Straight;
  readonly to: Straight;
  readonly widthM: number;
  halves: readonly [Cell, Cell] | null;
}

/** Smaller cells are each receiver's own, and there would be no end of them: metres of the boards. */
const KEPT_CELL_M = 0.1;

/** The straights along the boards, each followed once however many receivers are looked at. */
export class BankStraights {
  private readonly first: (Straight | undefined)[] = [];
  private readonly cells: (Cell | undefined)[] = [];

  constructor(
    readonly shot: BankShot,
    readonly looks: BankLooks,
    readonly bounceCount: 1 | 2,
    readonly maxTimeS: number,
  ) {}

  /** Follows the shot at that place to its last bounce; false when it does not come there in time. */
  trace(arcM: number): boolean {
    const { shot } = this;
    if (!shot.first(arcM)) return false;
    for (let bounce = 1; bounce < this.bounceCount; bounce++) if (!shot.next()) return false;
    return shot.timeS < this.maxTimeS;
  }

  at(index: number): Straight {
    return (this.first[index] ??= this.follow(this.looks.arcsM[index]!));
  }

  /** The cell before place `index` of the looks, 1 or more. */
  cellBefore(index: number): Cell {
    return (this.cells[index] ??= cellOf(this.at(index - 1), this.at(index)));
  }

  halvesOf(cell: Cell): readonly [Cell, Cell] {
    if (cell.halves) return cell.halves;
    const middle = this.follow((cell.from.arcM + cell.to.arcM) / 2);
    const halves = [cellOf(cell.from, middle), cellOf(middle, cell.to)] as const;
    if (cell.widthM > KEPT_CELL_M) cell.halves = halves;
    return halves;
  }

  private follow(arcM: number): Straight {
    const { shot } = this;
    const valid = this.trace(arcM);
    const { xM, yM, outX, outY, speedMps, timeS } = shot;
    const stopS = valid ? shot.slide.stopTime(speedMps) : 0;
    return { arcM, valid, xM, yM, outX, outY, speedMps, timeS, stopS };
  }
}

const cellOf = (from: Straight, to: Straight): Cell => ({
  from,
  to,
  widthM: to.arcM - from.arcM,
  halves: null,
});

/** A cell turns the puck's way out by less than this. */
const CELL_TURN_COS = Math.cos(0.3);
/** How far the place of the last bounce may move within a cell when there are two. */
const CELL_LAST_BOUNCE_M = 2;

/** Whether the puck's way changes too much within a cell for anything to be said of what lies between its ends. */
export const turnsTooFar = ({ from, to, widthM }: Cell, bounceCount: 1 | 2): boolean => {
  if (widthM <= SMALLEST_CELL_M) return false;
  if (from.valid !== to.valid) return true;
  if (!from.valid || widthM <= SMALLEST_CELL_M * 10) return false;
  return turnCosOf(from, to) < CELL_TURN_COS || (bounceCount > 1 && movedM(from, to) > CELL_LAST_BOUNCE_M);
};

/** Cosine of the angle between two ways out. */
export const turnCosOf = (from: Straight, to: Straight): number => from.outX * to.outX + from.outY * to.outY;

/** How far apart two last bounces are, metres, along both axes together. */
export const movedM = (from: Straight, to: Straight): number =>
  Math.abs(from.xM - to.xM) + Math.abs(from.yM - to.yM);
