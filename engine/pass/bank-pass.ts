import type { PuckModel } from '../puck/puck-model.ts';
import { PUCK_ROWS } from '../puck/puck-rows.ts';
import { BOARDS_PARTS, type Boards } from '../rink/boards.ts';
import type { IcePoint } from '../units/points.ts';
import { type BankLooks, cellsNear, looksAlong, type NearLaunch, SMALLEST_CELL_M } from './bank-looks.ts';
import { Meeting, SLOTS } from './bank-meeting.ts';
import { BankShot } from './bank-shot.ts';
import { BankStraights } from './bank-straights.ts';
import { receiverBladeAt, receiverVelocityAt } from './blade.ts';
import { LookPool } from './look-pool.ts';
import type { BankBounce, BankPass, Receiver } from './pass-parts.ts';
import { dipBottom, rootBetween } from './search-along.ts';

export interface BankOptions {
  /** Exactly this many bounces before the blade. */
  readonly bounceCount?: 1 | 2;
  readonly maxTimeS?: number;
}

/** Looks for passes to one receiver after the other; with `near` only in launch directions about there. */
export type BankSearch = (receiver: Receiver, near?: NearLaunch) => readonly BankPass[];

const LONGEST_PASS_S = 6;

const MISS_TOLERANCE_M = 1e-6;

/**
 * All passes off the boards that meet the receiver's blade after exactly `bounceCount` bounces, sorted by launch
 * direction; empty when there are none. Metres, m/s, seconds; the passer inside the boards; launch speed > 0; bounces
 * follow the impact law alone (a flat meeting with a corner is marked `followsBoards`).
 *
 * The signed miss of each slot (`Meeting`) is continuous along the boards. Looks are placed so that between two of them the
 * way out turns by less than 0.3 rad; every change of sign is refined to 1e-12 m of arc, every dip of |miss| that does
 * not change sign is followed to its bottom (it may hold two passes), and where slots appear or vanish the cell is halved.
 * Checked against checks/data/bank_reference.json and, on random cases, against dense shooting in bank.reference.ts.
 */
export const bankPasses = (
  boards: Boards,
  model: PuckModel,
  passerM: IcePoint,
  launchSpeedMps: number,
  receiver: Receiver,
  options: BankOptions = {},
): readonly BankPass[] => bankSearch(boards, model, passerM, launchSpeedMps, options)(receiver);

/**
 * The same, for passes from one place to several receivers, or for following a pass that is known: what is found is what
 * `bankPasses` finds. Speeds > 0 in m/s, frame of the rink. Source: as `bankPasses`.
 */
export const bankSearch = (
  boards: Boards,
  model: PuckModel,
  passerM: IcePoint,
  launchSpeedMps: number,
  options: BankOptions = {},
): BankSearch => {
  if (!(launchSpeedMps > 0)) return () => [];
  const shot = new BankShot(boards, model, passerM, launchSpeedMps);
  const looks = looksAlong(shot);
  const straights = new BankStraights(
    shot,
    looks,
    options.bounceCount ?? 1,
    options.maxTimeS ?? LONGEST_PASS_S,
  );
  const pool = new LookPool();
  return (receiver, near) =>
    passesAlong(straights, pool, near ? cellsNear(looks, near) : looks, receiver, launchSpeedMps);
};

