import type { DrillPlan } from '../drill/drill.ts';
import type { Run } from '../run/run-result.ts';
import { isNone, type None } from '../units/none.ts';
import { flowOf, type NoFlow } from './flow-of.ts';
import type { FlowSetting } from './flow-result.ts';

/** More than ever stand on one sheet. */
const MOST_SKATERS = 60;

/**
 * With how many skaters nobody sits out and no spot stands empty, as whole numbers: from `least` to `most`; `most` is null
 * when even 60 all get a go. The same None as `flowOf`; null when there is no such number, as where a line runs dry. Found
 * by halving: with one more skater nobody gets a go sooner.
 */
export const everybodyGoesWith = (
  plan: DrillPlan,
  run: Run,
  setting: FlowSetting,
): { readonly least: number; readonly most: number | null } | None<NoFlow> | null => {
  const playedWith = (skaters: number) =>
    flowOf(plan, run, { ...setting, roster: { ...setting.roster, skaters } });
  const one = playedWith(1);
  if (isNone(one)) return one;
  const least = one.lines.length;
  const isGood = (skaters: number): boolean => {
    const flow = playedWith(skaters);
    return !isNone(flow) && flow.sitsOut.length === 0 && flow.unfilled.length === 0;
  };
  if (!isGood(least)) return null;
  if (isGood(MOST_SKATERS)) return { least, most: null };
  let good = least;
  let bad = MOST_SKATERS;
  while (bad - good > 1) {
    const middle = (good + bad) >> 1;
    if (isGood(middle)) good = middle;
    else bad = middle;
  }
  return { least, most: good };
};
