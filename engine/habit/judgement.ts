import type { Estimate } from '../units/points.ts';
import type { StandardAnswer } from './standard.ts';

export const JUDGE_REASONS = [
  'clear',
  'straddles',
  'whoIsUnsure',
  'nobodyOfWho',
  'noPuck',
  'noCarrier',
  'nobodyOfThem',
  'notEveryonePlaced',
  'roleNotSaid',
  'puckIsOurs',
  'puckIsTheirs',
] as const;

/**
 * Why the answer is what it is. `clear`: the ± is on one side of the threshold. `straddles`: it is on both.
 * `whoIsUnsure`: two may be the one the standard speaks of, and they differ. `puckIsOurs`, `puckIsTheirs`: the standard does not
 * speak of a picture in which that side has it. `roleNotSaid`: of one of ours it is not known whether he is a forward or a defender. The others: what the picture lacks.
 */
export type JudgeReason = (typeof JUDGE_REASONS)[number];

export interface Judgement {
  readonly answer: StandardAnswer;
  readonly why: JudgeReason;
  /** Ids of those considered, the deciding one first. */
  readonly who: readonly string[];
  /** Ids of those measured against, the deciding one first; 'puck', 'ourNet' and zones by their own word. */
  readonly whom: readonly string[];
  /** What was measured, in `unit`: it must be at most the threshold (at least, for `numbers`). */
  readonly reading?: Estimate;
  readonly threshold: number;
  readonly unit: 'm' | '';
}
