import type { DrillPlan } from '../drill/drill.ts';
import type { Run } from '../run/run-result.ts';
import { isNone, type None } from '../units/none.ts';
import { flowOf, type NoFlow } from './flow-of.ts';
import type { FlowSetting } from './flow-result.ts';
import { isEveryGameFull } from './games-in-block.ts';

/** More than ever stand on one sheet. */
const MOST_SKATERS = 60;

/**
 * With how many skaters nobody sits out, no spot stands empty and every small game is full, as whole numbers: from `least` to `most`; `most` is null
 * when even 60 all get a go. The same None as `flowOf`; null when there is no such number, as where a line runs dry. Found
 * by halving: with one more skater nobody gets a go sooner.
 */
export const everybodyGoesWith = (
  plan: DrillPlan,
  run: Run,
  setting: FlowSetting,
): { readonly least: number; readonly most: number | null } | None<NoFlow> | null => {
  const withHere = (skaters: number): FlowSetting => ({ ...setting, roster: { ...setting.roster, skaters } });
  const playedWith = (skaters: number) => flowOf(plan, run, withHere(skaters));
  const one = playedWith(1);
  if (isNone(one)) return one;
  // Games have who is beyond the drawn lines: they are filled only after these.
  let least = one.lines.length;
  while (least < MOST_SKATERS && !isEveryGameFull(plan, withHere(least))) least++;
  const isGood = (skaters: number): boolean => {
    const flow = playedWith(skaters);
    return (
      !isNone(flow) &&
      flow.sitsOut.length === 0 &&
      flow.unfilled.length === 0 &&
      isEveryGameFull(plan, withHere(skaters))
    );
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