const passesAlong = (
  straights: BankStraights,
  looks: LookPool,
  { arcsM, isSkipped }: BankLooks,
  receiver: Receiver,
  launchSpeedMps: number,
): readonly BankPass[] => {
  const { shot, bounceCount } = straights;
  straights.begin();
  looks.begin();
  const meeting = new Meeting(straights, receiver);
  const receiverMps = Math.max(
    Math.hypot(receiver.velocityMps.xMps, receiver.velocityMps.yMps),
    receiver.drive?.topSpeedMps ?? 0,
  );
  const found: BankPass[] = [];

  const look = (straight: number): number => looks.look(straights, straight, meeting);
  const arcMOf = (of: number): number => straights.arcM(looks.straight(of));
  const missAt = (arcM: number, slot: number): number => {
    if (!straights.trace(arcM)) return Number.NaN;
    meeting.find();
    return meeting.has[slot] ? meeting.missM[slot]! : Number.NaN;
  };

  const refine = (fromM: number, toM: number, missFrom: number, missTo: number, slot: number): void => {
    const arcM = rootBetween(arc => missAt(arc, slot), fromM, toM, missFrom, missTo);
    const miss = missAt(arcM, slot);
    if (!(Math.abs(miss) < MISS_TOLERANCE_M)) return;
    const afterS = meeting.afterS[slot]!;
    if (!(afterS > 0 && afterS < meeting.capS)) return;
    shot.slide.after(shot.speedMps, afterS);
    if (shot.slide.distanceM > shot.freeWayM() + MISS_TOLERANCE_M) return;
    const pass = passOf(shot, receiver, launchSpeedMps, bounceCount, arcM, afterS);
    if (!found.some(other => Math.abs(other.launchRad - pass.launchRad) < 1e-9)) found.push(pass);
  };
  const dip = (left: number, middle: number, right: number, slot: number): void => {
    const missLeft = looks.missM(left, slot);
    const missMiddle = looks.missM(middle, slot);
    const missRight = looks.missM(right, slot);
    const sign = missMiddle >= 0 ? 1 : -1;
    const bottomM = dipBottom(
      arc => sign * missAt(arc, slot),
      [arcMOf(left), arcMOf(middle), arcMOf(right)],
      [sign * missLeft, sign * missMiddle, sign * missRight],
    );
    if (bottomM === undefined) return;
    const miss = missAt(bottomM, slot);
    refine(arcMOf(left), bottomM, missLeft, miss, slot);
    refine(bottomM, arcMOf(right), miss, missRight, slot);
  };

  let before = NO_LOOK;
  let last = NO_LOOK;
  const take = (next: number): void => {
    if (last !== NO_LOOK) {
      const crossed = looks.signChanges(last, next);
      for (let slot = 0; crossed >> slot !== 0; slot++) {
        if ((crossed & (1 << slot)) === 0) continue;
        refine(arcMOf(last), arcMOf(next), looks.missM(last, slot), looks.missM(next, slot), slot);
      }
      const dips = before === NO_LOOK ? 0 : looks.dips(before, last, next);
      for (let slot = 0; dips >> slot !== 0; slot++) {
        if ((dips & (1 << slot)) !== 0) dip(before, last, next, slot);
      }
    }
    before = last;
    last = next;
  };
  /** Hands on the looks of a cell from the one after its first up to its last, halving where too much happens in between. */
  const walk = (cell: number, from: number, to: number): void => {
    if (straights.turnsTooFar(cell) || slotsComeOrGo(straights, looks, cell, from, to, receiverMps)) {
      const half = straights.halfOf(cell);
      const middle = look(straights.toOf(half));
      walk(half, from, middle);
      walk(half + 1, middle, to);
    } else take(to);
  };

  let from = NO_LOOK;
  for (let index = 1; index < arcsM.length; index++) {
    if (isSkipped?.[index]) {
      from = before = last = NO_LOOK;
      continue;
    }
    const cell = straights.cellBefore(index);
    if (from === NO_LOOK) {
      from = look(straights.fromOf(cell));
      take(from);
    }
    const to = look(straights.toOf(cell));
    walk(cell, from, to);
    from = to;
  }
  return found.sort((one, other) => one.launchRad - other.launchRad);
};

const NO_LOOK = -1;

/** Whether a slot appears or vanishes within a cell, where a pass may be. */
const slotsComeOrGo = (
  straights: BankStraights,
  looks: LookPool,
  cell: number,
  from: number,
  to: number,
  receiverMps: number,
): boolean => {
  if (looks.hasSameSlots(from, to)) return false;
  if (!straights.valid(looks.straight(from)) || straights.widthM(cell) <= SMALLEST_CELL_M) return false;
  for (let slot = 0; slot < SLOTS; slot++) {
    const isFrom = looks.has(from, slot);
    if (isFrom === looks.has(to, slot)) continue;
    const there = isFrom ? from : to;
    const other = isFrom ? to : from;
    const afterS = looks.afterS(there, slot);
    if (!(afterS > 0 && afterS < Math.max(looks.capS(there), looks.capS(other)) * 1.05 + 0.05)) continue;
    // How far the puck's way shifts within the cell, and how much the meeting time can then run off where two slots
    // join (gap ≥ half its curvature × time², curvature at least the ice's slowing): a larger miss stays a miss.
    const movedM = 2 * straights.movedM(cell);
    const turn = Math.sqrt(Math.max(0, 2 - 2 * straights.turnCos(cell)));
    const shiftM = turn * straights.speedMps(looks.straight(there)) * afterS + movedM;
    const missMayMoveM = shiftM + receiverMps * Math.sqrt(shiftM * JOIN_S2_PER_M);
    if (Math.abs(looks.missM(there, slot)) < 2 * missMayMoveM) return true;
  }
  return false;
};

