import type { BankShot } from './bank-shot.ts';
import type { BankStraights } from './bank-straights.ts';
import type { Receiver } from './pass-parts.ts';

/** At most this many times at which puck and blade are level along the puck's last straight: see `Meeting`. */
export const SLOTS = 3;

const NEWTON_STEPS = 60;
const TIME_TOLERANCE_S = 1e-13;
/** A driving receiver's way is looked at in steps shorter than its time constant, so that each holds one turn at most. */
const SCAN_STEP_S = 0.8;
/** The blade is inside the boards, so they meet before the next boards; this much more keeps the miss continuous up to there. */
const BEYOND_BOARDS_M = 1;

/**
 * After the last bounce the puck is at D(τ) along its straight; the blade's place has a part along that straight and a part
 * across. Level: along part = D(τ). A root τ of that is a *slot*, and the across part there is its signed miss, which is
 * continuous in the shot's arc length and zero exactly for a pass that meets the blade.
 *
 * Along part − D(τ) is convex in τ for a receiver of constant velocity (the puck only slows), so there is one root at which
 * the puck draws level from behind (slot 0) and one at which the receiver catches a slow puck up (slot 1). A driving
 * receiver can make three; they are found by scanning. Before τ = 0 the straight is continued backwards at its first
 * speed and after the stop the puck lies still, only to keep the miss continuous: such roots are no passes.
 */
export class Meeting {
  readonly has = [false, false, false];
  readonly afterS = [0, 0, 0];
  readonly missM = [0, 0, 0];
  /** Latest τ that can count. */
  capS = 0;

  /** The level time that is looked for, seconds: a field, since a number given back would be an object at every look. */
  private levelS = Number.NaN;
  private alongM = 0;
  private acrossM = 0;
  private alongMps = 0;
  private acrossMps = 0;
  private swingAlong = 0;
  private swingAcross = 0;
  private readonly shot: BankShot;
  private readonly maxTimeS: number;
  private readonly driveX: number;
  private readonly driveY: number;
  private readonly tauS: number;

  constructor(
    private readonly straights: BankStraights,
    private readonly receiver: Receiver,
  ) {
    this.shot = straights.shot;
    this.maxTimeS = straights.maxTimeS;
    const drive = receiver.drive;
    this.driveX = drive ? drive.topSpeedMps * Math.cos(drive.driveRad) : receiver.velocityMps.xMps;
    this.driveY = drive ? drive.topSpeedMps * Math.sin(drive.driveRad) : receiver.velocityMps.yMps;
    this.tauS = drive ? drive.tauS : 1;
  }

  /** Finds the slots for a straight that was followed before. */
  findOn(straight: number): void {
    if (this.receiver.drive) {
      // Where the next boards are is asked too: that takes the whole trace.
      this.straights.trace(this.straights.arcM(straight));
      this.find();
      return;
    }
    this.findUntil(this.straights.standOn(straight));
  }

  /** Finds the slots for where the shot's trace stands now. */
  find(): void {
    const { shot } = this;
    this.findUntil(shot.slide.stopTime(shot.speedMps));
  }

  private findUntil(stopS: number): void {
    const { shot, has } = this;
    has[0] = has[1] = has[2] = false;
    this.capS = Math.min(this.maxTimeS - shot.timeS, stopS);
    this.project();
    const driven = this.receiver.drive !== undefined && (this.swingAlong !== 0 || this.swingAcross !== 0);
    if (driven) this.findDriven();
    else this.findSteady();
  }

  /** The receiver in the axes of the puck's straight, at the time of the last bounce. */
  private project(): void {
    const { shot, receiver, driveX, driveY } = this;
    const { outX, outY, timeS } = shot;
    let x = receiver.atM.xM + receiver.bladeOffsetM.xM - shot.xM + driveX * timeS;
    let y = receiver.atM.yM + receiver.bladeOffsetM.yM - shot.yM + driveY * timeS;
    this.swingAlong = 0;
    this.swingAcross = 0;
    if (receiver.drive) {
      const overX = receiver.velocityMps.xMps - driveX;
      const overY = receiver.velocityMps.yMps - driveY;
      const keeps = Math.exp(-timeS / this.tauS);
      x += overX * this.tauS * (1 - keeps);
      y += overY * this.tauS * (1 - keeps);
      this.swingAlong = keeps * (overX * outX + overY * outY);
      this.swingAcross = keeps * (outX * overY - outY * overX);
    }
    this.alongM = x * outX + y * outY;
    this.acrossM = outX * y - outY * x;
    this.alongMps = driveX * outX + driveY * outY;
    this.acrossMps = outX * driveY - outY * driveX;
  }

  private put(slot: number, afterS: number, missM: number): void {
    this.has[slot] = true;
    this.afterS[slot] = afterS;
    this.missM[slot] = missM;
  }

  private findSteady(): void {
    const { shot, alongM: h0, alongMps: c, acrossM, acrossMps } = this;
    const v = shot.speedMps;
    if (c < v) {
      this.levelS = h0 / (v - c);
      if (h0 > 0 && !this.drawsLevel()) return;
      this.put(0, this.levelS, acrossM + acrossMps * this.levelS);
    }
    if (c <= 0) return;
    if (c >= v && h0 >= 0) {
      if (c > v) this.put(1, -h0 / (c - v), acrossM - (acrossMps * h0) / (c - v));
      return;
    }
    const cap = this.capS;
    if (!(cap > 0)) return;
    shot.slide.after(v, cap);
    if (shot.slide.speedMps >= c || h0 + c * cap < shot.slide.distanceM) return;
    this.levelS = cap;
    if (this.newton(-1)) this.put(1, this.levelS, acrossM + acrossMps * this.levelS);
  }

