import { INKS } from './inks.ts';
import { LETTERINGS, type Lettering } from './lettering.ts';
import { MARKS, type Mark } from './marks.ts';

/**
 * The style sheet of the pictures on screen, written from the table of marks: colours as theme variables, letters as
 * fonts. Widths and dashes are not here: pens write them as attributes, since they depend on the drawing's size.
 */
export const iceCss = (): string => {
  const lines = [
    '/* Written from picture/marks.ts and picture/lettering.ts: change those, then UPDATE_GOLDEN=1 npx vitest run picture. */',
    `/* Needs the variables ${INKS.map(ink => `--${ink}`).join(', ')}, --words and --figures. */`,
    ...Object.entries(MARKS).map(([name, mark]) => ruleOf(`mk-${name}`, markRules(mark))),
    ...Object.entries(LETTERINGS).map(([name, lettering]) => ruleOf(`tx-${name}`, letterRules(lettering))),
  ];
  return `${lines.join('\n')}\n`;
};

const ruleOf = (name: string, rules: readonly string[]): string =>
  `.${name} {\n${rules.map(rule => `  ${rule}\n`).join('')}}`;

const markRules = (mark: Mark): readonly string[] =>
  [
    `fill: ${mark.fill ? `var(--${mark.fill})` : 'none'};`,
    mark.stroke ? `stroke: var(--${mark.stroke});` : '',
    mark.cap ? `stroke-linecap: ${mark.cap};` : '',
    mark.join ? `stroke-linejoin: ${mark.join};` : '',
    mark.opacity !== undefined ? `opacity: ${mark.opacity};` : '',
  ].filter(rule => rule !== '');

const letterRules = (lettering: Lettering): readonly string[] =>
  [
    `font-family: var(--${lettering.voice});`,
    `font-weight: ${lettering.weight};`,
    lettering.stretch ? `font-stretch: ${lettering.stretch}%;` : '',
    lettering.italic ? 'font-style: italic;' : '',
    'font-variant-numeric: tabular-nums lining-nums;',
    `fill: var(--${lettering.ink});`,
    lettering.casing
      ? `stroke: var(--${lettering.casing.ink});\n  stroke-linejoin: round;\n  paint-order: stroke;`
      : '',
  ].filter(rule => rule !== '');
