import type { DrillPlan, Lengths, Rink, Run } from '@icewright/engine';

/** A practice as it is printed: everything resolved to words, clock times and plans. */
export interface IceCard {
  readonly team: string;
  readonly title: string;
  /** Beside the title: date and times, place and minutes, next game. At most three are shown. */
  readonly facts: readonly { readonly small: string; readonly strong: string }[];
  /** What today is about, in the coach's words. Empty: the line is left out. */
  readonly today: string;
  readonly blocks: readonly IceCardBlock[];
  /** Groups, lines or pairs with their people, set in two columns. */
  readonly groups: readonly { readonly name: string; readonly people: string }[];
  /** A line below the groups: who may not be hit, who is missing, what the signal means. */
  readonly note: string;
  /** Cautions of this practice; the standing ones follow them. */
  readonly cautions: readonly string[];
}

export interface IceCardBlock {
  readonly startClock: string;
  readonly endClock: string;
  readonly minutes: number;
  readonly title: string;
  readonly cueWords: string;
  readonly keyPoints: readonly string[];
  /** Without a plan the block is words alone: a talk, a stretch. */
  readonly plan?: DrillPlan;
  /** As it was played: passes and chases are drawn where they went. */
  readonly run?: Run;
  /** How lengths are written in the drawing; metres when left out. */
  readonly lengths?: Lengths;
  readonly rink: Rink;
  /** Leads, pucks, ice, work to rest: at most four. */
  readonly facts: readonly { readonly name: string; readonly words: string }[];
}

/** Short and plain, where they matter; the rink's and the federation's rules come first. Common practice, no source. */
export const STANDING_CAUTIONS: readonly string[] = [
  'Ice and gates checked, nets pegged, everyone in full gear.',
  'No shot until the goalie looks at you.',
  'Nobody is hit from behind or near the boards; contact only where the age allows it.',
  'After a head knock: off, and back only as the medical staff say.',
  'Figures are estimates; the rink’s and the federation’s rules come first.',
];
