import { spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';

// Everything that must hold, in the order in which a mistake is cheapest to see. One failing step does not hide the next.

interface Step {
  readonly name: string;
  /** Some of its tests open the database, which a fresh clone may still be compiling. */
  readonly needsDatabase?: boolean;
  readonly run: () => Count | Promise<Count>;
}

interface Count {
  readonly passed: number;
  readonly failed: number;
}

const bin = (name: string): string => `node_modules/.bin/${name}`;
const rooms = ['engine', 'picture', 'book', 'server', 'app', 'checks', 'cli', 'tsconfig.tests.json'];

const steps: readonly Step[] = [
  told('format and lint', 'biome', ['ci', '--error-on-warnings', '.']),
  ...rooms.map(room => told(`types: ${room}`, 'tsc', ['-p', room])),
  told('dead code', 'knip', ['--no-progress']),
  { name: 'unit and property tests', needsDatabase: true, run: () => vitest('vitest.config.ts') },
  { name: 'end-to-end tests', needsDatabase: true, run: () => vitest('vitest.e2e.config.ts') },
];

const words = process.argv.slice(2).filter(word => !word.startsWith('-'));
const wanted = steps.filter(({ name }) => words.length === 0 || words.some(word => name.includes(word)));
let passed = 0;
let failed = 0;
const said = new Map<Step, string>();
await twoAtATime(wanted.filter(({ needsDatabase }) => !needsDatabase));
for (const step of wanted.filter(({ needsDatabase }) => needsDatabase)) {
  waitForCompiled();
  console.log(`\n── ${step.name}`);
  await take(step);
}
console.log(`\n${wanted.map(step => said.get(step)).join('\n')}\n\n${passed} passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);

/** Each of these has work for little more than one processor; what one says is printed when it ends. */
async function twoAtATime(these: readonly Step[]): Promise<void> {
  const left = [...these];
  const one = async () => {
    for (let step = left.shift(); step !== undefined; step = left.shift()) await take(step);
  };
  await Promise.all([one(), one()]);
}

async function take(step: Step): Promise<void> {
  const startedAt = performance.now();
  const count = await step.run();
  passed += count.passed;
  failed += count.failed;
  const seconds = ((performance.now() - startedAt) / 1000).toFixed(1);
  said.set(step, `${count.failed === 0 ? 'ok    ' : 'FAILED'} ${step.name} (${seconds} s)`);
}

function told(name: string, tool: string, args: readonly string[]): Step {
  return { name, run: () => command(name, bin(tool), args) };
}

/** Until the stamp of the install is there: it says the lock's hash, or that the compiler failed. */
function waitForCompiled(): void {
  const stamp = process.env.ICEWRIGHT_COMPILING;
  if (stamp === undefined) return;
  while (!existsSync(stamp)) Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 200);
  if (readFileSync(stamp, 'utf8') !== 'failed') return;
  console.error('The database could not be compiled: see the lines above.');
  process.exit(1);
}

function command(name: string, file: string, args: readonly string[]): Promise<Count> {
  const child = spawn(file, args, {
    stdio: ['ignore', 'pipe', 'pipe'],
    shell: process.platform === 'win32',
  });
  const told: Buffer[] = [];
  for (const stream of [child.stdout, child.stderr]) stream.on('data', chunk => told.push(chunk));
  return new Promise(resolve => {
    const end = (ok: boolean) => {
      console.log(`\n── ${name}`);
      process.stdout.write(Buffer.concat(told));
      resolve(ok ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 });
    };
    child.on('error', error => {
      told.push(Buffer.from(`${error.message}\n`));
      end(false);
    });
    child.on('close', code => end(code === 0));
  });
}

function vitest(config: string): Count {
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
