import type { PlayableAct } from '../drill/playable-parts.ts';
import { type LaneOpponent, laneMargins } from '../pass/lane.ts';
import { puckAt } from '../puck/path.ts';
import { type Actor, placeOf } from './actor.ts';
import { findCutOff } from './cut-off.ts';
import { sendToCutOff } from './play-flight.ts';
import type { Flight } from './puck-play.ts';
import type { RunState } from './run-state.ts';

/**
 * Looks at every opponent of the passer (no goalie, no coach) for whom the lane is shut: the stick can be on the puck
 * before it arrives; a saucer only once it is low again (`lowAgainS`, seconds after the release). Each is a finding with the
 * time to spare below zero; the one who is first takes the pass.
 * Seconds, metres, frame of the rink; adds nothing when the lane is open. Source: the reach law of `skater/reach.ts`.
 */
export const noteLanes = (
  run: RunState,
  passer: Actor,
  act: PlayableAct,
  flight: Flight,
  lowAgainS: number,
): void => {
  const untilS = Math.min(flight.meetS - flight.releasedS, flight.path.endTimeS);
  const opponents = run.actors.filter(
    actor =>
      actor.spot.kind === 'skater' &&
      actor.spot.side !== passer.spot.side &&
      actor !== flight.to &&
      !actor.puck,
  );
  let firstS = Number.POSITIVE_INFINITY;
  for (const by of opponents) {
    const cut = findCutOff(by, flight.path, untilS, lowAgainS);
    if (!cut) continue;
    if (run.isShown) noteShutLane(run, passer, act, flight, by, cut.afterS);
    if (cut.afterS >= firstS) continue;
    firstS = cut.afterS;
    flight.cutBy = by;
    flight.cutS = flight.releasedS + cut.afterS;
    flight.cutX = cut.pushX;
    flight.cutY = cut.pushY;
  }
  if (flight.cutBy) sendToCutOff(run, flight.cutBy, flight.cutX, flight.cutY);
};

/** The margin is the least over the whole way, looked for as long as all else of a rep takes: only where somebody reads it. */
const noteShutLane = (
  run: RunState,
  passer: Actor,
  act: PlayableAct,
  { path, releasedS, meetS }: Flight,
  by: Actor,
  afterS: number,
): void => {
  const untilS = Math.min(meetS - releasedS, path.endTimeS);
  const margin = laneMargins(path, untilS, [laneOpponentOf(by)])[0]!;
  const row = run.playable.level.rows.reactionS;
  run.findings.push({
    kind: 'laneShut',
    weight: 'look',
    timeS: releasedS + afterS,
    // Where the stick is on the puck, at that time: the margin is least nearer to the receiver, and nothing happens there.
    atM: puckAt(path, afterS).atM,
    spots: [by.spot.id, passer.spot.id],
    act: act.id,
    value: Math.min(0, margin.marginS),
    threshold: 0,
    unit: 's',
    status: row.status,
    source: row.source,
  });
};

const laneOpponentOf = (actor: Actor): LaneOpponent => ({
  id: actor.spot.id,
  state: { atM: placeOf(actor), velocityMps: { xMps: actor.xMps, yMps: actor.yMps } },
  power: actor.model,
  spreadS: actor.model.spreadS,
});