  /**
   * Whether the puck draws level with a blade ahead, and when. It would then if it went on slowing as it does at first; it slows less and less, so
   * that is a little late, and Newton begins there. Where there is no root that way, from the side where the gap surely is ≥ 0.
   */
  private drawsLevel(): boolean {
    const { shot, alongM, alongMps, levelS: evenS } = this;
    const closesMps = shot.speedMps - alongMps;
    const square = closesMps * closesMps - 2 * shot.slide.slowingMps2(shot.speedMps) * alongM;
    if (square > 0) {
      this.levelS = (2 * alongM) / (closesMps + Math.sqrt(square));
      if (this.newton(1)) return true;
    }
    this.levelS = evenS;
    return this.newton(1);
  }

  /** From a side where the convex gap is ≥ 0, Newton walks `levelS` to its root without jumping over it; false: no root that way. */
  private newton(sense: 1 | -1): boolean {
    const { shot, alongM, alongMps } = this;
    let t = this.levelS;
    for (let step = 0; step < NEWTON_STEPS; step++) {
      shot.slide.after(shot.speedMps, t);
      const gap = alongM + alongMps * t - shot.slide.distanceM;
      const slope = alongMps - shot.slide.speedMps;
      if (slope * sense >= 0) return false;
      const move = gap / slope;
      t -= move;
      // Each step squares the error: after one this small nothing is left to correct.
      if (Math.abs(move) < 1e-8) break;
    }
    this.levelS = t;
    return true;
  }

  private gapAt(timeS: number): number {
    const { shot } = this;
    shot.slide.after(shot.speedMps, timeS);
    return (
      this.alongM +
      this.alongMps * timeS -
      this.swingAlong * this.tauS * Math.expm1(-timeS / this.tauS) -
      shot.slide.distanceM
    );
  }

  /** Rate of the gap, right after `gapAt` at the same time. */
  private slopeAt(timeS: number): number {
    return this.alongMps + this.swingAlong * Math.exp(-timeS / this.tauS) - this.shot.slide.speedMps;
  }

  private missAt(timeS: number): number {
    return (
      this.acrossM + this.acrossMps * timeS - this.swingAcross * this.tauS * Math.expm1(-timeS / this.tauS)
    );
  }

  private findDriven(): void {
    const { shot } = this;
    let cap = this.capS;
    if (shot.slide.over(shot.speedMps, shot.freeWayM() + BEYOND_BOARDS_M))
      cap = Math.min(cap, shot.slide.timeS);
    let t = 0;
    let gap = this.alongM;
    let slope = this.alongMps + this.swingAlong - this.shot.speedMps;
    // A root just behind the bounce, on the straight continued backwards.
    if (gap * slope > 0) {
      const before = -gap / slope;
      this.put(slope < 0 ? 0 : 1, before, this.acrossM + (this.acrossMps + this.swingAcross) * before);
    }
    if (!(cap > 0)) return;
    const steps = Math.max(2, Math.ceil(cap / SCAN_STEP_S));
    for (let step = 1; step <= steps; step++) {
      const t1 = (cap * step) / steps;
      const gap1 = this.gapAt(t1);
      const slope1 = this.slopeAt(t1);
      if (gap >= 0 !== gap1 >= 0) {
        this.addDriven(t, t1, gap >= 0);
      } else if (gap * slope < 0 && gap1 * slope1 > 0) {
        const turn = this.turnBetween(t, t1, slope);
        const gapTurn = this.gapAt(turn);
        if (gap >= 0 !== gapTurn >= 0) {
          this.addDriven(t, turn, gap >= 0);
          this.addDriven(turn, t1, gapTurn >= 0);
        }
      }
      t = t1;
      gap = gap1;
      slope = slope1;
    }
  }

  /** A root between two times of different sign, by Newton kept inside the bracket; into the next free slot of its kind. */
  private addDriven(fromS: number, toS: number, falls: boolean): void {
    let low = fromS;
    let high = toS;
    let t = (fromS + toS) / 2;
    for (let step = 0; step < NEWTON_STEPS; step++) {
      const gap = this.gapAt(t);
      if (gap >= 0 === falls) low = t;
      else high = t;
      const slope = this.slopeAt(t);
      let next = t - gap / slope;
      if (!(next > low && next < high)) next = (low + high) / 2;
      const moved = Math.abs(next - t);
      t = next;
      if (moved < TIME_TOLERANCE_S) break;
    }
    const slot = falls ? (this.has[0] || this.has[1] ? 2 : 0) : 1;
    if (slot === 1 && this.has[1]) return;
    this.put(slot, t, this.missAt(t));
  }

  private turnBetween(fromS: number, toS: number, slopeFrom: number): number {
    let low = fromS;
    let high = toS;
    for (let step = 0; step < 40; step++) {
      const middle = (low + high) / 2;
      this.gapAt(middle);
      if (this.slopeAt(middle) >= 0 === slopeFrom >= 0) low = middle;
      else high = middle;
    }
    return (low + high) / 2;
  }
}
