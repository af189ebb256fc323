import type { DrillPlan } from '../drill/drill.ts';
import type { Finding, Run } from '../run/run-result.ts';
import { findGoalieNoTime } from './find-goalie-no-time.ts';
import { findLineInTheWay } from './find-line-in-the-way.ts';
import { findLineStands } from './find-line-stands.ts';
import { findRepThroughGame } from './find-rep-through-game.ts';
import { findTooFewPucks, findTooFewSkaters } from './find-too-few.ts';
import type { PlayedFlow } from './flow-result.ts';
import type { RepFacts } from './rep-facts.ts';

/** What can hurt somebody in the block first, then what stops it, then what wastes the ice. Empty when there is nothing to say. */
export const findingsOfFlow = (
  plan: DrillPlan,
  run: Run,
  rep: RepFacts,
  flow: PlayedFlow,
): readonly Finding[] => [
  ...findRepThroughGame(plan, run),
  ...findLineInTheWay(plan, run, flow),
  ...findGoalieNoTime(plan, run, rep, flow),
  ...findTooFewSkaters(plan, rep, flow),
  ...findTooFewPucks(plan, rep, flow),
  ...findLineStands(plan, flow),
];
