import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';

const script = fileURLToPath(new URL('./start.ts', import.meta.url));
const root = fileURLToPath(new URL('..', import.meta.url));
const run = (...args: string[]) =>
  spawnSync(process.execPath, ['--import', 'tsx', script, ...args], { cwd: root, encoding: 'utf8' });

let folder: string;
const children: ChildProcess[] = [];
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'icewright-cli-'));
});
afterEach(() => {
  for (const child of children.splice(0)) child.kill('SIGKILL');
  rmSync(folder, { recursive: true, force: true });
});

describe('npm start', () => {
  it('says where it answers and where the data lies, holds the folder, and ends cleanly', async () => {
    const child = spawn(
      process.execPath,
      ['--import', 'tsx', script, '--data', folder, '--port', '0', '--no-open'],
      { cwd: root },
    );
    children.push(child);
    let said = '';
    child.stdout.on('data', chunk => (said += chunk));
    while (!said.includes('Ctrl-C')) await once(child.stdout, 'data');
    const port = /http:\/\/localhost:(\d+)/.exec(said)![1];
    expect(said).toContain(folder);
    expect((await fetch(`http://127.0.0.1:${port}/api/about`)).status).toBe(200);

    const second = run('--data', folder, '--port', '0', '--no-open');
    expect(second.status).toBe(1);
    expect(second.stderr.trim()).toBe(`Another Icewright is already running on the data folder ${folder}.`);

    child.kill('SIGINT');
    const [code] = await once(child, 'exit');
    expect(code).toBe(0);
  });

  it('opens the links for players on an address of their own where it is told to', async () => {
    const child = spawn(
      process.execPath,
      ['--import', 'tsx', script, '--data', folder, '--port', '0', '--handouts', '127.0.0.1:0', '--no-open'],
      { cwd: root },
    );
    children.push(child);
    let said = '';
    child.stdout.on('data', chunk => (said += chunk));
    while (!said.includes('Ctrl-C')) await once(child.stdout, 'data');
    const address = /Links for players open at (http:\/\/127\.0\.0\.1:\d+)/.exec(said)![1];
    expect((await fetch(`${address}/api/about`)).status).toBe(404);
  });

  it('a taken port is one clear sentence', async () => {
    const other = createServer().listen(0, '127.0.0.1');
    await once(other, 'listening');
    const { port } = other.address() as { port: number };
    const { status, stderr } = run('--data', folder, '--port', `${port}`, '--no-open');
    other.close();
    expect(status).toBe(1);
    expect(stderr.trim()).toBe(`Port ${port} is taken by another program. Choose another one with --port.`);
  });

  it.each([
    [['--port', 'many'], /--port takes a whole number/],
    [['--handouts', 'everywhere'], /--handouts takes an address and a port/],
    [['--handouts', '192.168.1.20:70000'], /The port of --handouts takes a whole number/],
    [['--colour'], /--colour.*--help/],
  ])('%j is refused in one line', (args, sentence) => {
    const { status, stderr } = run(...args);
    expect(status).toBe(1);
    expect(stderr.trim()).toMatch(sentence);
    expect(stderr.trim()).not.toContain('\n');
  });

  it('--help names every flag', () => {
    const { status, stdout } = run('--help');
    expect(status).toBe(0);
    for (const flag of ['--data', '--port', '--handouts', '--no-open']) expect(stdout).toContain(flag);
  });
});
