import { endAct, fireCue } from './act-flow.ts';
import { type Actor, placeOf } from './actor.ts';
import { giveTo, letLie } from './puck-play.ts';
import type { RunState } from './run-state.ts';

/** The next known time in the life of a sliding puck; Infinity when there is none. */
export const nextFlightS = (run: RunState): number => {
  const { flight } = run.puck;
  if (!flight) return Number.POSITIVE_INFINITY;
  const bounce = flight.path.bounces[flight.nextBounce];
  const bounceS = bounce ? flight.releasedS + bounce.timeS : Number.POSITIVE_INFINITY;
  const endS = flight.releasedS + flight.path.endTimeS;
  return Math.min(flight.cutS, flight.meetS, flight.netS, bounceS, endS);
};

/** Plays what is due of a sliding puck: bounces, an opponent's stick, the meeting, the net, the stop. True when it changed anything. */
export const playFlight = (run: RunState): boolean => {
  const { flight } = run.puck;
  if (!flight || nextFlightS(run) > run.nowS) return false;
  const bounce = flight.path.bounces[flight.nextBounce];
  if (bounce && flight.releasedS + bounce.timeS <= run.nowS) {
    flight.nextBounce++;
    run.events.push({ kind: 'bounce', timeS: run.nowS, atM: bounce.boardsPointM });
  } else if (flight.cutS <= run.nowS) {
    flight.cutS = Number.POSITIVE_INFINITY;
    cutOff(run, flight.cutBy);
  } else if (flight.meetS <= run.nowS) {
    flight.meetS = Number.POSITIVE_INFINITY;
    if (flight.to && distanceToPuck(run, flight.to) <= flight.to.model.lungeReachM) receive(run);
    else flight.isLate = true;
  } else {
    noteMissed(run);
    letLie(run.puck);
  }
  return true;
};

/** The receiver of the pass on its way has it. */
export const receive = (run: RunState): void => {
  const { puck } = run;
  const flight = puck.flight;
  if (!flight?.to) throw new Error(`a puck was received at ${run.nowS} s that was passed to nobody`);
  const { to, from } = flight;
  giveTo(puck, to, run.nowS);
  run.events.push({
    kind: 'receive',
    timeS: run.nowS,
    atM: placeOf(puck),
    spot: to.spot.id,
    from: from.spot.id,
  });
  fireCue(run, { on: 'receive', spot: to.spot.id, timeS: run.nowS });
};

/** Keeps how near a late pass comes to its receiver. */
export const noteMiss = (run: RunState): void => {
  const { flight } = run.puck;
  if (!flight?.isLate || !flight.to) return;
  const missM = distanceToPuck(run, flight.to);
  if (missM >= flight.missM) return;
  flight.missM = missM;
  flight.missAtS = run.nowS;
  flight.missAtM = placeOf(run.puck);
};

/** The finding of a pass that its receiver did not get, once it is over. */
export const noteMissed = (run: RunState): void => {
  const { flight } = run.puck;
  if (!flight?.isLate || !flight.to || !Number.isFinite(flight.missM)) return;
  const row = run.playable.level.rows.reachM;
  run.findings.push({
    kind: 'receiverCannotGetThere',
    weight: 'look',
    timeS: flight.missAtS,
    atM: flight.missAtM,
    spots: [flight.to.spot.id, flight.from.spot.id],
    act: flight.act,
    value: flight.missM,
    threshold: flight.to.model.reachM,
    unit: 'm',
    status: row.status,
    source: row.source,
  });
};

/** Takes the pass when the stick is there: the boards may have held the opponent up. */
const cutOff = (run: RunState, by: Actor | null): void => {
  const { puck } = run;
  const flight = puck.flight;
  if (!by || !flight) return;
  by.motion = 'ease';
  by.power = by.model;
  if (distanceToPuck(run, by) > by.model.reachM + SLACK_M) return;
  giveTo(puck, by, run.nowS);
  run.events.push({
    kind: 'intercept',
    timeS: run.nowS,
    atM: placeOf(puck),
    spot: by.spot.id,
    from: flight.from.spot.id,
  });
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

const distanceToPuck = (run: RunState, actor: Actor): number =>
  Math.hypot(run.puck.xM - actor.xM, run.puck.yM - actor.yM);
