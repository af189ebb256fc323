import { boardsDistance } from '../rink/boards.ts';
import type { Rink } from '../rink/rink.ts';
import type { Level } from '../skater/level.ts';
import { madeOf } from '../units/made-of.ts';
import type { IcePoint } from '../units/points.ts';
import { type DraftIssue, draftIssuesOf } from './draft-issues.ts';
import type { DrillPlan, Spot } from './drill.ts';
import { standingPointOf } from './in-boards.ts';
import type { PlayableAct, PlayableSpot, PuckStart } from './playable-parts.ts';
import { puckStartsOf } from './puck-start.ts';

/** A drill that can be run: every name in it is known, every number finite and in range, every spot stands on the ice. */
export interface Playable {
  readonly kind: 'playable';
  readonly rink: Rink;
  readonly level: Level;
  /** By rank. */
  readonly spots: readonly PlayableSpot[];
  /** Those on sticks first; empty when the drill has none. */
  readonly pucks: readonly PuckStart[];
}

/** A draft that cannot be run, with everything that is wrong with it. */
export interface Unplayable {
  readonly kind: 'unplayable';
  readonly issues: readonly DraftIssue[];
}

/**
 * Checks a draft for a rink and a level. Metres, frame of the rink. Anything that has no meaning (a name that is not there, a
 * number that is none) is an issue; what can be run but is unwise (a spot off the ice, a cue that cannot come) is let
 * through and becomes a finding of the run. A spot drawn off the ice is moved to the nearest place to stand.
 */
export const playableOf = (plan: DrillPlan, rink: Rink, level: Level): Playable | Unplayable => {
  const issues = draftIssuesOf(plan);
  if (issues.length > 0) return { kind: 'unplayable', issues };
  const spots = madeOf(byRank(plan.spots), spot => ({
    ...spot,
    ...onTheIce(spot, rink),
    acts: actsOf(spot.acts),
  }));
  return { kind: 'playable', rink, level, spots, pucks: puckStartsOf(plan.pucks, spots, level) };
};

const onTheIce = (spot: Spot, rink: Rink): { atM: IcePoint; drawnOffM?: IcePoint } => {
  const atM = standingPointOf(rink.boards, spot.atM);
  return boardsDistance(rink.boards, spot.atM) < 0 ? { atM, drawnOffM: spot.atM } : { atM };
};

const rankedActs = new WeakMap<Spot['acts'], readonly PlayableAct[]>();

/** The acts by rank; the same objects each time for the same (immutable) list, so that what is known of an act can be kept with it. */
const actsOf = (acts: Spot['acts']): readonly PlayableAct[] => {
  const before = rankedActs.get(acts);
  if (before) return before;
  const ranked = byRank(acts);
  rankedActs.set(acts, ranked);
  return ranked;
};

/** Items of a list that is kept as a record, in the order of their ranks; equal ranks by id, so that the order never wavers. */
const byRank = <ItemId extends string, Item extends { readonly rank: number }>(
  list: Readonly<Record<ItemId, Item>>,
): (Item & { readonly id: ItemId })[] =>
  madeOf(Object.entries(list) as [ItemId, Item][], ([id, item]) => ({ ...item, id })).sort(
    (a, b) => a.rank - b.rank || (a.id < b.id ? -1 : 1),
  );
