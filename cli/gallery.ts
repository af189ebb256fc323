import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { svgMarkup } from '@icewright/picture';

const HELP = `gallery: one page with every picture of picture/scenes, each with the name of its file.

  npm run gallery            writes dist/gallery/index.html
  npm run gallery -- --out DIR
  npm run gallery -- rinks drill    only files whose name holds one of these`;

interface GalleryScene {
  readonly title: string;
  readonly viewBox: readonly [number, number, number, number];
  readonly k?: number;
  readonly thinFloor?: number;
  readonly digits?: number;
  readonly draw: Parameters<typeof svgMarkup>[0];
}

const root = join(import.meta.dirname, '..');
const { values, positionals } = parseArgs({
  options: { out: { type: 'string' }, help: { type: 'boolean' } },
  allowPositionals: true,
});
if (values.help) console.log(HELP);
else await writeGallery(values.out ?? join(root, 'dist', 'gallery'));

async function writeGallery(folder: string): Promise<void> {
  const scenes = await scenesOf(join(root, 'picture', 'scenes'));
  mkdirSync(folder, { recursive: true });
  const file = join(folder, 'index.html');
  writeFileSync(file, pageOf(scenes));
  console.log(`${scenes.length} pictures in ${file}`);
}

async function scenesOf(folder: string): Promise<readonly (readonly [string, GalleryScene])[]> {
  const found: (readonly [string, GalleryScene])[] = [];
  for (const name of readdirSync(folder).sort()) {
    if (!name.endsWith('.ts') || name.endsWith('.test.ts')) continue;
    if (positionals.length > 0 && !positionals.some(wanted => name.includes(wanted))) continue;
    const module = (await import(join(folder, name))) as { readonly default?: GalleryScene };
    if (module.default) found.push([name, module.default]);
  }
  return found;
}

function pageOf(scenes: readonly (readonly [string, GalleryScene])[]): string {
  const figures = scenes.map(([name, scene], index) => {
    const svg = svgMarkup(scene.draw, { ...scene, label: scene.title, idPrefix: `scene-${index}` });
    return `<figure id="${name}"><figcaption>${scene.title} <code>picture/scenes/${name}</code></figcaption>${svg}</figure>`;
  });
  const styles = ['tokens.css', 'ice.css'].map(file =>
    readFileSync(join(root, 'app', 'parts', file), 'utf8'),
  );
  return `<!doctype html>
<html lang="en" data-theme="ice"><head><meta charset="utf-8"><title>Gallery · Icewright</title>
<style>${fontFaces()}${styles.join('\n')}
body { margin: 0; padding: 24px; background: var(--paper); color: var(--ink); font: 13px/1.4 var(--figures); }
figure { margin: 0 0 40px; } figcaption { padding: 0 0 8px; } code { color: var(--ink-3); } svg { display: block; width: 100%; max-width: 1392px; max-height: 1400px; }
</style></head><body>
${figures.join('\n')}
</body></html>
`;
}

function fontFaces(): string {
  const face = (family: string, file: string, style: string): string => {
    const bytes = readFileSync(join(root, 'node_modules', '@fontsource-variable', file)).toString('base64');
    return `@font-face { font-family: "${family}"; font-style: ${style}; font-weight: 100 900; font-stretch: 75% 125%; src: url(data:font/woff2;base64,${bytes}) format("woff2"); }\n`;
  };
  return [
    face('Encode Sans Variable', 'encode-sans/files/encode-sans-latin-standard-normal.woff2', 'normal'),
    face('Newsreader Variable', 'newsreader/files/newsreader-latin-wght-normal.woff2', 'normal'),
    face('Newsreader Variable', 'newsreader/files/newsreader-latin-wght-italic.woff2', 'italic'),
  ].join('');
}
