import type { ActKind, DrillPlan, Flow, PassWay } from '../drill/drill.ts';
import type { Playable } from '../drill/playable.ts';
import type { LineId } from '../rink/lines.ts';
import type { Rink } from '../rink/rink.ts';
import type { Finding, Run } from '../run/run-result.ts';
import type { Level } from '../skater/level.ts';
import type { ActId, SpotId } from '../units/ids.ts';

/** The value that will stand at a path of the plan, keys from the plan down; undefined takes away what stands there. */
export interface MendWrite {
  readonly path: readonly string[];
  readonly value: unknown;
}

/** Where something is moved to, in the words of the ice: us attack plusX. */
export type MendWhere = 'ourEnd' | 'theirEnd' | 'middle' | 'boards';

export type MendVerb =
  | 'endSooner'
  | 'endSoonerAndStop'
  | 'stopAtEnd'
  | 'skateAt'
  | 'startLater'
  | 'startSooner'
  | 'moveStart'
  | 'bend'
  | 'bringIn'
  | 'passAt'
  | 'passWay'
  | 'cueLine'
  | 'cueWithin'
  | 'cueOff'
  | 'cueWhistle'
  | 'holdFor'
  | 'givePuck'
  | 'addPucks'
  | 'movePucks'
  | 'fetch'
  | 'gapOf'
  | 'gapInstead'
  | 'turnLine'
  | 'goEvery'
  | 'pauseFor'
  | 'ends'
  | 'morePucks';

/** What a mend does, for a sentence: to whom, how much, and what else the verb needs. */
export interface MendSays {
  readonly verb: MendVerb;
  readonly spot: SpotId;
  /** By how much, or to which value, as the verb has it; 0 where it has none. */
  readonly number: number;
  /** 'm', 's', 'm/s', '%', '°', 'pucks', or '' when the verb has no number. */
  readonly unit: string;
  readonly where?: MendWhere;
  readonly way?: PassWay;
  readonly line?: LineId;
  /** What is done later or sooner, when it is not the spot's first act. */
  readonly deed?: ActKind;
  readonly ends?: Flow['ends'];
}

/**
 * One change that makes a finding go, tried: with it, and nothing else, the finding is gone and nothing new is to be looked at. Of what is only
 * worth knowing, a change that eases it is offered where none takes it away.
 */
export interface Mend {
  readonly kind: 'mend';
  readonly finding: Finding;
  readonly says: MendSays;
  /** All of them in one step. */
  readonly writes: readonly MendWrite[];
  /** What the value of the finding becomes, in its unit, when the finding stays and is only eased. */
  readonly easesTo?: number;
}

export interface NoMend {
  readonly kind: 'noMend';
  /** `nothingToTry`: no kind of change fits this finding. `noneHelps`: none of those tried makes it go and leaves the rest well. */
  readonly reason: 'nothingToTry' | 'noneHelps';
  readonly triedCount: number;
}

/** A change to be tried. */
export interface MendCandidate {
  readonly says: MendSays;
  readonly writes: readonly MendWrite[];
  /** How great a change it is, in metres of moving one thing: see `mend-rows.ts`. */
  readonly size: number;
}

/** What candidates are made from. */
export interface MendCase {
  readonly plan: DrillPlan;
  readonly rink: Rink;
  readonly level: Level;
  readonly playable: Playable;
  readonly run: Run;
  readonly finding: Finding;
  /** Ids for what a mend adds: the engine makes none. */
  readonly newAct: ActId;
  readonly newPuck: string;
}
