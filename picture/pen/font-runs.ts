/**
 * Font files are split by script: a name such as Žižková needs two of them. The ranges are those that
 * @fontsource/encode-sans 5.3.0 and @fontsource/newsreader 5.3.0 print in their style sheets (unicode-range).
 */
export const FONT_SCRIPTS = ['latin', 'latin-ext', 'vietnamese'] as const;

export type FontScript = (typeof FONT_SCRIPTS)[number];

export interface FontRun {
  readonly script: FontScript;
  readonly words: string;
}

const RANGES: Readonly<Record<FontScript, readonly (readonly [from: number, to: number])[]>> = {
  latin: [
    [0x0000, 0x00ff],
    [0x0131, 0x0131],
    [0x0152, 0x0153],
    [0x02bb, 0x02bc],
    [0x02c6, 0x02c6],
    [0x02da, 0x02da],
    [0x02dc, 0x02dc],
    [0x0304, 0x0304],
    [0x0308, 0x0308],
    [0x0329, 0x0329],
    [0x2000, 0x206f],
    [0x20ac, 0x20ac],
    [0x2122, 0x2122],
    [0x2191, 0x2191],
    [0x2193, 0x2193],
    [0x2212, 0x2212],
    [0x2215, 0x2215],
    [0xfeff, 0xfeff],
    [0xfffd, 0xfffd],
  ],
  'latin-ext': [
    [0x0100, 0x02ba],
    [0x02bd, 0x02c5],
    [0x02c7, 0x02cc],
    [0x02ce, 0x02d7],
    [0x02dd, 0x02ff],
    [0x0304, 0x0304],
    [0x0308, 0x0308],
    [0x0329, 0x0329],
    [0x1d00, 0x1dbf],
    [0x1e00, 0x1e9f],
    [0x1ef2, 0x1eff],
    [0x2020, 0x2020],
    [0x20a0, 0x20ab],
    [0x20ad, 0x20c0],
    [0x2113, 0x2113],
    [0x2c60, 0x2c7f],
    [0xa720, 0xa7ff],
  ],
  vietnamese: [
    [0x0102, 0x0103],
    [0x0110, 0x0111],
    [0x0128, 0x0129],
    [0x0168, 0x0169],
    [0x01a0, 0x01a1],
    [0x01af, 0x01b0],
    [0x0300, 0x0301],
    [0x0303, 0x0304],
    [0x0308, 0x0309],
    [0x0323, 0x0323],
    [0x0329, 0x0329],
    [0x1ea0, 0x1ef9],
    [0x20ab, 0x20ab],
  ],
};

/** The words in runs that one font file each can set. A letter that none of them has stays with `latin`, as a box. */
export const fontRunsOf = (words: string): readonly FontRun[] => {
  const runs: { script: FontScript; words: string }[] = [];
  for (const letter of words.normalize('NFC')) {
    const last = runs[runs.length - 1];
    const code = letter.codePointAt(0) ?? 0;
    const script =
      last && isIn(last.script, code)
        ? last.script
        : (FONT_SCRIPTS.find(each => isIn(each, code)) ?? 'latin');
    if (last?.script === script) last.words += letter;
    else runs.push({ script, words: letter });
  }
  return runs;
};

/** The letters of a script's files as a style sheet says them (unicode-range). */
export const unicodeRangeOf = (script: FontScript): string =>
  RANGES[script].map(([from, to]) => `U+${hex(from)}${to === from ? '' : `-${hex(to)}`}`).join(',');

const hex = (code: number): string => code.toString(16).toUpperCase().padStart(4, '0');

/** Whether the font files hold every letter of the words; others than Latin letters are not in these fonts. */
export const canSet = (words: string): boolean =>
  [...words.normalize('NFC')].every(letter =>
    FONT_SCRIPTS.some(script => isIn(script, letter.codePointAt(0) ?? 0)),
  );

const isIn = (script: FontScript, code: number): boolean =>
  RANGES[script].some(([from, to]) => code >= from && code <= to);
