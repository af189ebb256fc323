import type { Lettering } from '../lettering.ts';
import { FONT_SCRIPTS, type FontScript } from './font-runs.ts';

/** One font file that the PDF pen may ask for: register it in the document under this name. */
export interface PdfFont {
  readonly name: string;
  /** Path inside node_modules. */
  readonly file: string;
}

type Face = 'figures-400' | 'figures-600' | 'words-400' | 'words-400-italic' | 'words-500';

const FACE_FILES: Readonly<Record<Face, (script: FontScript) => string>> = {
  'figures-400': script => `@fontsource/encode-sans/files/encode-sans-${script}-400-normal.woff`,
  'figures-600': script => `@fontsource/encode-sans/files/encode-sans-${script}-600-normal.woff`,
  'words-400': script => `@fontsource/newsreader/files/newsreader-${script}-400-normal.woff`,
  'words-400-italic': script => `@fontsource/newsreader/files/newsreader-${script}-400-italic.woff`,
  'words-500': script => `@fontsource/newsreader/files/newsreader-${script}-500-normal.woff`,
};

/** All files, `latin` first: a document registers them, and embeds only those that it used. */
export const PDF_FONTS: readonly PdfFont[] = FONT_SCRIPTS.flatMap(script =>
  (Object.keys(FACE_FILES) as Face[]).map(face => ({
    name: `${face} ${script}`,
    file: FACE_FILES[face](script),
  })),
);

/** The static fonts of paper have three weights in all: the nearest is taken. */
export const pdfFontName = (lettering: Lettering, script: FontScript): string =>
  `${faceOf(lettering)} ${script}`;

const faceOf = (lettering: Lettering): Face => {
  if (lettering.voice === 'figures') return lettering.weight >= 550 ? 'figures-600' : 'figures-400';
  if (lettering.italic) return 'words-400-italic';
  return lettering.weight >= 450 ? 'words-500' : 'words-400';
};
