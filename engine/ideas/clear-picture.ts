import { playableOf } from '../drill/playable.ts';
import type { Rink } from '../rink/rink.ts';
import { runDrill } from '../run/run-drill.ts';
import type { FindingKind } from '../run/run-result.ts';
import type { Level } from '../skater/level.ts';
import type { SpotId } from '../units/ids.ts';
import { type DrawnIdea, drawIdea, type IdeaShape } from './idea-plans.ts';
import type { Problem } from './problem-of.ts';

/** What must not happen to somebody who is in a drill only because she stood in the picture. */
const COLLIDES: readonly FindingKind[] = ['bodiesTouch', 'pathsCrossTooFast'];

/**
 * Draws an idea without those bystanders who would be skated into or through: where all go on as they stood, one picture does not say how
 * they kept clear of each other, and a drill that makes them collide is none. The least of them goes first, until nobody collides.
 * Metres; any problem can be drawn, and `newId` gives fresh ids. Our own rule.
 */
export const clearIdea = (
  problem: Problem,
  shape: IdeaShape,
  rink: Rink,
  level: Level,
  newId: () => string,
): DrawnIdea => {
  const drawn = drawIdea(problem, shape, rink, level, newId);
  const inTheWay = findInTheWay(drawn, rink, level);
  return inTheWay === undefined
    ? drawn
    : clearIdea(withoutSkater(problem, inTheWay), shape, rink, level, newId);
};

/** The same problem without somebody of the picture; the freeze it is likened to stays whole. Nobody of that id changes nothing. */
export const withoutSkater = (problem: Problem, skater: string): Problem => ({
  ...problem,
  others: problem.others.filter(other => other.id !== skater),
});

/** The bystander who collides most often in one rep of this plan, as the skater of the picture; undefined when none does. Always answers. */
export const findInTheWay = (drawn: DrawnIdea, rink: Rink, level: Level): string | undefined => {
  if (drawn.bystanders.length === 0) return undefined;
  const playable = playableOf(drawn.plan, rink, level);
  if (playable.kind === 'unplayable') return undefined;
  const counts = new Map<SpotId, number>();
  for (const finding of runDrill(playable).findings)
    if (finding.weight === 'look' && COLLIDES.includes(finding.kind))
      for (const spot of finding.spots) counts.set(spot, (counts.get(spot) ?? 0) + 1);
  return drawn.bystanders
    .filter(({ spot }) => counts.has(spot))
    .sort((a, b) => counts.get(b.spot)! - counts.get(a.spot)!)[0]?.skater;
};
