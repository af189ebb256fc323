import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { parseArgs } from 'node:util';
import { type CheckReport, checkFileOf, runChecks } from '@icewright/checks';

const HELP = `checks: computes every case of files with reference values and compares.

  npm run checks                 the files of checks/data
  npm run checks -- FILE…        any files of that format (see checks/data/README.md)

For each file: cases, passed, failed, the largest error of each unit, and the names of failing cases.
Ends with 0 when all pass, 1 when a case fails, 2 when a file cannot be read or is not of the format.`;

const { values, positionals } = parseArgs({
  options: { help: { type: 'boolean' } },
  allowPositionals: true,
});

process.exitCode = values.help ? say(HELP) : checkAll(positionals.length > 0 ? positionals : ownFiles());

function ownFiles(): string[] {
  const folder = join(import.meta.dirname, '..', 'checks', 'data');
  return readdirSync(folder)
    .filter(name => name.endsWith('.json'))
    .sort()
    .map(name => relative(process.cwd(), join(folder, name)));
}

function checkAll(paths: readonly string[]): number {
  let worst = 0;
  for (const path of paths) worst = Math.max(worst, checkOne(path));
  return worst;
}

function checkOne(path: string): number {
  let text: string;
  try {
    text = readFileSync(path, 'utf8');
  } catch (error) {
    return refuse(path, `it cannot be read (${error instanceof Error ? error.message : 'unknown'})`);
  }
  const file = checkFileOf(text);
  if ('kind' in file) return refuse(path, file.reason);
  const report = runChecks(path, file);
  say(wordsOf(report));
  return report.failedCount > 0 ? 1 : 0;
}

function wordsOf(report: CheckReport): string {
  const head = `${report.file}: ${report.caseCount} cases, ${report.passedCount} passed, ${report.failedCount} failed`;
  const errors = report.largestByUnit.map(
    ({ error, unit, what }) =>
      `${error.toExponential(2)} ${unit === '1' || unit === '' ? '' : `${unit} `}(${what})`,
  );
  const largest = errors.length > 0 ? `\n  largest error: ${errors.join('; ')}` : '';
  const failures = report.failures.map(({ name, reason }) => `\n  FAILED ${name}: ${reason}`);
  return head + largest + failures.join('');
}

function refuse(path: string, reason: string): number {
  console.error(`${path} is not a file of checks: ${reason}.`);
  return 2;
}

function say(text: string): number {
  console.log(text);
  return 0;
}
