import type { PuckModel } from '../puck/puck-model.ts';
import { nearestBoardsPoint } from '../rink/along-boards.ts';
import { type Boards, insetBoards } from '../rink/boards.ts';
import type { IcePoint } from '../units/points.ts';
import { looksAlong, SMALLEST_CELL_M } from './bank-looks.ts';
import { type BankOptions, bankPasses } from './bank-pass.ts';
import { BankShot } from './bank-shot.ts';
import { receiverMiddleAt } from './blade.ts';
import type { LaunchWindow, Receiver } from './pass-parts.ts';
import { dipBottom, lowestBetween, rootBetween } from './search-along.ts';

const LONGEST_PASS_S = 6;
const CELL_TURN_COS = Math.cos(0.15);
const CELL_LAST_BOUNCE_M = 1.5;
/** The nearest approach is looked for in steps of this; between two of them puck and skater part or meet once at most. */
const APPROACH_STEP_S = 0.12;
/** No window: the puck does not get that far. */
const NOWHERE_M = 1e3;

/**
 * All windows of launch direction for which the puck, between its n-th and the next bounce, before it stops and before
 * `maxTimeS`, comes within `reachM` metres of the receiver's *middle*; sorted by their first direction. A window may
 * hold none, one or several exact passes of `bankPasses`. Units and range as there. Found by following the nearest
 * approach along the boards: its zeros, and every dip and hump between them; looks stand at every exact pass to the
 * middle. Source: as `bankPasses`.
 */
export const bankWindows = (
  boards: Boards,
  model: PuckModel,
  passerM: IcePoint,
  launchSpeedMps: number,
  receiver: Receiver,
  reachM: number,
  options: BankOptions = {},
): readonly LaunchWindow[] => {
  const bounceCount = options.bounceCount ?? 1;
  const maxTimeS = options.maxTimeS ?? LONGEST_PASS_S;
  if (!(launchSpeedMps > 0)) return [];
  const shot = new BankShot(boards, model, passerM, launchSpeedMps);

  const trace = (arcM: number): boolean => {
    if (!shot.first(arcM)) return false;
    for (let bounce = 1; bounce < bounceCount; bounce++) if (!shot.next()) return false;
    return shot.timeS < maxTimeS;
  };
  const gapAt = (arcM: number): number =>
    trace(arcM) ? nearestApproachM(shot, receiver, maxTimeS) - reachM : NOWHERE_M;
  const launchAt = (arcM: number): number => {
    shot.first(Math.min(arcM, shot.perimeterM * (1 - 1e-15)));
    return Math.atan2(shot.yM - shot.fromM.yM, shot.xM - shot.fromM.xM);
  };

  const edges: { readonly arcM: number; readonly enters: boolean }[] = [];
  const cross = (fromM: number, toM: number, gapFrom: number, gapTo: number): void => {
    if (gapFrom <= 0 === gapTo <= 0) return;
    const isEdgeOfReach = gapFrom < NOWHERE_M && gapTo < NOWHERE_M;
    const arcM = isEdgeOfReach
      ? rootBetween(gapAt, fromM, toM, gapFrom, gapTo)
      : halvedTo(arc => gapAt(arc) <= 0 === gapFrom <= 0, fromM, toM);
    edges.push({ arcM, enters: gapTo <= 0 });
  };

  interface Look {
    readonly arcM: number;
    readonly gapM: number;
    readonly outX: number;
    readonly outY: number;
    readonly xM: number;
    readonly yM: number;
  }
  const look = (arcM: number): Look => {
    const gapM = gapAt(arcM);
    return { arcM, gapM, outX: shot.outX, outY: shot.outY, xM: shot.xM, yM: shot.yM };
  };
  const looks: Look[] = [];
  const walk = (from: Look, to: Look): void => {
    const widthM = to.arcM - from.arcM;
    if (widthM > SMALLEST_CELL_M * 10 && needsHalving(from, to)) {
      const middle = look((from.arcM + to.arcM) / 2);
      walk(from, middle);
      walk(middle, to);
    } else looks.push(to);
  };
  const needsHalving = (from: Look, to: Look): boolean => {
    const isFromNowhere = from.gapM === NOWHERE_M;
    if (isFromNowhere !== (to.gapM === NOWHERE_M)) return true;
    if (isFromNowhere) return false;
    if (from.outX * to.outX + from.outY * to.outY < CELL_TURN_COS) return true;
    return Math.abs(from.xM - to.xM) + Math.abs(from.yM - to.yM) > CELL_LAST_BOUNCE_M;
  };

  // Where the puck goes right through the middle the approach has a sharp dip: those places are known exactly.
  const centreBoards = insetBoards(boards, model.puckRadiusM);
  const middle: Receiver = { ...receiver, bladeOffsetM: { xM: 0, yM: 0 } };
  const through = bankPasses(boards, model, passerM, launchSpeedMps, middle, options).map(
    pass => nearestBoardsPoint(centreBoards, pass.bounces[0]!.centreM).arcM,
  );
  const arcs = [...looksAlong(shot).arcsM, ...through].sort((one, other) => one - other);
  let from = look(arcs[0]!);
  const first = from;
  looks.push(first);
  for (const arcM of arcs.slice(1)) {
    const to = look(arcM);
    walk(from, to);
    from = to;
  }

  for (let index = 1; index < looks.length; index++) {
    const left = looks[index - 1]!;
    const middle = looks[index]!;
    cross(left.arcM, middle.arcM, left.gapM, middle.gapM);
    const right = looks[index + 1];
    if (!right || right.gapM === NOWHERE_M || left.gapM === NOWHERE_M) continue;
    const sign = middle.gapM > 0 ? 1 : -1;
    const values: [number, number, number] = [sign * left.gapM, sign * middle.gapM, sign * right.gapM];
    if (!(values[0] > 0 && values[2] > 0 && values[1] <= values[0] && values[1] <= values[2])) continue;
    const bottomM = dipBottom(arc => sign * gapAt(arc), [left.arcM, middle.arcM, right.arcM], values);
    if (bottomM === undefined) continue;
    const gap = gapAt(bottomM);
    cross(left.arcM, bottomM, left.gapM, gap);
    cross(bottomM, right.arcM, gap, right.gapM);
  }
  edges.sort((one, other) => one.arcM - other.arcM);
  if (edges.length === 0) return first.gapM <= 0 ? [[-Math.PI, Math.PI]] : [];
  const windows: LaunchWindow[] = [];
  for (const [index, edge] of edges.entries()) {
    if (!edge.enters) continue;
    const leave = edges[(index + 1) % edges.length]!;
    windows.push([launchAt(edge.arcM), launchAt(leave.arcM)]);
  }
  return windows.sort((one, other) => one[0] - other[0]);
};

