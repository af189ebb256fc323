import type { Drill } from '@icewright/book';
import { type Finding, findingSentence, type IcePoint } from '@icewright/engine';
import { inUnitsOf, type Lengths, lengthSaid } from '../../parts/figures.ts';

/** A finding as the list says it: what, the words up to the figure that can be asked, the figure, and the rest. */
export interface FindingWords {
  readonly what: string;
  readonly before: string;
  readonly figure: string;
  readonly after: string;
}

/** The last figure of the sentence can be asked: it is what the finding is held against. Without a figure, the time is asked. */
export function findingWords(finding: Finding, drill: Drill, lengths: Lengths): FindingWords {
  const sentence = findingSentence(finding, drill, lengths);
  const colon = sentence.indexOf(': ');
  const what = colon < 0 ? sentence : sentence.slice(0, colon + 1);
  const why = colon < 0 ? '' : sentence.slice(colon + 1);
  const figures = [...why.matchAll(/\d+(\.\d+)? (m\/s|ft\/s|m|ft|s)\b/g)];
  const last = figures.at(-1);
  if (last === undefined) return { what, before: why, figure: '', after: '' };
  const end = last.index + last[0].length;
  return { what, before: why.slice(0, last.index), figure: last[0], after: why.slice(end) };
}

/** 12.3 m from the red line towards their end, 4.0 m from the middle. */
export function placeSaid({ xM, yM }: IcePoint, lengths: Lengths): string {
  const along = `${lengthSaid(Math.abs(xM), lengths)} from the red line towards ${xM < 0 ? 'our' : 'their'} end`;
  return `${along}, ${lengthSaid(Math.abs(yM), lengths)} from the middle`;
}

/** 5.1 m against 6.2 m. */
export const againstSaid = (finding: Finding, lengths: Lengths): string =>
  `${inUnitsOf(lengths, finding.value, finding.unit)} against ${inUnitsOf(lengths, finding.threshold, finding.unit)}`;
