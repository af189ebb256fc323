import type { LetteringName } from '../lettering.ts';
import type { Measure } from '../pen/paper-measure.ts';

/** The words in lines no wider than this, broken at plain spaces, never at one that holds two words together (U+00A0); with `mostLines`, what does not fit ends in an ellipsis. */
export const wrapWords = (
  pen: Measure,
  lettering: LetteringName,
  words: string,
  width: number,
  mostLines = Number.POSITIVE_INFINITY,
): readonly string[] => {
  const lines: string[] = [];
  let line = '';
  for (const word of words.split(/[ \t\r\n]+/).filter(each => each !== '')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && pen.measure(lettering, longer) > width) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  if (line !== '') lines.push(line);
  const shown = lines.slice(0, mostLines);
  const isCut = lines.length > shown.length;
  return shown.map((each, index) =>
    fitted(pen, lettering, each, width, isCut && index === shown.length - 1).replaceAll('\u00a0', ' '),
  );
};

const fitted = (
  pen: Measure,
  lettering: LetteringName,
  line: string,
  width: number,
  isCut: boolean,
): string => {
  if (!isCut && pen.measure(lettering, line) <= width) return line;
  let kept = line;
  while (kept.length > 1 && pen.measure(lettering, `${kept}…`) > width) kept = kept.slice(0, -1);
  return `${kept.trimEnd()}…`;
};
