import { puckPath } from '../puck/path.ts';
import { placeOnPath } from '../puck/place-on-path.ts';
import type { IcePoint } from '../units/points.ts';
import { endAct, fireCue } from './act-flow.ts';
import { type Actor, placeOf } from './actor.ts';
import { setLoose } from './contest-play.ts';
import { BOBBLE_KEEPS_RATIO, LOOSE_LEAST_MPS } from './contest-rows.ts';
import { endQuest } from './free-puck.ts';
import { launch } from './launch.ts';
import { hasControl } from './pass-luck.ts';
import { type Flight, giveTo, letLie, type PuckPlay } from './puck-play.ts';
import type { RunState } from './run-state.ts';

/** The next known time in the life of a sliding puck; Infinity when there is none. */
export const nextFlightS = ({ flight }: PuckPlay): number => {
  if (!flight) return Number.POSITIVE_INFINITY;
  const bounce = flight.path.bounces[flight.nextBounce];
  const bounceS = bounce ? flight.releasedS + bounce.timeS : Number.POSITIVE_INFINITY;
  const endS = flight.releasedS + flight.path.endTimeS;
  return Math.min(flight.cutS, flight.meetS, flight.netS, flight.saveS, bounceS, endS);
};

/** Plays what is due of a sliding puck: bounces, an opponent's stick, the meeting, the net, the stop. True when it changed anything. */
export const playFlight = (run: RunState, puck: PuckPlay): boolean => {
  const { flight } = puck;
  if (!flight || nextFlightS(puck) > run.nowS) return false;
  const bounce = flight.path.bounces[flight.nextBounce];
  if (bounce && flight.releasedS + bounce.timeS <= run.nowS) {
    flight.nextBounce++;
    const { part } = bounce;
    const isOffNet = part === 'post' || part === 'net';
    run.events.push({
      kind: 'bounce',
      timeS: run.nowS,
      atM: bounce.boardsPointM,
      ...(isOffNet ? { off: part } : {}),
    });
    // Off a post it may still be on its way in.
    if (!(isOffNet && Number.isFinite(flight.netS))) endShot(run, puck, 'wide');
  } else if (flight.saveS <= run.nowS) {
    save(run, puck);
  } else if (flight.cutS <= run.nowS) {
    flight.cutS = Number.POSITIVE_INFINITY;
    cutOff(run, puck, flight.cutBy);
  } else if (flight.meetS <= run.nowS) {
    flight.meetS = Number.POSITIVE_INFINITY;
    if (flight.to && !flight.to.puck && apartM(puck, flight.to) <= flight.to.model.lungeReachM) {
      receive(run, puck);
    } else {
      flight.isLate = true;
      fireCue(run, { on: 'losesPuck', spot: flight.from.spot.id, timeS: run.nowS });
    }
  } else {
    noteMissed(run, puck);
    const { looseS, lostBy, left } = puck;
    const isDead = flight.netS <= run.nowS;
    endShot(run, puck, isDead ? 'goal' : 'wide');
    letLie(puck);
    puck.isDead = isDead;
    puck.looseS = looseS;
    puck.lostBy = lostBy;
    puck.left = left;
  }
  return true;
};

/** Says once what became of a shot. */
const endShot = (run: RunState, puck: PuckPlay, kind: 'goal' | 'wide'): void => {
  const { flight } = puck;
  if (!flight?.isShot) return;
  flight.isShot = false;
  run.events.push({
    kind,
    timeS: run.nowS,
    atM: placeOf(puck),
    spot: flight.from.spot.id,
    puck: run.pucks.indexOf(puck),
  });
};

/** The goalie has it and holds it: the puck is out of play. */
const save = (run: RunState, puck: PuckPlay): void => {
  const { flight } = puck;
  if (!flight?.savedBy) throw new Error(`a shot was stopped at ${run.nowS} s by nobody`);
  run.events.push({
    kind: 'save',
    timeS: run.nowS,
    atM: placeOf(puck),
    spot: flight.savedBy.spot.id,
    from: flight.from.spot.id,
    puck: run.pucks.indexOf(puck),
  });
  letLie(puck);
  puck.isDead = true;
};

/** The receiver of the pass on its way has it, or, with chance against it, it comes loose off the stick. */
export const receive = (run: RunState, puck: PuckPlay): void => {
  const flight = puck.flight;
  if (!flight?.to) throw new Error(`a puck was received at ${run.nowS} s that was passed to nobody`);
  const { to, from } = flight;
  if (!hasControl(run, puck, to)) {
    bobble(run, puck, from, to);
    return;
  }
  giveTo(puck, to, run.nowS);
  run.events.push({
    kind: 'receive',
    timeS: run.nowS,
    atM: placeOf(puck),
    spot: to.spot.id,
    from: from.spot.id,
  });
  endQuest(run, to);
  fireCue(run, { on: 'receive', spot: to.spot.id, timeS: run.nowS });
};

