import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';

// Everything that must hold, in the order in which a mistake is cheapest to see. One failing step does not hide the next.

interface Step {
  readonly name: string;
  /** Some of its tests open the database, which a fresh clone may still be compiling. */
  readonly needsDatabase?: boolean;
  readonly run: () => { passed: number; failed: number };
}

const bin = (name: string): string => `node_modules/.bin/${name}`;
const rooms = ['engine', 'picture', 'book', 'server', 'app', 'checks', 'cli', 'tsconfig.tests.json'];

const steps: readonly Step[] = [
  { name: 'format and lint', run: () => command(bin('biome'), ['ci', '--error-on-warnings', '.']) },
  ...rooms.map(room => ({ name: `types: ${room}`, run: () => command(bin('tsc'), ['-p', room]) })),
  { name: 'dead code', run: () => command(bin('knip'), ['--no-progress']) },
  { name: 'unit and property tests', needsDatabase: true, run: () => vitest('vitest.config.ts') },
  { name: 'end-to-end tests', needsDatabase: true, run: () => vitest('vitest.e2e.config.ts') },
];

const wanted = process.argv.slice(2).filter(word => !word.startsWith('-'));
let passed = 0;
let failed = 0;
const said: string[] = [];
for (const step of steps) {
  if (wanted.length > 0 && !wanted.some(word => step.name.includes(word))) continue;
  if (step.needsDatabase) waitForCompiled();
  const startedAt = performance.now();
  console.log(`\n── ${step.name}`);
  const count = step.run();
  passed += count.passed;
  failed += count.failed;
  const seconds = ((performance.now() - startedAt) / 1000).toFixed(1);
  said.push(`${count.failed === 0 ? 'ok    ' : 'FAILED'} ${step.name} (${seconds} s)`);
}
console.log(`\n${said.join('\n')}\n\n${passed} passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);

/** Until the stamp of the install is there: it says the lock's hash, or that the compiler failed. */
function waitForCompiled(): void {
  const stamp = process.env.ICEWRIGHT_COMPILING;
  if (stamp === undefined) return;
  while (!existsSync(stamp)) Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 200);
  if (readFileSync(stamp, 'utf8') !== 'failed') return;
  console.error('The database could not be compiled: see the lines above.');
  process.exit(1);
}

function command(file: string, args: readonly string[]): { passed: number; failed: number } {
  const ok = spawnSync(file, args, { stdio: 'inherit', shell: process.platform === 'win32' }).status === 0;
  return ok ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 };
}

function vitest(config: string): { passed: number; failed: number } {
  mkdirSync('node_modules/.cache', { recursive: true });
  const report = `node_modules/.cache/${config}.json`;
  rmSync(report, { force: true });
  const args = [
    'run',
    '--config',
    config,
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${report}`,
  ];
  const status = spawnSync(bin('vitest'), args, {
    stdio: 'inherit',
    shell: process.platform === 'win32',
  }).status;
  if (!existsSync(report)) return { passed: 0, failed: 1 };
  const counts = JSON.parse(readFileSync(report, 'utf8')) as {
    numPassedTests: number;
    numFailedTests: number;
  };
  const hidden = status !== 0 && counts.numFailedTests === 0 ? 1 : 0;
  return { passed: counts.numPassedTests, failed: counts.numFailedTests + hidden };
}
