import type { PuckModel } from '../puck/puck-model.ts';
import { Sliding } from '../puck/sliding.ts';
import { nearestBoardsPoint } from '../rink/along-boards.ts';
import { type Boards, boardsDistance, cornerCentreOf, insetBoards, perimeterOf } from '../rink/boards.ts';
import type { IcePoint } from '../units/points.ts';

const QUARTER_RAD = Math.PI / 2;

/**
 * A shot at one place of the boards and on over n bounces. The boards as the puck's centre sees them (inset by its radius)
 * are convex, so every place on them belongs to exactly one launch direction: arc length is the unknown of the bank
 * solver. This is its inner loop: fields instead of returned objects, so that nothing is allocated.
 */
export class BankShot {
  readonly perimeterM: number;
  /** Arc length at which each of the eight parts starts (as `BOARDS_PARTS`), and the end. */
  readonly partStartsM: readonly number[];
  readonly fromM: IcePoint;
  readonly puckRadiusM: number;
  readonly slide: Sliding;

  /** Last bounce of the last trace: centre, inward normal, part, unit direction out, speed out, time. */
  xM = 0;
  yM = 0;
  normalX = 0;
  normalY = 0;
  part = 0;
  outX = 0;
  outY = 0;
  speedMps = 0;
  timeS = 0;
  /** Into-boards and along-boards speeds of the last bounce, in and out. */
  intoMps = 0;
  alongMps = 0;
  awayMps = 0;
  alongOutMps = 0;
  private edgeMps = 0;

  private readonly halfLength: number;
  private readonly halfWidth: number;
  private readonly cornerX: number;
  private readonly cornerY: number;
  private readonly radius: number;

  constructor(
    boards: Boards,
    private readonly model: PuckModel,
    passerM: IcePoint,
    private readonly launchSpeedMps: number,
  ) {
    const centreBoards = insetBoards(boards, model.puckRadiusM);
    const corner = cornerCentreOf(centreBoards);
    this.halfLength = centreBoards.lengthM / 2;
    this.halfWidth = centreBoards.widthM / 2;
    this.cornerX = corner.xM;
    this.cornerY = corner.yM;
    this.radius = centreBoards.cornerRadiusM;
    this.puckRadiusM = model.puckRadiusM;
    this.perimeterM = perimeterOf(centreBoards);
    const arcM = QUARTER_RAD * this.radius;
    const starts = [0];
    for (let part = 0; part < 8; part++) {
      const side = part % 4 === 0 ? 2 * this.cornerY : 2 * this.cornerX;
      starts.push(starts[part]! + (part % 2 === 0 ? side : arcM));
    }
    this.partStartsM = starts;
    this.fromM =
      boardsDistance(centreBoards, passerM) >= 0 ? passerM : nearestBoardsPoint(centreBoards, passerM).pointM;
    this.slide = new Sliding(model.frictionRatio * model.gravityMps2, model.dragPerM);
  }

  /**
   * Follows the shot at arc length `arcM` (0 … perimeter) to its first bounce. False when the puck does not get there or
   * leads along the boards.
   */
  first(arcM: number): boolean {
    this.placeAt(arcM);
    const dx = this.xM - this.fromM.xM;
    const dy = this.yM - this.fromM.yM;
    const distance = Math.sqrt(dx * dx + dy * dy);
    if (distance < 1e-9) return false;
    this.outX = dx / distance;
    this.outY = dy / distance;
    this.speedMps = this.launchSpeedMps;
    this.timeS = 0;
    this.edgeMps = 0;
    return this.arrive(distance);
  }

  /** From the last bounce to the next one. False when the puck stops before. */
  next(): boolean {
    return this.arrive(this.toBoards());
  }

