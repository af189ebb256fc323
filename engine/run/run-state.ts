import type { Cue } from '../drill/drill.ts';
import type { Body } from '../drill/in-boards.ts';
import type { Playable } from '../drill/playable.ts';
import type { PlayableAct } from '../drill/playable-parts.ts';
import type { Stretch } from '../motion/stretch.ts';
import type { PuckModel } from '../puck/puck-model.ts';
import type { LineId } from '../rink/lines.ts';
import type { Rink } from '../rink/rink.ts';
import type { SpotId } from '../units/ids.ts';
import type { Actor } from './actor.ts';
import type { Chance } from './chance.ts';
import type { ContestView } from './contest.ts';
import type { Near, NearWatch } from './near-watch.ts';
import type { PuckPlay } from './puck-play.ts';
import type { Recorder } from './recorded.ts';
import type { Finding, RunEvent } from './run-result.ts';

/** Something that happened and can be a cue. */
export interface Fire {
  readonly on: Exclude<Cue['on'], 'whistle' | 'after'>;
  readonly spot?: SpotId;
  readonly line?: LineId;
  /** Of a `reaches`: the place that was come near to. */
  readonly near?: Near;
  readonly timeS: number;
}

/** Everything a run changes while it goes on. */
export interface RunState {
  readonly playable: Playable;
  readonly rink: Rink;
  readonly puckModel: PuckModel;
  /** Lines of the rink by ascending x: a zone is the number of lines with smaller x. */
  readonly lineIds: readonly LineId[];
  readonly lineXM: Float64Array;
  readonly actors: readonly Actor[];
  /** Between which x each of them is while in the zone where it is: at or below the first, or above the second, it has left it. */
  readonly zoneFromM: Float64Array;
  readonly zoneToM: Float64Array;
  /** What changes of them at every step; see `actor-numbers.ts`. */
  readonly numbers: Float64Array;
  /** The first half of it. */
  readonly now: Float64Array;
  /** One more when somebody takes a puck from a heap: what is left of it. */
  readonly pucks: PuckPlay[];
  readonly stretch: Stretch;
  readonly chance: Chance | null;
  /** Written over at every use, so that a step makes no garbage. */
  readonly contest: ContestView;
  /** Whoever is steered now, and whom or what it is steered to. */
  readonly self: Body;
  readonly other: Body;
  readonly events: RunEvent[];
  readonly findings: Finding[];
  readonly fires: Fire[];
  /** Places that cues wait for somebody to come near to. */
  readonly nearWatches: readonly NearWatch[];
  /** Carries that ended without the puck ever on the stick. */
  readonly lackedPuck: { readonly actor: Actor; readonly act: PlayableAct; readonly timeS: number }[];
  /** Strides a second: the run is stepped from one to the next. */
  readonly strideHz: number;
  /** Somebody reads all findings of the rep. */
  readonly isShown: boolean;
  readonly recorder: Recorder;
  nowS: number;
  /** Everybody who reacts decides anew before the next step: it is time for a look, or something has happened. */
  isAnew: boolean;
  /** Next time at which something is known to happen; NaN when that must be looked for again. */
  knownS: number;
  /** Until then nothing happens between bodies and pucks, and before then it is not looked for again; see `quiet.ts`. */
  quietUntilS: number;
  quietAgainS: number;
}

export const actorNamed = (run: RunState, spot: SpotId): Actor => {
  const actor = run.actors.find(one => one.spot.id === spot);
  if (!actor) throw new Error(`no spot ${spot} in a playable of ${run.actors.length} spots`);
  return actor;
};

export const zoneOf = (lineXM: Float64Array, xM: number): number => {
  let zone = 0;
  while (zone < lineXM.length && lineXM[zone]! < xM) zone++;
  return zone;
};

/** Only this changes the zone of a skater: the places at which it is left go with it. */
export const setZone = ({ zoneFromM, zoneToM, lineXM }: RunState, actor: Actor, zone: number): void => {
  actor.zone = zone;
  zoneFromM[actor.index] = zone > 0 ? lineXM[zone - 1]! : Number.NEGATIVE_INFINITY;
  zoneToM[actor.index] = zone < lineXM.length ? lineXM[zone]! : Number.POSITIVE_INFINITY;
};
