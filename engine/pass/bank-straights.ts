import { type BankLooks, SMALLEST_CELL_M } from './bank-looks.ts';
import type { BankShot } from './bank-shot.ts';

/** Numbers of a straight in the block, in this order. */
const ARC = 0;
const X = 1;
const Y = 2;
const OUT_X = 3;
const OUT_Y = 4;
const SPEED = 5;
const TIME = 6;
const STOP = 7;
const NUMBERS = 8;

/** So many straights are enough for any search, and few enough to keep; with more, all are followed anew. */
const MOST_KEPT = 1 << 14;
const FIRST_ROOM = 512;
const NONE = -1;

/**
 * The puck's straights after the last bounce of shots along the boards, and the cells of the boards between them: each is followed once however many
 * receivers are looked at, for nothing of it depends on the receiver. Both are numbers of rows in blocks: as objects of their own they would be
 * most of the garbage of a search, and all of what is kept after it.
 */
export class BankStraights {
  /** False when the puck does not come to that bounce in time; what follows of the straight has then no meaning. */
  private isValid = new Uint8Array(FIRST_ROOM);
  private numbers = new Float64Array(FIRST_ROOM * NUMBERS);
  private count = 0;
  /** The straights a cell lies between, and the first of its two halves once they were asked for. */
  private cellEnds = new Int32Array(2 * FIRST_ROOM);
  private cellHalves = new Int32Array(FIRST_ROOM);
  /** Of the cells in which the puck's way changes too much. */
  private cellTurns = new Uint8Array(FIRST_ROOM);
  private cellCount = 0;
  private readonly firstStraights: Int32Array;
  private readonly firstCells: Int32Array;

  constructor(
    readonly shot: BankShot,
    readonly looks: BankLooks,
    readonly bounceCount: 1 | 2,
    readonly maxTimeS: number,
  ) {
    this.firstStraights = new Int32Array(looks.arcsM.length).fill(NONE);
    this.firstCells = new Int32Array(looks.arcsM.length).fill(NONE);
  }

  /** Before each search: what is kept does not grow without end. */
  begin(): void {
    if (this.count < MOST_KEPT) return;
    this.count = 0;
    this.cellCount = 0;
    this.firstStraights.fill(NONE);
    this.firstCells.fill(NONE);
  }

  /** Follows the shot at that place to its last bounce; false when it does not come there in time. */
  trace(arcM: number): boolean {
    const { shot } = this;
    if (!shot.first(arcM)) return false;
    for (let bounce = 1; bounce < this.bounceCount; bounce++) if (!shot.next()) return false;
    return shot.timeS < this.maxTimeS;
  }

  /** The cell before place `index` of the looks, 1 or more. */
  cellBefore(index: number): number {
    const kept = this.firstCells[index]!;
    if (kept !== NONE) return kept;
    const cell = this.addCell(this.at(index - 1), this.at(index));
    this.firstCells[index] = cell;
    return cell;
  }

  /** The first of the two halves of a cell; the second comes after it. */
  halfOf(cell: number): number {
    const kept = this.cellHalves[cell]!;
    if (kept !== NONE) return kept;
    const from = this.fromOf(cell);
    const to = this.toOf(cell);
    const middle = this.follow((this.arcM(from) + this.arcM(to)) / 2);
    const half = this.addCell(from, middle);
    this.addCell(middle, to);
    this.cellHalves[cell] = half;
    return half;
  }

  fromOf(cell: number): number {
    return this.cellEnds[2 * cell]!;
  }

  toOf(cell: number): number {
    return this.cellEnds[2 * cell + 1]!;
  }

  /** Sets the shot to the end of its last bounce, as `trace` does, and gives how long the puck slides on from there if nothing is in its way. */
  standOn(straight: number): number {
    const { shot, numbers } = this;
    const at = straight * NUMBERS;
    shot.xM = numbers[at + X]!;
    shot.yM = numbers[at + Y]!;
    shot.outX = numbers[at + OUT_X]!;
    shot.outY = numbers[at + OUT_Y]!;
    shot.speedMps = numbers[at + SPEED]!;
    shot.timeS = numbers[at + TIME]!;
    return numbers[at + STOP]!;
  }

  valid(straight: number): boolean {
    return this.isValid[straight] === 1;
  }

