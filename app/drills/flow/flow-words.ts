import type { Drill } from '@icewright/book';
import type { FlowResult } from '@icewright/engine';
import { countSaid, numberSaid } from '../../parts/figures.ts';
import { roleOf } from '../act-words.ts';
import { MISSING } from './use-flow.ts';

/** Who never goes, by line and place in it. */
export function sitsOutSaid(drill: Drill, flow: FlowResult): string {
  const without = flow.sitsOut.filter(one => one.spot === null).length;
  const late = flow.sitsOut.flatMap(one =>
    one.spot === null ? [] : [`${ordinal(one.number)} in the ${roleOf(drill, one.spot)} line`],
  );
  const said = [
    without > 0 &&
      `${countSaid(without, 'skater has', 'skaters have')} no place in a line and sit${without === 1 ? 's' : ''} out.`,
    late.length > 0 && `Never ${late.length === 1 ? 'goes' : 'go'}: the ${late.join(', the ')}.`,
    ...flow.unfilled.map(
      one =>
        `${roleOf(drill, one.spot)} stands empty in ${one.repCount === flow.repCount ? 'every rep' : `${one.repCount} of ${flow.repCount} reps`}: the figures are those of the whole rep.`,
    ),
  ].filter(Boolean);
  return said.length === 0 ? 'Nobody sits out.' : said.join(' ');
}

/** With how many skaters everybody goes. */
export function withHowManySaid(
  range: { readonly least: number; readonly most: number | null } | null,
): string {
  if (range === null) return '';
  if (range.most === null) return `Everybody goes with ${range.least} or more.`;
  return range.least === range.most
    ? `Everybody goes, and no spot stands empty, with ${range.least}.`
    : `Everybody goes with ${range.least} to ${range.most}.`;
}

/** What changes with two missing beyond the figures: which spot stands empty then that did not before. */
export function missingSaid(drill: Drill, flow: FlowResult, missing: FlowResult): string {
  const before = new Set(flow.unfilled.map(one => one.spot));
  const empty = missing.unfilled.filter(one => !before.has(one.spot)).map(one => roleOf(drill, one.spot));
  if (empty.length > 0)
    return `With ${countWord(MISSING)} missing nobody is left for ${empty.join(' and ')}.`;
  return missing.lateRepCount > flow.lateRepCount && drill.flow?.next.on === 'every'
    ? `With ${countWord(MISSING)} missing they are not back in time: a rep every ${numberSaid(missing.everyS)} s.`
    : '';
}

export const countWord = (count: number): string =>
  ['none', 'one', 'two', 'three', 'four'][count] ?? String(count);

const ordinal = (number: number): string => {
  const tens = number % 100;
  const suffix = tens >= 11 && tens <= 13 ? 'th' : (['th', 'st', 'nd', 'rd'][number % 10] ?? 'th');
  return `${number}${suffix}`;
};
