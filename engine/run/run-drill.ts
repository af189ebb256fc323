import { REP_LIMIT_S } from '../drill/drill-rows.ts';
import { pushInside } from '../drill/in-boards.ts';
import type { Playable } from '../drill/playable.ts';
import type { PuckStart } from '../drill/playable-parts.ts';
import { attackedEndOf } from '../drill/playing-end.ts';
import { STEP_HZ } from '../drill/step-hz.ts';
import { movingBodyAt } from '../motion/moving-body.ts';
import { stretchOf } from '../motion/stretch.ts';
import { puckModelOf } from '../puck/puck-model.ts';
import { LINE_IDS } from '../rink/lines.ts';
import type { SkaterModel } from '../skater/model.ts';
import type { SpotId } from '../units/ids.ts';
import { madeOf } from '../units/made-of.ts';
import { Actor } from './actor.ts';
import { actorNumbersOf } from './actor-numbers.ts';
import { advanceTo } from './advance.ts';
import type { Chance } from './chance.ts';
import { contestViewOf } from './contest-play.ts';
import { dueOf } from './cue-due.ts';
import { findingsOfTracks } from './findings-of-tracks.ts';
import { goalieModelOf, guardedNet, setGuards } from './guard-net.ts';
import { nearWatchesOf } from './near-watch.ts';
import { leftoverFindings } from './note-acts.ts';
import { noteMissed } from './play-flight.ts';
import { giveTo, lyingPuck, type PuckPlay, takePuck, tryPuck } from './puck-play.ts';
import { recordSample } from './record-sample.ts';
import { type RunMemory, recorderOf } from './recorder.ts';
import { isRepAlive } from './rep-alive.ts';
import type { Run, RunEvent } from './run-result.ts';
import { actorNamed, type RunState, setZone, zoneOf } from './run-state.ts';
import { stridesPerLook } from './stride.ts';
import { tracksOf } from './track-columns.ts';

export interface RunOptions {
  /** Skaters of their own instead of the level's: a team's timed tests, or one draw of the human spread. */
  readonly models?: Readonly<Partial<Record<SpotId, SkaterModel>>>;
  /**
   * Memory of an earlier run to write into, for callers that run at every pointer move. The tracks of the earlier run are
   * overwritten.
   */
  readonly memory?: RunMemory;
  /** Ends sooner than after `REP_LIMIT_S`, seconds. */
  readonly limitS?: number;
  /**
   * What chance brings in this rep. Without it everybody does what is drawn, at the middle of the level: passes go where they
   * are sent, whoever reaches a puck has it, and a contest is won when it is as likely won as not.
   */
  readonly chance?: Chance;
  /** The rep is broken off after the step in which this becomes true of what has happened: for who asks one thing only. */
  readonly until?: (events: readonly RunEvent[]) => boolean;
  /**
   * False for who looks at events and numbers alone: leaves out the findings that are read from the finished tracks (`findingsOfTracks`), and
   * those of shut lanes. What else is noted while the rep is played stays, and tracks and events are the same.
   */
  readonly isShown?: boolean;
  /**
   * Strides a second, a divisor of 120; 120 when left out. Fewer for who plays many reps: what happens inside a stride is still found where it
   * happens, but who reacts from afar decides less often. There are 120 samples a second all the same.
   */
  readonly strideHz?: number;
}

/**
 * One rep of a drill, computed. Metres, seconds, frame of the rink; samples at 120 Hz from the whistle. Us attack plusX, so
 * our net is that of minusX.
 *
 * Scripted acts follow their route's fastest profile and know nothing of the others. Reactive acts (chase, gap) are
 * steered anew at every step and moved by the exact solution of `v̇ = (V·u − v)/τ`. Whatever happens inside a step (a line
 * crossed, a cue, a pass that meets a blade, a chaser within reach) is found there as the root of the motion, and the step goes on
 * from that time.
 *
 * What the run decides:
 * - Caught: the chaser's middle is within a one-handed lunge of the one chased. The puck does not change hands; the
 *   chaser stays beside the one chased, and the rep goes on.
 * - A pass is made at the place and speed planned, to where the blade will be as far as the drill fixes it. At the meeting
 *   the receiver has it when it is within a lunge; later still, when it slides by within reach of two hands. Otherwise it slides on.
 * - An opponent whose stick can be on the puck before the meeting leaves the script and takes it.
 * - A pass or shot without the puck waits for it. A carry without it is skated.
 * - A skater with nothing to do eases off; everybody minds the boards.
 * - The rep ends when no scripted act is under way or to come, no chase is open and no puck is on its way, or at 40 s.
 *
 * The same playable and options give the same run on every machine; nothing is drawn at random.
 */
