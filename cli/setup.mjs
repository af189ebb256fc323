// The one door of every npm command: installs what is missing, builds what is stale, then runs the command.
// Plain JavaScript on purpose: it has to run on a fresh clone, before anything is installed.
import { spawn, spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = join(dirname(fileURLToPath(import.meta.url)), '..');
process.chdir(root);
const [command = 'help', ...args] = process.argv.slice(2);

const commands = {
  start: () => {
    ensureBuilt();
    return tsx('cli/start.ts', args);
  },
  test: () => {
    const browser = ensureBrowser();
    ensureBuilt();
    return tsx('cli/test.ts', args, { ICEWRIGHT_BROWSER: browser });
  },
  bench: () => {
    const browser = ensureBrowser();
    ensureBuilt();
    return tsx('cli/bench.ts', args, { ICEWRIGHT_BROWSER: browser });
  },
  gallery: () => tsx('cli/gallery.ts', args),
  checks: () => tsx('cli/checks.ts', args),
  'film-truth': () => {
    ensureBuilt();
    return tsx('cli/film-truth.ts', args);
  },
  licences: () => tsx('cli/licences.ts', args),
};

if (Number(process.versions.node.split('.')[0]) < 20)
  fail(`Icewright needs Node 20 or newer; this is ${process.version}.`);
const run = commands[command];
if (!run) fail(`Unknown command "${command}". Known: ${Object.keys(commands).join(', ')}.`);
ensureInstalled();
process.exitCode = run();

/** The database is compiled where no ready one is to be had: a minute in which the tests can begin with what needs none. */
function ensureInstalled() {
  const stamp = join('node_modules', '.icewright-lock');
  const wanted = hashOf(['package-lock.json']);
  if (existsSync(stamp) && readFileSync(stamp, 'utf8') === wanted) return;
  say('Installing libraries (a few minutes the first time: the database may be compiled) …');
  const done = spawnSync('npm', ['ci', '--ignore-scripts', '--no-audit', '--no-fund', '--loglevel=error'], {
    stdio: ['ignore', 'inherit', 'inherit'],
    shell: process.platform === 'win32',
  });
  const failed = 'The libraries could not be installed: see the lines above. Nothing else was changed.';
  if (done.status !== 0) fail(failed);
  const compile = [join('cli', 'compile.mjs'), stamp, wanted];
  if (command === 'test') {
    spawn(process.execPath, compile, { stdio: ['ignore', 'inherit', 'inherit'] });
    process.env.ICEWRIGHT_COMPILING = stamp;
  } else if (spawnSync(process.execPath, compile, { stdio: 'inherit' }).status !== 0) fail(failed);
}

function ensureBuilt() {
  const stamp = join('app', 'dist', '.built');
  const sources = ['app', 'book', 'engine', 'picture'].flatMap(room => filesUnder(room));
  const wanted = hashOf([...sources, 'package-lock.json']);
  if (existsSync(stamp) && readFileSync(stamp, 'utf8') === wanted) return;
  say('Building the app …');
  const done = spawnSync(
    process.execPath,
    [
      join('node_modules', 'vite', 'bin', 'vite.js'),
      'build',
      'app',
      '--config',
      'app/vite.config.ts',
      '--logLevel',
      'warn',
    ],
    { stdio: ['ignore', 'inherit', 'inherit'] },
  );
  if (done.status !== 0) fail('The app could not be built: see the lines above.');
  mkdirSync(dirname(stamp), { recursive: true });
  writeFileSync(stamp, wanted);
}

/** A Chromium that can be driven, installed from Debian's packages where that is possible. */
function ensureBrowser() {
  const places = [
    process.env.ICEWRIGHT_BROWSER,
    '/usr/bin/chromium',
    '/usr/bin/chromium-browser',
    '/usr/bin/google-chrome',
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
    '/Applications/Chromium.app/Contents/MacOS/Chromium',
    'C:/Program Files/Google/Chrome/Application/chrome.exe',
  ];
  const found = () => places.find(place => place && existsSync(place));
  if (found()) return found();
  if (process.getuid?.() === 0 && existsSync('/usr/bin/apt-get')) {
    say('Installing chromium for the tests …');
    spawnSync('apt-get', ['update', '-qq'], { stdio: 'ignore' });
    spawnSync('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'chromium'], {
      stdio: ['ignore', 'ignore', 'inherit'],
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    });
    if (found()) return found();
  }
  return fail(
    'Tests and benches of the screens need Chromium and none was found: install it, or name one with ICEWRIGHT_BROWSER=/path/to/chromium.',
  );
}

function tsx(file, rest, env = {}) {
  const child = spawnSync(process.execPath, ['--import', 'tsx', file, ...rest], {
    stdio: 'inherit',
    env: { ...process.env, ...env },
  });
  return child.status ?? 1;
}

function filesUnder(folder) {
  return readdirSync(folder, { withFileTypes: true }).flatMap(item => {
    const path = join(folder, item.name);
    if (item.isDirectory())
      return ['dist', 'node_modules', 'golden', 'bench', 'scenes'].includes(item.name)
        ? []
        : filesUnder(path);
    return /\.(test|bench|e2e)\.tsx?$/.test(item.name) ? [] : [path];
  });
}

function hashOf(files) {
  const hash = createHash('sha256');
  for (const file of files.sort()) if (statSync(file).isFile()) hash.update(file).update(readFileSync(file));
  return hash.digest('hex');
}

function say(sentence) {
  process.stderr.write(`${sentence}\n`);
}

function fail(sentence) {
  say(sentence);
  process.exit(1);
}
