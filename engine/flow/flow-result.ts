import type { Finding } from '../run/run-result.ts';
import type { End } from '../units/ends.ts';
import type { SpotId } from '../units/ids.ts';

/** Who is here and for how long. */
export interface FlowSetting {
  /** Skaters and goalies, whole numbers ≥ 0. */
  readonly roster: { readonly skaters: number; readonly goalies: number };
  /** Minutes of the block, > 0. */
  readonly minutes: number;
  /** More than the drawn lines hold: they join the shortest line, or have no place and sit out. */
  readonly beyondLines: 'join' | 'sitOut';
}

/** A block of reps, played. Seconds and metres; `null` where nothing happened that could be counted. */
export interface FlowResult {
  readonly setting: FlowSetting;
  /** Reps that ended within the block; both ends at once count as two. */
  readonly repCount: number;
  readonly repS: number;
  /** Mean seconds from the start of a rep to the start of the next. */
  readonly everyS: number;
  /** What the next rep waited for in the end: nothing more than said, or those who were not back. */
  readonly lateRepCount: number;
  /** Set when the next rep was to start over a line that nobody and no puck crosses: it starts at the end then. */
  readonly neverClears: boolean;
  readonly lines: readonly LineFlow[];
  readonly skaters: readonly SkaterFlow[];
  /** Means over the skaters who have a place. */
  readonly each: EachFlow;
  readonly goalies: readonly GoalieFlow[];
  readonly nets: readonly NetFlow[];
  /** Skaters whom the small games have; they stand in no line. */
  readonly inGamesCount: number;
  /** Skaters in motion inside a rep or playing a small game, on the mean of the block; those who skate back to their line are not counted. */
  readonly movingCount: number;
  readonly movingRatio: number;
  /** Spots that stood empty in some rep, with in how many. */
  readonly unfilled: readonly { readonly spot: SpotId; readonly repCount: number }[];
  readonly sitsOut: readonly { readonly spot: SpotId | null; readonly number: number }[];
  readonly findings: readonly Finding[];
}

/** One waiting line: that of a spot, at the end drawn (0) or at the other (1). */
export interface LineFlow {
  readonly spot: SpotId;
  readonly end: 0 | 1;
  /** Skaters at the first whistle, the first one with them. */
  readonly skaterCount: number;
  readonly goCount: number;
  readonly standsLongestS: number;
  readonly standsMeanS: number;
  /** Work of one rep from this spot, and the mean time from the end of somebody's last go to the next from here. */
  readonly workS: number;
  readonly restS: number | null;
  /** Reps that had to wait for this line. */
  readonly lateCount: number;
}

export interface SkaterFlow {
  /** Line and number in it at the first whistle, from 1; null without a place. */
  readonly spot: SpotId | null;
  readonly end: 0 | 1;
  readonly number: number;
  readonly goCount: number;
  readonly workS: number;
  readonly waitS: number;
  readonly sitOutS: number;
  readonly distanceM: number;
  readonly highSpeedS: number;
  readonly puckS: number;
  readonly receiveCount: number;
  readonly shotCount: number;
}

export interface EachFlow {
  readonly goCount: number;
  readonly fewestGoes: number;
  readonly mostGoes: number;
  readonly workS: number;
  readonly waitS: number;
  /** Rest for each second of work, over the whole block; null without work. */
  readonly restRatio: number | null;
  /** Mean time from the end of a go to the beginning of the next; null when nobody goes twice. */
  readonly restS: number | null;
  readonly distanceM: number;
  readonly highSpeedS: number;
  readonly puckS: number;
  readonly receiveCount: number;
  readonly shotCount: number;
}

export interface GoalieFlow {
  /** From 1. */
  readonly number: number;
  readonly end: End;
  readonly shotCount: number;
  /** Mean and least seconds between two shots; null with fewer than two. */
  readonly betweenS: number | null;
  readonly leastBetweenS: number | null;
}

/** A net that is shot at. Two goalies at one net take turns, rep by rep. */
export interface NetFlow {
  readonly end: End;
  readonly shotCount: number;
  readonly goalieCount: number;
  readonly leastBetweenS: number | null;
}

/** A block before it has been judged. */
export type PlayedFlow = Omit<FlowResult, 'findings'>;