/** A pass that is not brought under control drops off the blade and slides on slowly; whom it was meant for still has it as a pass. */
const bobble = (run: RunState, puck: PuckPlay, from: Actor, to: Actor): void => {
  const { xMps, yMps } = puck;
  const looseMps = Math.max(LOOSE_LEAST_MPS.value, BOBBLE_KEEPS_RATIO.value * Math.hypot(xMps, yMps));
  const path = puckPath(run.rink.boards, run.puckModel, placeOf(puck), Math.atan2(yMps, xMps), looseMps);
  launch(run, puck, from, null, null, path);
  setLoose(run, puck, to, null);
  puck.left = { by: from, to };
};

/** Keeps how near a late pass comes to its receiver. */
export const noteMiss = (run: RunState, puck: PuckPlay): void => {
  const { flight } = puck;
  if (!flight?.isLate || !flight.to) return;
  const missM = apartM(puck, flight.to);
  if (missM >= flight.missM) return;
  flight.missM = missM;
  flight.missAtS = run.nowS;
  flight.missAtM = placeOf(puck);
};

/**
 * The finding of a pass that its receiver did not get, once it is over. A puck that comes nearer until it stops, out of
 * reach, dies short: value is what it still has to go to the receiver then, seen from the end of the rep when it has not stopped by
 * then. Any other goes by: value is how far off it was at its nearest.
 */
export const noteMissed = (run: RunState, { flight }: PuckPlay): void => {
  if (!flight?.isLate || !flight.to || !Number.isFinite(flight.missM)) return;
  const row = run.playable.level.rows.reachM;
  const missed = {
    weight: 'look',
    spots: [flight.to.spot.id, flight.from.spot.id],
    ...(flight.act ? { act: flight.act } : {}),
    threshold: flight.to.model.reachM,
    unit: 'm',
    status: row.status,
    source: row.source,
  } as const;
  const end = endShortOf(flight, flight.to);
  if (end) {
    run.findings.push({
      ...missed,
      kind: 'passDiesShort',
      timeS: Math.min(run.nowS, flight.releasedS + flight.path.endTimeS),
      atM: end.atM,
      value: end.shortM,
    });
    return;
  }
  run.findings.push({
    ...missed,
    kind: 'receiverCannotGetThere',
    timeS: flight.missAtS,
    atM: flight.missAtM,
    value: flight.missM,
  });
};

/** Where a straight pass stops when that is before the receiver, and metres from there; undefined when it goes by. */
const endShortOf = (
  flight: Flight,
  to: Actor,
): { readonly atM: IcePoint; readonly shortM: number } | undefined => {
  const { path } = flight;
  if (path.ending !== 'stopped' || path.bounces.length > 0) return undefined;
  const end = { xM: 0, yM: 0 };
  const before = { xM: 0, yM: 0 };
  placeOnPath(path, path.endTimeS, end);
  placeOnPath(path, path.endTimeS - LAST_OF_SLIDE_S, before);
  const toX = to.xM - end.xM;
  const toY = to.yM - end.yM;
  const goesToward = (end.xM - before.xM) * toX + (end.yM - before.yM) * toY > 0;
  const shortM = Math.sqrt(toX * toX + toY * toY);
  return goesToward && shortM > to.model.reachM ? { atM: end, shortM } : undefined;
};

/** The last of a slide shows which way it goes, seconds. */
const LAST_OF_SLIDE_S = 0.05;

/** Takes the pass when the stick is there: the boards may have held the opponent up. */
const cutOff = (run: RunState, puck: PuckPlay, by: Actor | null): void => {
  const flight = puck.flight;
  if (!by || !flight) return;
  by.motion = 'ease';
  by.power = by.model;
  if (by.puck || apartM(puck, by) > by.model.reachM + SLACK_M) return;
  giveTo(puck, by, run.nowS);
  run.events.push({
    kind: 'intercept',
    timeS: run.nowS,
    atM: placeOf(puck),
    spot: by.spot.id,
    from: flight.from.spot.id,
  });
  fireCue(run, { on: 'losesPuck', spot: flight.from.spot.id, timeS: run.nowS });
};

/** The reach disc is met exactly; this is for rounding. */
const SLACK_M = 1e-3;

/** Sends an opponent after a pass: whatever it was doing is over, and what it was to do is off. */
export const sendToCutOff = (run: RunState, by: Actor, pushX: number, pushY: number): void => {
  if (by.actIndex >= 0) endAct(run, by);
  by.nextActIndex = by.spot.acts.length;
  by.dueS = Number.POSITIVE_INFINITY;
  by.waitsForPuck = false;
  by.motion = 'cutOff';
  by.isBackward = false;
  by.power = by.model;
  by.route = null;
  by.reactsAtS = run.nowS + by.model.reactionS;
  by.cutX = pushX;
  by.cutY = pushY;
};

const apartM = (puck: PuckPlay, actor: Actor): number => Math.hypot(puck.xM - actor.xM, puck.yM - actor.yM);