  /** Distance from the last bounce to the next boards along the way out, metres; moves the place there. */
  private toBoards(): number {
    const dx = this.outX;
    const dy = this.outY;
    const signX = dx < 0 ? -1 : 1;
    const signY = dy < 0 ? -1 : 1;
    const toEnd = dx === 0 ? Number.POSITIVE_INFINITY : (this.halfLength - signX * this.xM) / Math.abs(dx);
    const toSide = dy === 0 ? Number.POSITIVE_INFINITY : (this.halfWidth - signY * this.yM) / Math.abs(dy);
    const toBox = Math.min(toEnd, toSide);
    const exitX = this.xM + dx * toBox;
    const exitY = this.yM + dy * toBox;
    if (toEnd <= toSide && Math.abs(exitY) <= this.cornerY) {
      this.stand(signX * this.halfLength, exitY, -signX, 0, signX > 0 ? 0 : 4);
      return toBox;
    }
    if (toSide < toEnd && Math.abs(exitX) <= this.cornerX) {
      this.stand(exitX, signY * this.halfWidth, 0, -signY, signY > 0 ? 2 : 6);
      return toBox;
    }
    const atX = exitX < 0 ? -1 : 1;
    const atY = exitY < 0 ? -1 : 1;
    const fromX = this.xM - atX * this.cornerX;
    const fromY = this.yM - atY * this.cornerY;
    const passes = fromX * dy - fromY * dx;
    const half = Math.sqrt(Math.max(0, (this.radius - passes) * (this.radius + passes)));
    const distance = Math.max(0, half - (fromX * dx + fromY * dy));
    const x = fromX + dx * distance;
    const y = fromY + dy * distance;
    const length = Math.sqrt(x * x + y * y) || 1;
    const part = atX > 0 ? (atY > 0 ? 1 : 7) : atY > 0 ? 3 : 5;
    this.stand(this.xM + dx * distance, this.yM + dy * distance, -x / length, -y / length, part);
    return distance;
  }

  /** How far the way out of the last bounce leads before the next boards, metres. Keeps the place. */
  freeWayM(): number {
    const { xM, yM, normalX, normalY, part } = this;
    const distance = this.toBoards();
    this.stand(xM, yM, normalX, normalY, part);
    return distance;
  }

  private arrive(distanceM: number): boolean {
    if (!this.slide.over(this.speedMps, distanceM)) return false;
    const speed = this.slide.speedMps;
    this.timeS += this.slide.timeS;
    const into = -speed * (this.outX * this.normalX + this.outY * this.normalY);
    if (!(into > 1e-12 * speed)) return false;
    const along = speed * (this.outX * this.normalY - this.outY * this.normalX);
    const { restitutionRatio: e, boardFrictionRatio } = this.model;
    const slip = along + this.edgeMps;
    const push = Math.sign(slip) * Math.min(boardFrictionRatio * (1 + e) * into, Math.abs(slip) / 3);
    const away = e * into;
    const alongOut = along - push;
    const speedOut = Math.sqrt(away * away + alongOut * alongOut);
    this.edgeMps -= 2 * push;
    this.intoMps = into;
    this.alongMps = along;
    this.awayMps = away;
    this.alongOutMps = alongOut;
    this.speedMps = speedOut;
    if (!(speedOut > 0)) return false;
    this.outX = (away * this.normalX + alongOut * this.normalY) / speedOut;
    this.outY = (away * this.normalY - alongOut * this.normalX) / speedOut;
    return true;
  }

  private placeAt(arcM: number): void {
    const starts = this.partStartsM;
    let part = 0;
    while (part < 7 && arcM >= starts[part + 1]!) part++;
    const into = arcM - starts[part]!;
    if (part === 0) this.stand(this.halfLength, into - this.cornerY, -1, 0, part);
    else if (part === 2) this.stand(this.cornerX - into, this.halfWidth, 0, -1, part);
    else if (part === 4) this.stand(-this.halfLength, this.cornerY - into, 1, 0, part);
    else if (part === 6) this.stand(into - this.cornerX, -this.halfWidth, 0, 1, part);
    else {
      const atRad = ((part - 1) / 2) * QUARTER_RAD + into / this.radius;
      const cos = Math.cos(atRad);
      const sin = Math.sin(atRad);
      const centreX = part === 1 || part === 7 ? this.cornerX : -this.cornerX;
      const centreY = part === 1 || part === 3 ? this.cornerY : -this.cornerY;
      this.stand(centreX + this.radius * cos, centreY + this.radius * sin, -cos, -sin, part);
    }
  }

  private stand(xM: number, yM: number, normalX: number, normalY: number, part: number): void {
    this.xM = xM;
    this.yM = yM;
    this.normalX = normalX;
    this.normalY = normalY;
    this.part = part;
  }
}