  arcM(straight: number): number {
    return this.numbers[straight * NUMBERS + ARC]!;
  }

  speedMps(straight: number): number {
    return this.numbers[straight * NUMBERS + SPEED]!;
  }

  widthM(cell: number): number {
    return this.arcM(this.toOf(cell)) - this.arcM(this.fromOf(cell));
  }

  /** Whether the puck's way changes too much within a cell for anything to be said of what lies between its ends. */
  turnsTooFar(cell: number): boolean {
    return this.cellTurns[cell] === 1;
  }

  /** Cosine of the angle between the two ways out at the ends of a cell. */
  turnCos(cell: number): number {
    const { numbers } = this;
    const from = this.fromOf(cell) * NUMBERS;
    const to = this.toOf(cell) * NUMBERS;
    return numbers[from + OUT_X]! * numbers[to + OUT_X]! + numbers[from + OUT_Y]! * numbers[to + OUT_Y]!;
  }

  /** How far apart the two last bounces at the ends of a cell are, metres, along both axes together. */
  movedM(cell: number): number {
    const { numbers } = this;
    const from = this.fromOf(cell) * NUMBERS;
    const to = this.toOf(cell) * NUMBERS;
    return Math.abs(numbers[from + X]! - numbers[to + X]!) + Math.abs(numbers[from + Y]! - numbers[to + Y]!);
  }

  private at(index: number): number {
    const kept = this.firstStraights[index]!;
    if (kept !== NONE) return kept;
    const straight = this.follow(this.looks.arcsM[index]!);
    this.firstStraights[index] = straight;
    return straight;
  }

  private follow(arcM: number): number {
    const { shot } = this;
    const straight = this.count++;
    if (straight === this.isValid.length) {
      this.isValid = withRoom(this.isValid, new Uint8Array(2 * straight));
      this.numbers = withRoom(this.numbers, new Float64Array(2 * straight * NUMBERS));
    }
    const { numbers } = this;
    const valid = this.trace(arcM);
    const at = straight * NUMBERS;
    this.isValid[straight] = valid ? 1 : 0;
    numbers[at + ARC] = arcM;
    numbers[at + X] = shot.xM;
    numbers[at + Y] = shot.yM;
    numbers[at + OUT_X] = shot.outX;
    numbers[at + OUT_Y] = shot.outY;
    numbers[at + SPEED] = shot.speedMps;
    numbers[at + TIME] = shot.timeS;
    numbers[at + STOP] = valid ? shot.slide.stopTime(shot.speedMps) : 0;
    return straight;
  }

  private addCell(from: number, to: number): number {
    const cell = this.cellCount++;
    if (cell === this.cellHalves.length) {
      this.cellHalves = withRoom(this.cellHalves, new Int32Array(2 * cell));
      this.cellEnds = withRoom(this.cellEnds, new Int32Array(4 * cell));
      this.cellTurns = withRoom(this.cellTurns, new Uint8Array(2 * cell));
    }
    this.cellEnds[2 * cell] = from;
    this.cellEnds[2 * cell + 1] = to;
    this.cellHalves[cell] = NONE;
    this.cellTurns[cell] = this.turns(cell) ? 1 : 0;
    return cell;
  }

  /** What `turnsTooFar` says, found once: nothing of it depends on a receiver. */
  private turns(cell: number): boolean {
    const widthM = this.widthM(cell);
    if (widthM <= SMALLEST_CELL_M) return false;
    const isFrom = this.valid(this.fromOf(cell));
    if (isFrom !== this.valid(this.toOf(cell))) return true;
    if (!isFrom || widthM <= SMALLEST_CELL_M * 10) return false;
    return (
      this.turnCos(cell) < CELL_TURN_COS || (this.bounceCount > 1 && this.movedM(cell) > CELL_LAST_BOUNCE_M)
    );
  }
}

const withRoom = <Numbers extends Uint8Array | Int32Array | Float64Array>(
  from: Numbers,
  into: Numbers,
): Numbers => {
  into.set(from);
  return into;
};

/** A cell turns the puck's way out by less than this. */
const CELL_TURN_COS = Math.cos(0.3);
/** How far the place of the last bounce may move within a cell when there are two. */
const CELL_LAST_BOUNCE_M = 2;
