import type { Drill } from '@icewright/book';
import { type Finding, findingSentence, type IcePoint, isOurEnd } from '@icewright/engine';
import { inUnitsOf, type Lengths, lengthSaid } from '../../parts/figures.ts';

/** A finding as the list says it: what, the words up to the figure that can be asked, the figure, and the rest. */
export interface FindingWords {
  readonly what: string;
  readonly before: string;
  readonly figure: string;
  readonly after: string;
}

/**
 * The last figure after what is the matter can be asked: it is what the finding is held against. Else the last in the sentence; a
 * sentence without figures has its time asked.
 */
export function findingWords(finding: Finding, drill: Drill, lengths: Lengths): FindingWords {
  const sentence = findingSentence(finding, drill, lengths);
  const split = /[:,](?= )/.exec(sentence);
  const at = split === null ? sentence.length : split.index + 1;
  const figure = lastFigure(sentence, at) ?? lastFigure(sentence, 0);
  if (figure === undefined) return { what: sentence, before: '', figure: '', after: '' };
  const end = Math.min(at, figure.from);
  return {
    what: sentence.slice(0, end),
    before: sentence.slice(end, figure.from),
    figure: sentence.slice(figure.from, figure.to),
    after: sentence.slice(figure.to),
  };
}

/** The last figure with its unit from there on; without one, the last bare figure. */
function lastFigure(
  sentence: string,
  from: number,
): { readonly from: number; readonly to: number } | undefined {
  for (const figure of [/\b\d+(\.\d+)? (m\/s|ft\/s|m|ft|s)\b/g, /\b\d+(\.\d+)?\b/g]) {
    const last = [...sentence.slice(from).matchAll(figure)].at(-1);
    if (last !== undefined) return { from: from + last.index, to: from + last.index + last[0].length };
  }
  return undefined;
}

/** 12.3 m from the red line towards their end, 4.0 m from the middle. */
export function placeSaid({ xM, yM }: IcePoint, lengths: Lengths, drill: Pick<Drill, 'spots'>): string {
  const along = `${lengthSaid(Math.abs(xM), lengths)} from the red line towards ${isOurEnd(xM < 0 ? 'minusX' : 'plusX', drill) ? 'our' : 'their'} end`;
  return `${along}, ${lengthSaid(Math.abs(yM), lengths)} from the middle`;
}

/** 5.1 m against 6.2 m. */
export const againstSaid = (finding: Finding, lengths: Lengths): string =>
  `${inUnitsOf(lengths, finding.value, finding.unit)} against ${inUnitsOf(lengths, finding.threshold, finding.unit)}`;
