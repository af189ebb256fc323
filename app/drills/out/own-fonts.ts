import { type FontScript, fontRunsOf, unicodeRangeOf } from '@icewright/picture';

/**
 * The letters of a picture, inside its file: it then looks the same where our fonts are not installed, and an `<img>`
 * may load nothing from outside. Only the files whose letters are used.
 */
export async function ownFontRules(words: string): Promise<string> {
  const scripts = new Set<FontScript>(['latin', ...fontRunsOf(words).map(run => run.script)]);
  const rules = FACES.flatMap(face => [...scripts].map(script => ruleOf(face, script)));
  return (await Promise.all(rules)).join('');
}

interface Face {
  readonly family: string;
  readonly style: 'normal' | 'italic';
  readonly weights: string;
  readonly stretch?: string;
  readonly file: (script: FontScript) => string;
}

const FACES: readonly Face[] = [
  {
    family: 'Encode Sans',
    style: 'normal',
    weights: '100 900',
    stretch: '75% 125%',
    file: script => `encode-sans/files/encode-sans-${script}-standard-normal.woff2`,
  },
  ...(['normal', 'italic'] as const).map(style => ({
    family: 'Newsreader',
    style,
    weights: '200 800',
    file: (script: FontScript) => `newsreader/files/newsreader-${script}-wght-${style}.woff2`,
  })),
];

const addresses = import.meta.glob<string>(
  [
    '../../../node_modules/@fontsource-variable/encode-sans/files/encode-sans-{latin,latin-ext,vietnamese}-standard-normal.woff2',
    '../../../node_modules/@fontsource-variable/newsreader/files/newsreader-{latin,latin-ext,vietnamese}-wght-{normal,italic}.woff2',
  ],
  { query: '?url', import: 'default', eager: true },
);

async function ruleOf(face: Face, script: FontScript): Promise<string> {
  const file = face.file(script);
  const address = addresses[`../../../node_modules/@fontsource-variable/${file}`];
  if (address === undefined) throw new Error(`no font file ${file} was built in`);
  const bytes = new Uint8Array(await (await fetch(address)).arrayBuffer());
  const stretch = face.stretch === undefined ? '' : `font-stretch:${face.stretch};`;
  return `@font-face{font-family:"${face.family}";font-style:${face.style};font-weight:${face.weights};${stretch}unicode-range:${unicodeRangeOf(script)};src:url(data:font/woff2;base64,${base64Of(bytes)}) format("woff2")}`;
}

function base64Of(bytes: Uint8Array): string {
  let text = '';
  for (let from = 0; from < bytes.length; from += 0x8000)
    text += String.fromCharCode(...bytes.subarray(from, from + 0x8000));
  return btoa(text);
}