/** 2 over a slowing of 0.4 m/s², the least a puck on ice shows (μ 0.04). */
const JOIN_S2_PER_M = 5;

const passOf = (
  shot: BankShot,
  receiver: Receiver,
  launchSpeedMps: number,
  bounceCount: number,
  arcM: number,
  afterS: number,
): BankPass => {
  const bounces: BankBounce[] = [];
  shot.first(arcM);
  const launchRad = Math.atan2(shot.yM - shot.fromM.yM, shot.xM - shot.fromM.xM);
  let followsBoards = false;
  let lastCornerS = Number.NEGATIVE_INFINITY;
  for (let bounce = 1; ; bounce++) {
    const { xM, yM, normalX, normalY } = shot;
    const radius = shot.puckRadiusM;
    const angleInRad = Math.atan2(shot.intoMps, Math.abs(shot.alongMps));
    if (shot.part % 2 === 1) {
      const crowds = shot.timeS - lastCornerS < PUCK_ROWS.rimBounceGapS.value;
      if (crowds || angleInRad < PUCK_ROWS.rimIncidenceRad.value) followsBoards = true;
      lastCornerS = shot.timeS;
    }
    bounces.push({
      timeS: shot.timeS,
      centreM: { xM, yM },
      boardsPointM: { xM: xM - radius * normalX, yM: yM - radius * normalY },
      part: BOARDS_PARTS[shot.part]!,
      angleInRad,
      angleOutRad: Math.atan2(shot.awayMps, Math.abs(shot.alongOutMps)),
    });
    if (bounce === bounceCount) break;
    shot.next();
  }
  const arrivalS = shot.timeS + afterS;
  shot.slide.after(shot.speedMps, afterS);
  const arrivalSpeedMps = shot.slide.speedMps;
  const relative = receiverVelocityAt(receiver, arrivalS);
  const closingX = shot.outX * arrivalSpeedMps - relative.xMps;
  const closingY = shot.outY * arrivalSpeedMps - relative.yMps;
  return {
    kind: 'bank',
    launchRad,
    launchSpeedMps,
    bounces,
    arrivalS,
    arrivalSpeedMps,
    meetM: receiverBladeAt(receiver, arrivalS),
    missPerRadM: missPerRad(shot, bounceCount, arcM, arrivalS, closingX, closingY),
    followsBoards,
  };
};

const AIM_STEP_M = 1e-5;

/** How far the nearest approach moves per radian of aim: the puck's shift at the meeting time, square to the closing velocity. */
const missPerRad = (
  shot: BankShot,
  bounceCount: number,
  arcM: number,
  arrivalS: number,
  closingX: number,
  closingY: number,
): number => {
  const at = (arc: number) => {
    const once = (arc + shot.perimeterM) % shot.perimeterM;
    shot.first(once);
    const aimRad = Math.atan2(shot.yM - shot.fromM.yM, shot.xM - shot.fromM.xM);
    for (let bounce = 1; bounce < bounceCount; bounce++) shot.next();
    shot.slide.after(shot.speedMps, Math.max(0, arrivalS - shot.timeS));
    const distance = shot.slide.distanceM;
    return { aimRad, xM: shot.xM + shot.outX * distance, yM: shot.yM + shot.outY * distance };
  };
  const low = at(arcM - AIM_STEP_M);
  const high = at(arcM + AIM_STEP_M);
  const closing = Math.hypot(closingX, closingY);
  const across = Math.abs((high.xM - low.xM) * closingY - (high.yM - low.yM) * closingX) / closing;
  const turned = Math.abs(Math.atan2(Math.sin(high.aimRad - low.aimRad), Math.cos(high.aimRad - low.aimRad)));
  return across / turned;
};