export const runDrill = (playable: Playable, options: RunOptions = {}): Run => {
  const run = startOf(playable, options);
  const limitS = Math.min(REP_LIMIT_S.value, options.limitS ?? REP_LIMIT_S.value);
  const { strideHz, recorder } = run;
  const lastStride = Math.floor(limitS * strideHz);
  advanceTo(run, 0);
  recordSample(run);
  for (let i = 1; i <= lastStride && isRepAlive(run); i++) {
    advanceTo(run, i);
    if (options.until?.(run.events)) break;
  }
  for (const puck of run.pucks) noteMissed(run, puck);
  const { tracks, pucks } = tracksOf(recorder, run.actors, run.pucks);
  const noted = [...run.findings, ...leftoverFindings(run)];
  const findings = !run.isShown ? noted : [...noted, ...findingsOfTracks(run, tracks, pucks, noted)];
  return {
    stepHz: STEP_HZ,
    sampleCount: recorder.count,
    durationS: (recorder.count - 1) / STEP_HZ,
    tracks,
    pucks,
    events: run.events,
    findings: findings.sort((a, b) => a.timeS - b.timeS),
  };
};

const puckAtStart = (playable: Playable, start: PuckStart): PuckPlay => {
  const point = { xM: start.atM.xM, yM: start.atM.yM };
  pushInside(playable.rink.boards, point, puckModelOf().puckRadiusM);
  return lyingPuck(point.xM, point.yM, start.count, 0);
};

/** A puck that starts on a stick is on its blade. */
const placeOnStick = (run: RunState, puck: PuckPlay, owner: Actor): void => {
  giveTo(puck, owner, 0);
  puck.offsetXM = 0;
  puck.offsetYM = 0;
  tryPuck(puck, run.stretch, run.rink.boards);
  takePuck(puck, run.stretch);
};

const startOf = (playable: Playable, options: RunOptions): RunState => {
  const { rink, level } = playable;
  const strideHz = options.strideHz ?? STEP_HZ;
  const lineIds = [...LINE_IDS].sort((a, b) => rink.lines[a].centreXM - rink.lines[b].centreXM);
  const numbers = actorNumbersOf(playable.spots.length);
  const actors = madeOf(playable.spots, (spot, index) => {
    const net = rink.nets[attackedEndOf(spot) === 'plusX' ? 0 : 1]!;
    const model = options.models?.[spot.id] ?? level.model;
    const own = guardedNet(rink, { spot }) ? goalieModelOf(model) : model;
    return new Actor(numbers, index, spot, own, net.atM, 1 / strideHz, stridesPerLook(strideHz) / strideHz);
  });
  const run: RunState = {
    playable,
    rink,
    puckModel: puckModelOf(),
    lineIds,
    lineXM: Float64Array.from(lineIds, id => rink.lines[id].centreXM),
    actors,
    zoneFromM: new Float64Array(actors.length),
    zoneToM: new Float64Array(actors.length),
    numbers,
    now: numbers.subarray(0, numbers.length / 2),
    pucks: madeOf(playable.pucks, start => puckAtStart(playable, start)),
    stretch: stretchOf(0, 0, 1 / strideHz),
    chance: options.chance ?? null,
    contest: contestViewOf(),
    self: movingBodyAt(0, 0),
    other: movingBodyAt(0, 0),
    events: [],
    findings: [],
    fires: [],
    nearWatches: nearWatchesOf(playable, actors),
    lackedPuck: [],
    strideHz,
    isShown: options.isShown ?? true,
    recorder: recorderOf(actors.length, options.isShown ?? true, options.memory),
    nowS: 0,
    isAnew: true,
    knownS: Number.NaN,
    quietUntilS: Number.NEGATIVE_INFINITY,
    quietAgainS: Number.NEGATIVE_INFINITY,
  };
  playable.pucks.forEach(({ ownerSpot }, i) => {
    if (ownerSpot) placeOnStick(run, run.pucks[i]!, actorNamed(run, ownerSpot));
  });
  setGuards(run);
  for (const actor of actors) {
    setZone(run, actor, zoneOf(run.lineXM, actor.xM));
    actor.dueS = dueOf(run, actor).dueS;
  }
  for (const puck of run.pucks) puck.zone = zoneOf(run.lineXM, puck.xM);
  if (options.memory) options.memory.keepsAlive = run;
  return run;
};
