import { readdirSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Bench, BenchRow, BenchStop } from './bench-row.ts';

// Every `*.bench.ts` beside the source it times, one after the other, so that no two share the cores.

const wanted = process.argv.slice(2).filter(word => !word.startsWith('-'));
if (process.argv.includes('--help')) {
  console.log(
    'npm run bench -- [WORD …]\nRuns every *.bench.ts whose path holds one of the words, and prints its bars.',
  );
  process.exit(0);
}

const files = ['engine', 'picture', 'book', 'server', 'app', 'cli']
  .flatMap(benchesUnder)
  .filter(file => wanted.length === 0 || wanted.some(word => file.includes(word)));

console.log(`${pad('what', 62)}${pad('median', 14)}${pad('spread', 22)}${pad('bar', 16)}meets`);
for (const file of files) {
  const module: { default?: Bench } = await import(pathToFileURL(resolve(file)).href);
  if (!module.default) throw new Error(`${file} has no default export to run.`);
  try {
    for await (const row of eachOf(module.default())) print(row);
  } catch (error) {
    // One that cannot run must not hide the others.
    process.exitCode = 1;
    console.log(`${file} stopped: ${error instanceof Error ? error.message : String(error)}`);
  }
}

async function* eachOf(rows: ReturnType<Bench>): AsyncGenerator<BenchRow | BenchStop> {
  yield* Symbol.asyncIterator in rows ? rows : await rows;
}

function print(row: BenchRow | BenchStop): void {
  if ('stopped' in row) {
    process.exitCode = 1;
    console.log(row.stopped);
    return;
  }
  const verdict = row.meets === null ? '–' : row.meets ? 'yes' : 'NO';
  const figure = `${Number(row.median.toPrecision(3))} ${row.unit}`;
  console.log(`${pad(row.name, 62)}${pad(figure, 14)}${pad(row.spread, 22)}${pad(row.bar, 16)}${verdict}`);
  if (row.note) console.log(`    ${row.note}`);
}

function benchesUnder(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap(item => {
    const path = join(folder, item.name);
    if (item.isDirectory()) return ['node_modules', 'dist'].includes(item.name) ? [] : benchesUnder(path);
    return item.name.endsWith('.bench.ts') ? [path] : [];
  });
}

function pad(text: string, width: number): string {
  return text.length >= width ? `${text} ` : text.padEnd(width);
}
