// Runs the install scripts of the libraries that have any (package.json, allowScripts), and leaves a stamp when all went
// well, or one that says so when it did not. Plain JavaScript: it runs before anything is there to read TypeScript.
import { spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';

const [stamp, wanted] = process.argv.slice(2);
const done = spawnSync('npm', ['rebuild', 'better-sqlite3', 'esbuild', '--loglevel=error'], {
  stdio: ['ignore', 'inherit', 'inherit'],
  shell: process.platform === 'win32',
});
writeFileSync(stamp, done.status === 0 ? wanted : 'failed');
process.exit(done.status ?? 1);
