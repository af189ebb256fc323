import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { iceCss } from './ice-css.ts';
import { svgFile } from './pen/svg-pen.ts';
import type { Scene } from './scenes/scene.ts';

// Golden files are pictures a coach could look at. Only UPDATE_GOLDEN=1 npx vitest run picture rewrites them.
const rewrites = process.env.UPDATE_GOLDEN === '1';
const scenesFolder = join(import.meta.dirname, 'scenes');
const goldenFolder = join(import.meta.dirname, 'golden');
const LARGEST_GOLDEN_BYTES = 120_000;

const scenes = (
  await Promise.all(
    readdirSync(scenesFolder)
      .filter(name => name.endsWith('.ts'))
      .map(async name => {
        const module = (await import(join(scenesFolder, name))) as { readonly default?: Scene };
        return module.default ? [{ name: name.replace(/\.ts$/, ''), scene: module.default }] : [];
      }),
  )
).flat();

const compare = (file: string, text: string): void => {
  if (rewrites) {
    mkdirSync(goldenFolder, { recursive: true });
    writeFileSync(file, text);
  }
  expect(existsSync(file), `${file} is missing: UPDATE_GOLDEN=1 npx vitest run picture`).toBe(true);
  expect(text === readFileSync(file, 'utf8'), `${file} has changed: look at it, then UPDATE_GOLDEN=1`).toBe(
    true,
  );
};

describe('golden pictures', () => {
  it('are of many scenes', () => {
    expect(scenes.length).toBeGreaterThan(10);
  });

  for (const { name, scene } of scenes) {
    if (scene.computed) {
      it(`${name} can be drawn`, () => {
        expect(svgFile(scene.draw, scene).length).toBeGreaterThan(2000);
      });
      continue;
    }
    it(`${name} is as it was`, () => {
      const file = join(goldenFolder, `${name}.svg`);
      const digits = Math.min(scene.digits ?? 2, 2);
      compare(file, `${svgFile(scene.draw, { ...scene, digits }).replaceAll('><', '>\n<')}\n`);
      expect(statSync(file).size).toBeLessThan(LARGEST_GOLDEN_BYTES);
    });
  }

  it('holds no picture without a scene', () => {
    const kept = scenes.filter(({ scene }) => !scene.computed).map(({ name }) => `${name}.svg`);
    expect(readdirSync(goldenFolder).filter(name => !kept.includes(name))).toEqual([]);
  });
});

describe('the style sheet of the screens', () => {
  it('is the one that the table of marks writes', () => {
    compare(join(import.meta.dirname, '..', 'app', 'parts', 'ice.css'), iceCss());
  });
});
