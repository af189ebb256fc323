import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseSync } from 'oxc-parser';

/** Source files below a folder, tests and benches (`*.bench.ts`, and folders named `bench`) left out, with `/` between the parts on every system. */
export function sourcesUnder(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap(item => {
    const path = `${folder}/${item.name}`;
    if (item.isDirectory())
      return ['node_modules', 'dist', 'golden', 'bench'].includes(item.name) ? [] : sourcesUnder(path);
    return /\.tsx?$/.test(item.name) && !/\.(test|bench|e2e)\.tsx?$/.test(item.name) ? [path] : [];
  });
}

/** Every module a file imports or re-exports, static or lazy, as written. */
export function importsOf(path: string): string[] {
  const source = readFileSync(join(process.cwd(), path), 'utf8');
  const { module } = parseSync(path, source);
  const named = [
    ...module.staticImports.map(found => found.moduleRequest.value),
    ...module.staticExports.flatMap(found => found.entries.map(entry => entry.moduleRequest?.value ?? '')),
    ...module.dynamicImports.map(found =>
      source.slice(found.moduleRequest.start, found.moduleRequest.end).replace(/^['"`]|['"`]$/g, ''),
    ),
  ];
  return [...new Set(named.filter(name => name !== ''))];
}
