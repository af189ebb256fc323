import type { LineId } from '../rink/lines.ts';
import type { End } from '../units/ends.ts';
import type { DrillPlan } from './drill.ts';
import { lineAtOtherEnd, weAttack } from './playing-end.ts';

/** The lines as a team calls them that plays towards plusX. */
export const LINE_WORDS: Readonly<Record<LineId, string>> = {
  goalLineMinusX: 'our goal line',
  blueLineMinusX: 'our blue line',
  centreLine: 'the red line',
  blueLinePlusX: 'their blue line',
  goalLinePlusX: 'their goal line',
};

/** A line as this drill's people call it: by the end that we play towards. */
export const lineWords = (line: LineId, plan: Pick<DrillPlan, 'spots'>): string =>
  LINE_WORDS[endOfPlan(plan) === 'plusX' ? line : lineAtOtherEnd(line)];

/** Whether an end of the sheet is ours to defend in this drill. */
export const isOurEnd = (end: End, plan: Pick<DrillPlan, 'spots'>): boolean => endOfPlan(plan) !== end;

const endOfPlan = ({ spots }: Pick<DrillPlan, 'spots'>): End => weAttack(Object.values(spots));