/** Least distance between puck and the receiver's middle on the straight after the last bounce, metres. */
const nearestApproachM = (shot: BankShot, receiver: Receiver, maxTimeS: number): number => {
  const { outX, outY, speedMps, timeS, slide } = shot;
  const { xM, yM } = shot;
  const freeM = shot.freeWayM();
  let endS = Math.min(maxTimeS - timeS, slide.stopTime(speedMps));
  if (slide.over(speedMps, freeM)) endS = Math.min(endS, slide.timeS);
  const apartSq = (afterS: number): number => {
    slide.after(speedMps, afterS);
    const middle = receiverMiddleAt(receiver, timeS + afterS);
    const dx = xM + outX * slide.distanceM - middle.xM;
    const dy = yM + outY * slide.distanceM - middle.yM;
    return dx * dx + dy * dy;
  };
  const steps = Math.max(2, Math.ceil(endS / APPROACH_STEP_S));
  let best = Number.POSITIVE_INFINITY;
  let before = Number.POSITIVE_INFINITY;
  let at = apartSq(0);
  for (let step = 0; step <= steps; step++) {
    const next = step < steps ? apartSq((endS * (step + 1)) / steps) : Number.POSITIVE_INFINITY;
    if (at <= before && at <= next) {
      const lowS = (endS * Math.max(0, step - 1)) / steps;
      const highS = (endS * Math.min(steps, step + 1)) / steps;
      best = Math.min(best, lowestBetween(apartSq, lowS, highS, 1e-8).value, apartSq(lowS), apartSq(highS));
    }
    before = at;
    at = next;
  }
  return Math.sqrt(best);
};

/** The last argument before which a condition holds that holds at `from` and not at `to`. */
const halvedTo = (holds: (at: number) => boolean, from: number, to: number): number => {
  let low = from;
  let high = to;
  while (high - low > 1e-10) {
    const middle = (low + high) / 2;
    if (holds(middle)) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
};
